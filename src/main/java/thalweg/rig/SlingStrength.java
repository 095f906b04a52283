package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;
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
        StrengthChain chain = new StrengthChain(
                base, Sentence.of("the strength of a strand of the {0} is not known", StrandNames.said(name)));
        chain.times(tie(sling.tie(), derating));
        if (sling.knotEfficiency().isPresent()) {
            double share = sling.knotEfficiency().getAsDouble();
            Sentence words = Sentence.of("its knot leaves {0}", Figures.percent(share));
            chain.times(StrengthFactor.of(StrengthChain.KNOT, share, FactorSource.STATED, words));
        } else if (sling.tie() == SlingTie.WRAP_THREE_PULL_TWO) {
            chain.times(StrengthFactor.of(
                    StrengthChain.KNOT,
                    1,
                    FactorSource.PRACTICE,
                    Sentence.of("its knot lies in the wrap that is not pulled")));
        } else {
            chain.unknown(Sentence.of(
                    "how much strength the knot of the {0} leaves is not known; state 1 for a sewn one",
                    StrandNames.said(name)));
        }
        new ConditionShare(derating)
                .takeFrom(chain, sling.textile().condition(), Sentence.of("the {0} was", StrandNames.said(name)));
        FindStrength.age(sling.textile(), derating, chain);
        chain.note(Sentence.of("what an edge or the bend round the point takes off is not known"));
        return chain.done();
    }

    private static StrengthFactor tie(SlingTie tie, Derating derating) {
        OptionalDouble stated = derating.of(DeratingKey.CHOKE);
        return switch (tie) {
            case CHOKE ->
                stated.isPresent()
                        ? StrengthFactor.of(TIE, stated.getAsDouble(), FactorSource.STATED, Sentence.of("choked"))
                        : StrengthFactor.of(
                                TIE,
                                CHOKED,
                                FactorSource.PUBLISHED,
                                Sentence.of("choked; sling trade tables after AS 1353.1"));
            case BASKET ->
                StrengthFactor.of(
                        TIE,
                        1,
                        FactorSource.MEMORY,
                        Sentence.of("a basket loses nothing but by its angle, which is in the force"));
            case WRAP_THREE_PULL_TWO ->
                StrengthFactor.of(
                        TIE, 1, FactorSource.PRACTICE, Sentence.of("two wraps pulled lose nothing but by their angle"));
            case TIED_ROUND ->
                StrengthFactor.of(
                        TIE,
                        1,
                        FactorSource.MEMORY,
                        Sentence.of("tied round it loses nothing but by its angle and its knot"));
        };
    }
}
