package thalweg.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;

/**
 * The line of a canyon as it goes down: across, the distance along the line where it is known; downwards, the heights of
 * the places added up. Between places the line is level, because nobody enters how the bed falls there; what is unknown
 * is kept apart from what is known throughout.
 */
public final class Profile {

    private final List<LineRecord> line;
    private final Spacing spacing;
    private final List<Stop> stops;
    private final List<Stretch> path;

    private Profile(List<LineRecord> line) {
        this.line = line;
        Distances distances = new Distances(line);
        this.spacing = distances.spacing();
        double[] along = spacing == Spacing.TO_SCALE
                ? distances.toScale()
                : IntStream.range(0, line.size()).asDoubleStream().toArray();
        List<Stop> standing = new ArrayList<>();
        double down = 0;
        for (int i = 0; i < along.length; i++) {
            LineRecord place = line.get(i);
            Fall fall = Fall.of(place.obstacle());
            boolean falls = fall == Fall.UPRIGHT || fall == Fall.SLOPING;
            double height = falls ? place.obstacle().height().orElseThrow().metres() : 0;
            boolean placed =
                    spacing == Spacing.TO_SCALE && place.obstacle().distance().isPresent();
            boolean slopes = fall == Fall.SLOPING && i + 1 < along.length && along[i + 1] > along[i];
            standing.add(new Stop(place, along[i], placed, down, height, fall, slopes));
            down += height;
        }
        this.stops = List.copyOf(standing);
        this.path = List.copyOf(path(stops));
    }

    /** The profile of that canyon's line. */
    public static Profile of(CanyonRecord record) {
        return new Profile(record.line());
    }

    private static List<Stretch> path(List<Stop> stops) {
        List<Stretch> path = new ArrayList<>();
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            if (stop.foot() > stop.lip()) {
                boolean known = stop.fall() == Fall.UPRIGHT;
                path.add(new Stretch(stop.along(), stop.lip(), stop.along(), stop.foot(), known, true));
            }
            if (i + 1 < stops.size() && stops.get(i + 1).along() > stop.along()) {
                Stop next = stops.get(i + 1);
                boolean known = stop.placed() && next.placed();
                path.add(new Stretch(stop.along(), stop.foot(), next.along(), next.lip(), known, false));
            }
        }
        return path;
    }

    /** How the places stand along the line. */
    public Spacing spacing() {
        return spacing;
    }

    /** How many places there are. */
    public int size() {
        return line.size();
    }

    /** Whether anything can be drawn to scale. */
    public boolean canBeDrawn() {
        return spacing == Spacing.TO_SCALE || depth() > 0;
    }

    /** The known heights of the places added up [m]. */
    double depth() {
        return stops.isEmpty() ? 0 : stops.get(stops.size() - 1).end();
    }

    List<Stop> stops() {
        return stops;
    }

    /** The line from its first place to its last, piece by piece. */
    List<Stretch> path() {
        return path;
    }

    /** The two places of which the later one has the smaller distance, if the distances go backwards. */
    Optional<List<LineRecord>> backwards() {
        return new Distances(line).backwards().map(pair -> List.of(line.get(pair[0]), line.get(pair[1])));
    }

    /** The places at which a height is asked for. */
    List<LineRecord> falls() {
        return line.stream()
                .filter(place -> Fall.asksForHeight(place.obstacle()))
                .toList();
    }

    /** The places at which one is asked for and nobody entered it. */
    List<LineRecord> withoutHeight() {
        return line.stream()
                .filter(place -> Fall.of(place.obstacle()) == Fall.UNKNOWN)
                .toList();
    }

    /** The places whose distance nobody entered. */
    List<LineRecord> withoutDistance() {
        return line.stream()
                .filter(place -> place.obstacle().distance().isEmpty())
                .toList();
    }

    /** From the first known distance to the last one; empty where places do not stand to scale. */
    Optional<Window> known() {
        List<Stop> placed = stops.stream().filter(Stop::placed).toList();
        return placed.isEmpty()
                ? Optional.empty()
                : Optional.of(new Window(
                        placed.get(0).along(), placed.get(placed.size() - 1).along()));
    }

    /** The whole line. */
    public Window whole() {
        return stops.isEmpty()
                ? new Window(0, 0)
                : new Window(stops.get(0).along(), stops.get(stops.size() - 1).along());
    }

    /**
     * A part of the line around a place, its half before and its half after it where the line is long enough. Windows
     * move by half their width, so that the picture stands still from place to place.
     *
     * @param times how many such parts make the whole, 1 or more
     * @param index of the place, counted from 0
     */
    public Window around(int index, int times) {
        Window whole = whole();
        double width = (whole.to() - whole.from()) / times;
        if (times == 1 || width == 0) {
            return whole;
        }
        double along = stops.get(index).along();
        double half = width / 2;
        double from = whole.from() + Math.round((along - half - whole.from()) / half) * half;
        // Sums of fractions would leave the last place just outside.
        return from + width >= whole.to() - half / 2
                ? new Window(whole.to() - width, whole.to())
                : new Window(Math.max(whole.from(), from), Math.max(whole.from(), from) + width);
    }
}
