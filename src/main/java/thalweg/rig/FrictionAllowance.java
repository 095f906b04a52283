package thalweg.rig;

import java.util.List;
import java.util.Optional;
import thalweg.units.Force;

/**
 * What friction may add to the forces that are computed without it. The range of shares is known at the aim; it is taken to
 * hold, as a factor, over the whole sector.
 *
 * @param steady at the aim, without friction
 * @param friction between which shares it may hold a sliding master; empty where the master does not slide
 */
record FrictionAllowance(RigState steady, Optional<FrictionRange> friction) {

    /** How many times its force without friction a point may bear [-], 1 or more; 1 where the range is unknown. */
    double times(String point) {
        double share = steady.at(point).share();
        return ranges().stream()
                .filter(range -> range.point().equals(point) && share > Analyze.LOADED)
                .mapToDouble(range -> Math.max(1, range.most() / share))
                .max()
                .orElse(1);
    }

    /** The same for the point to which friction may add most. */
    double most() {
        return ranges().stream()
                .mapToDouble(range -> times(range.point()))
                .max()
                .orElse(1);
    }

    Force largest(WorstForce worst) {
        return new Force(worst.force().newtons() * times(worst.point()));
    }

    /** What counts against the strength of the point, with what friction adds to it in the same direction. */
    Force counted(CountedForce worst) {
        return new Force(worst.counted().newtons() * times(worst.point()));
    }

    private List<ShareRange> ranges() {
        return friction.map(FrictionRange::shares).orElse(List.of());
    }
}
