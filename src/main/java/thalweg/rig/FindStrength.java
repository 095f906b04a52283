package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;
import thalweg.units.Force;

/** Works out what points and strands are taken to hold: the one place that knows what weakens which part. */
final class FindStrength {

    private FindStrength() {}

    /** What a point holds; a bolt of two strengths across its axis. */
    static PartStrength of(RigInput input, RigPoint point) {
        StrengthChain chain =
                new StrengthChain(point.strength(), Sentence.of("the strength of {0} is not known", point.name()));
        condition(input).takeFrom(chain, point.traits().condition(), Sentence.of("{0} was", point.name()));
        return chain.done();
    }

    /**
     * What parallel strands hold together.
     *
     * @param count of them, 1 or more
     */
    static PartStrength of(RigInput input, int count) {
        RigSetup rig = input.rig();
        Optional<Force> base = rig.strandStrength().map(alone -> Force.kilonewtons(alone.inKilonewtons() * count));
        StrengthChain chain = new StrengthChain(base, Sentence.of("the strength of a strand is not known"));
        knot(rig, chain);
        condition(input).takeFrom(chain, rig.traits().condition(), Sentence.of("the strands were"));
        age(rig.traits().textile(), rig.traits().derating(), chain);
        return chain.done();
    }

    /** What a connector holds the way it is pulled. */
    static PartStrength of(Connector connector, String label) {
        Sentence name = StrandNames.said(label);
        Sentence unknown = switch (connector.loaded()) {
            case LONG -> Sentence.of("what the {0} holds along its length is not known", name);
            case ACROSS -> Sentence.of("what the {0} holds across its length is not known", name);
            case OPEN -> Sentence.of("what the {0} holds with its gate open is not known", name);
        };
        StrengthChain chain = new StrengthChain(connector.strength(), unknown);
        if (connector.assumedLoad()) {
            chain.note(Sentence.of("taken to be pulled along its length, gate closed"));
        }
        return chain.done();
    }

    private static ConditionShare condition(RigInput input) {
        return new ConditionShare(input.rig().traits().derating());
    }

    private static void knot(RigSetup rig, StrengthChain chain) {
        Optional<Knot> knot = rig.traits().knot();
        if (knot.isPresent()) {
            chain.times(knot.get().factor());
        } else if (rig.knotEfficiency().isEmpty()) {
            chain.unknown(Sentence.of("how much strength the knots leave is not known"));
        } else {
            double share = rig.knotEfficiency().getAsDouble();
            Sentence words = Sentence.of("its knots leave {0}", Figures.percent(share));
            chain.times(StrengthFactor.of(StrengthChain.KNOT, share, FactorSource.STATED, words));
        }
    }

    /** Takes off what age does to textile. */
    static void age(Textile traits, Derating derating, StrengthChain chain) {
        if (traits.ageYears().isEmpty()) {
            chain.note(Sentence.of("age not stated"));
            return;
        }
        double years = traits.ageYears().getAsDouble();
        OptionalDouble stated = derating.of(DeratingKey.AGE);
        if (stated.isPresent()) {
            chain.times(StrengthFactor.of(
                    "age", stated.getAsDouble(), FactorSource.STATED, Sentence.of("age of the strands")));
        } else if (traits.fibre().isPresent() && traits.kept().isPresent()) {
            take(TextileAge.of(traits.fibre().get(), traits.kept().get(), years), chain);
        } else if (years > TextileAge.MAKERS_LIMIT_YEARS) {
            chain.unknown(TextileAge.tooOld(years));
        } else {
            chain.note(
                    traits.fibre().isEmpty()
                            ? Sentence.of("age not allowed for: the fibre is not stated")
                            : Sentence.of("age not allowed for: where the strands were kept is not stated"));
        }
    }

    private static void take(AgeShare age, StrengthChain chain) {
        if (age.factor().isPresent()) {
            chain.times(age.factor().get());
        } else if (age.unknown()) {
            age.atMost().ifPresent(chain::atMost);
            chain.unknown(age.saying());
        } else {
            chain.note(age.saying());
        }
    }
}
