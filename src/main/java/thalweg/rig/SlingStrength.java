package thalweg.rig;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.units.Force;

/** Works out what a sling round a point is taken to hold: the strands of one of its sides, its tie, its knot. */
final class SlingStrength {

    /** What the factor of a tie is called. */
    static final String TIE = "tie";

    /**
     * What choking leaves.
     *
     * <p>Source: sling trade tables after AS 1353.1, choke hitch.
     */
    static final double CHOKED = 0.8;

    private SlingStrength() {}

    /**
     * What parallel strands of a sling hold together.
     *
     * @param name of the sling, as "A sling"
     * @param count of the strands, 1 or more
     * @param derating what somebody states in place of the table's share
     */
    static PartStrength of(RigSling sling, String name, int count, Derating derating) {
        Optional<Force> base = sling.strandStrength().map(alone -> Force.kilonewtons(alone.inKilonewtons() * count));
        StrengthChain chain = new StrengthChain(base, "the strength of a strand of the " + name + " is not known");
        chain.times(tie(sling.tie(), derating));
        if (sling.knotEfficiency().isPresent()) {
            double share = sling.knotEfficiency().getAsDouble();
            String words = String.format(Locale.ROOT, "its knot leaves %.0f %%", share * 100);
            chain.times(StrengthFactor.of(StrengthChain.KNOT, share, FactorSource.STATED, words));
        } else if (sling.tie() == SlingTie.WRAP_THREE_PULL_TWO) {
            chain.times(StrengthFactor.of(
                    StrengthChain.KNOT, 1, FactorSource.PRACTICE, "its knot lies in the wrap that is not pulled"));
        } else {
            chain.unknown("how much strength the knot of the " + name + " leaves is not known; state 1 for a sewn one");
        }
        new ConditionShare(derating).takeFrom(chain, sling.textile().condition(), "the " + name + " was");
        FindStrength.age(sling.textile(), derating, chain);
        chain.note("what an edge or the bend round the point takes off is not known");
        return chain.done();
    }

    private static StrengthFactor tie(SlingTie tie, Derating derating) {
        OptionalDouble stated = derating.of(DeratingKey.CHOKE);
        return switch (tie) {
            case CHOKE ->
                stated.isPresent()
                        ? StrengthFactor.of(TIE, stated.getAsDouble(), FactorSource.STATED, "choked")
                        : StrengthFactor.of(
                                TIE, CHOKED, FactorSource.PUBLISHED, "choked; sling trade tables after AS 1353.1");
            case BASKET ->
                StrengthFactor.of(
                        TIE, 1, FactorSource.MEMORY, "a basket loses nothing but by its angle, which is in the force");
            case WRAP_THREE_PULL_TWO ->
                StrengthFactor.of(TIE, 1, FactorSource.PRACTICE, "two wraps pulled lose nothing but by their angle");
            case TIED_ROUND ->
                StrengthFactor.of(
                        TIE, 1, FactorSource.MEMORY, "tied round it loses nothing but by its angle and its knot");
        };
    }
}
