package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;

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
    void takeFrom(StrengthChain chain, Optional<PartCondition> condition, String subject) {
        if (condition.isEmpty()) {
            chain.note("condition not stated");
            return;
        }
        switch (condition.get()) {
            case SOUND -> chain.times(StrengthFactor.of(CONDITION, 1, FactorSource.OUR_CHOICE, "found sound"));
            case WORN ->
                chain.times(stated(DeratingKey.WORN, "found worn")
                        .orElseGet(() -> StrengthFactor.of(CONDITION, WORN, FactorSource.OUR_CHOICE, "found worn")));
            case DOUBTFUL ->
                stated(DeratingKey.DOUBTFUL, "found doubtful")
                        .ifPresentOrElse(chain::times, () -> chain.unknown(subject + " found doubtful"));
            case UNSAFE -> chain.unknown(subject + " found unsafe");
            case GONE -> chain.unknown(subject + " found to be gone");
            case UNKNOWN ->
                stated(DeratingKey.UNKNOWN, "nobody has looked at it")
                        .ifPresentOrElse(chain::times, () -> chain.note("nobody has looked at it"));
        }
    }

    private Optional<StrengthFactor> stated(DeratingKey key, String words) {
        OptionalDouble share = derating.of(key);
        return share.isPresent()
                ? Optional.of(StrengthFactor.of(CONDITION, share.getAsDouble(), FactorSource.STATED, words))
                : Optional.empty();
    }
}
