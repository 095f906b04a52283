package thalweg.rig;

import java.util.Locale;
import java.util.Optional;
import thalweg.units.Force;

/** Works out what points and strands are taken to hold: the one place that knows what weakens which part. */
final class FindStrength {

    private FindStrength() {}

    /** What a point holds. */
    static PartStrength of(RigInput input, RigPoint point) {
        return new StrengthChain(point.strength(), "the strength of " + point.name() + " is not known").done();
    }

    /**
     * What parallel strands hold together.
     *
     * @param count of them, 1 or more
     */
    static PartStrength of(RigInput input, int count) {
        RigSetup rig = input.rig();
        Optional<Force> base = rig.strandStrength().map(alone -> Force.kilonewtons(alone.inKilonewtons() * count));
        StrengthChain chain = new StrengthChain(base, "the strength of a strand is not known");
        knot(rig, chain);
        return chain.done();
    }

    private static void knot(RigSetup rig, StrengthChain chain) {
        if (rig.knotEfficiency().isEmpty()) {
            chain.unknown("how much strength the knots leave is not known");
            return;
        }
        double share = rig.knotEfficiency().getAsDouble();
        String words = String.format(Locale.ROOT, "its knots leave %.0f %%", share * 100);
        chain.times(StrengthFactor.of(StrengthChain.KNOT, share, FactorSource.STATED, words));
    }
}
