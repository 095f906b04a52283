package thalweg.rig;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The two strengths of a bolt as they were typed or read, right or wrong; empty is not stated.
 *
 * @param radialKilonewtons across its axis [kN]
 * @param axialKilonewtons along its axis, out of the rock [kN]
 * @param axis the way out of the rock, three numbers of any length
 */
public record BoltDraft(OptionalDouble radialKilonewtons, OptionalDouble axialKilonewtons, List<Double> axis) {

    /** A point of one strength. */
    public static final BoltDraft NONE = new BoltDraft(OptionalDouble.empty(), OptionalDouble.empty(), List.of());

    public BoltDraft {
        axis = List.copyOf(axis);
    }

    /** A bolt that stands straight out of the wall, as far as anybody has said. */
    public static BoltDraft of(double radialKilonewtons, double axialKilonewtons) {
        return new BoltDraft(OptionalDouble.of(radialKilonewtons), OptionalDouble.of(axialKilonewtons), List.of());
    }

    boolean stated() {
        return radialKilonewtons.isPresent() || axialKilonewtons.isPresent() || !axis.isEmpty();
    }

    static BoltDraft of(BoltStrength bolt) {
        return new BoltDraft(
                OptionalDouble.of(bolt.radial().inKilonewtons()),
                OptionalDouble.of(bolt.axial().inKilonewtons()),
                bolt.assumedAxis()
                        ? List.of()
                        : List.of(bolt.axis().x(), bolt.axis().y(), bolt.axis().z()));
    }
}
