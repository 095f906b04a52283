package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.units.Force;

/** Between the numbers of a draft and the quantities of a rig, where either may be missing. */
final class Stated {

    private Stated() {}

    /** A force of that many kilonewtons. */
    static Optional<Force> force(OptionalDouble kilonewtons) {
        return kilonewtons.isPresent() ? Optional.of(Force.kilonewtons(kilonewtons.getAsDouble())) : Optional.empty();
    }

    /** A force in kilonewtons. */
    static OptionalDouble kilonewtons(Optional<Force> force) {
        return force.isPresent() ? OptionalDouble.of(force.get().inKilonewtons()) : OptionalDouble.empty();
    }
}
