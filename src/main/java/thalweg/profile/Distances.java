package thalweg.profile;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.logbook.LineRecord;
import thalweg.units.Length;

/** Where the places stand along the line, from what is known of their distances. */
final class Distances {

    /** Places after the last known distance stand apart by this part of what is known. */
    private static final double STEP_BEYOND = 0.05;

    private final List<Optional<Double>> known;

    Distances(List<LineRecord> line) {
        this.known = line.stream()
                .map(place -> place.obstacle().distance().map(Length::metres))
                .toList();
    }

    /** Whether they can be drawn to scale. */
    Spacing spacing() {
        if (known.size() <= 1) {
            return Spacing.ONE_PLACE;
        }
        double[] entered = known.stream()
                .flatMap(Optional::stream)
                .mapToDouble(Double::doubleValue)
                .toArray();
        if (entered.length < 2) {
            return Spacing.UNKNOWN;
        }
        if (IntStream.range(1, entered.length).anyMatch(i -> entered[i] < entered[i - 1])) {
            return Spacing.BACKWARDS;
        }
        return entered[0] == entered[entered.length - 1] ? Spacing.SAME : Spacing.TO_SCALE;
    }

    /** The first two places, counted from 0, of which the later one has the smaller distance. */
    Optional<int[]> backwards() {
        int before = -1;
        for (int i = 0; i < known.size(); i++) {
            if (known.get(i).isEmpty()) {
                continue;
            }
            if (before >= 0 && at(i) < at(before)) {
                return Optional.of(new int[] {before, i});
            }
            before = i;
        }
        return Optional.empty();
    }

    /**
     * Where each place stands [m]: as entered; between two known ones evenly; before the first evenly from the start on;
     * after the last one step on each. No known one moves, whatever is added.
     */
    double[] toScale() {
        int first = next(0);
        int last = IntStream.range(0, known.size())
                .filter(i -> known.get(i).isPresent())
                .max()
                .orElseThrow();
        double step = STEP_BEYOND * (at(last) - at(first));
        double[] along = new double[known.size()];
        int before = first;
        for (int i = 0; i < along.length; i++) {
            if (known.get(i).isPresent()) {
                before = i;
                along[i] = at(i);
            } else if (i < first) {
                along[i] = at(first) * i / first;
            } else if (i > last) {
                along[i] = at(last) + step * (i - last);
            } else {
                int after = next(i);
                along[i] = at(before) + (at(after) - at(before)) * (i - before) / (after - before);
            }
        }
        return along;
    }

    private int next(int from) {
        return IntStream.range(from, known.size())
                .filter(i -> known.get(i).isPresent())
                .findFirst()
                .orElseThrow();
    }

    private double at(int place) {
        return known.get(place).orElseThrow();
    }
}
