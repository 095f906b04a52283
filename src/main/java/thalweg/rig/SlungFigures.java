package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.units.Angle;
import thalweg.units.Force;

/**
 * What a sling round a point bears.
 *
 * @param point that it goes round
 * @param sling as stated
 * @param sides the force in each side at the aim, all of its parallel strands together, the left one first
 * @param angle between the sides at the aim [°]; empty for a sling with one side
 * @param widest the largest such angle in the directions of the sector [°]; empty likewise
 */
public record SlungFigures(
        RigPoint point, RigSling sling, List<Force> sides, Optional<Angle> angle, Optional<Angle> widest) {

    /**
     * The largest angle between the sides of a sling that sling tables list [°].
     *
     * <p>Source: AS 1353.1, table of basket hitches.
     */
    public static final double LISTED_DEGREES = 120;

    public SlungFigures {
        sides = List.copyOf(sides);
    }

    /** The slings of a rig, in the order of its points. */
    public static List<SlungFigures> of(RigAnswer answer) {
        List<SlungFigures> slings = new ArrayList<>();
        for (RigPoint point : answer.input().points()) {
            point.sling().ifPresent(sling -> {
                String label = StrandNames.sling(point);
                slings.add(new SlungFigures(
                        point,
                        sling,
                        sides(answer.steady(), label).stream()
                                .map(side -> new Force(side.tension().newtons() * side.count()))
                                .toList(),
                        angle(answer.steady(), label),
                        answer.sector().directions().stream()
                                .flatMap(state -> angle(state, label).stream())
                                .max((one, other) -> Double.compare(one.degrees(), other.degrees()))));
            });
        }
        return slings;
    }

    /** Whether the sides spread wider than sling tables list, anywhere in the sector. */
    boolean isFlat() {
        return widest.filter(angle -> angle.degrees() > LISTED_DEGREES).isPresent();
    }

    private static List<StrandPull> sides(RigState state, String label) {
        return state.strands().stream()
                .filter(strand -> strand.label().equals(label))
                .toList();
    }

    private static Optional<Angle> angle(RigState state, String label) {
        List<StrandPull> sides = sides(state, label);
        if (sides.size() < 2) {
            return Optional.empty();
        }
        Vector3 end = sides.get(0).path().get(1);
        Vector3 left = sides.get(0).path().get(0).minus(end);
        Vector3 right = sides.get(1).path().get(0).minus(end);
        boolean met = left.length() == 0 || right.length() == 0;
        return met ? Optional.empty() : Optional.of(new Angle(left.degreesTo(right)));
    }
}
