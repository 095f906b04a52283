package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;

/**
 * Takes from a strength what the condition of a part takes. There is no published table of that: what stands here is our
 * choice, and whoever knows better states another share.
 */
final class ConditionShare {

    /** What a worn part is taken to have left [-]; our choice. */
    static final double WORN = 0.5;

    private static final String CONDITION = "condition";

    private final Derating derating;

    ConditionShare(Derating derating) {
        this.derating = derating;
    }

    /**
     * Takes it from a chain.
     *
     * @param condition as it was found; empty where nobody stated it
     * @param subject what it is about and its verb, such as "A was"
     */
    void takeFrom(StrengthChain chain, Optional<PartCondition> condition, Sentence subject) {
        if (condition.isEmpty()) {
            chain.note(Sentence.of("condition not stated"));
            return;
        }
        switch (condition.get()) {
            case SOUND ->
                chain.times(StrengthFactor.of(CONDITION, 1, FactorSource.OUR_CHOICE, Sentence.of("found sound")));
            case WORN ->
                chain.times(stated(DeratingKey.WORN, Sentence.of("found worn"))
                        .orElseGet(() -> StrengthFactor.of(
                                CONDITION, WORN, FactorSource.OUR_CHOICE, Sentence.of("found worn"))));
            case DOUBTFUL ->
                stated(DeratingKey.DOUBTFUL, Sentence.of("found doubtful"))
                        .ifPresentOrElse(chain::times, () -> chain.unknown(Sentence.of("{0} found doubtful", subject)));
            case UNSAFE -> chain.unknown(Sentence.of("{0} found unsafe", subject));
            case GONE -> chain.unknown(Sentence.of("{0} found to be gone", subject));
            case UNKNOWN ->
                stated(DeratingKey.UNKNOWN, Sentence.of("nobody has looked at it"))
                        .ifPresentOrElse(chain::times, () -> chain.note(Sentence.of("nobody has looked at it")));
        }
    }

    private Optional<StrengthFactor> stated(DeratingKey key, Sentence words) {
        OptionalDouble share = derating.of(key);
        return share.isPresent()
                ? Optional.of(StrengthFactor.of(CONDITION, share.getAsDouble(), FactorSource.STATED, words))
                : Optional.empty();
    }
}
