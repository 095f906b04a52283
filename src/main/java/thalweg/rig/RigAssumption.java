package thalweg.rig;

import java.util.Arrays;
import java.util.List;

/** What every answer of the model takes for granted. Its words are kept by key in the phrases. */
public enum RigAssumption {
    /** The load is at rest. */
    AT_REST("rig.assumption.at_rest"),
    /** The load pulls harder than at rest, all the time. */
    FACTOR("rig.assumption.factor"),
    /** The points neither move nor give. */
    POINTS_FIXED("rig.assumption.points_fixed"),
    /** Knots and the master weigh nothing. */
    KNOTS_MASSLESS("rig.assumption.knots_massless"),
    /** The lengths of the legs are as tied, to the millimetre. */
    TIED_TO_LENGTH("rig.assumption.tied_to_length"),
    /** The stiffness is chosen, not measured. */
    STIFFNESS_CHOSEN("rig.assumption.stiffness_chosen"),
    /** Strands are dry and slide without friction. */
    NO_FRICTION("rig.assumption.no_friction"),
    /** The cords hang on nothing but the points: no edge, no wall. */
    FREE_OF_ROCK("rig.assumption.free_of_rock"),
    /** Some of the numbers are the program's defaults. */
    DEFAULTS("rig.assumption.defaults");

    private final String key;

    RigAssumption(String key) {
        this.key = key;
    }

    /** Under which the phrases keep its sentence. {@link #DEFAULTS} takes the list of keys as {0}, {@link #FACTOR} the factor as {1}. */
    public String key() {
        return key;
    }

    /** Those that stand beside an answer, in the order of reading. */
    public static List<RigAssumption> of(RigAnswer answer) {
        return Arrays.stream(values()).filter(one -> one.concerns(answer)).toList();
    }

    private boolean concerns(RigAnswer answer) {
        return switch (this) {
            case DEFAULTS -> !answer.assumed().isEmpty();
            case FACTOR -> answer.input().load().factor() > 1;
            case AT_REST, POINTS_FIXED, KNOTS_MASSLESS, TIED_TO_LENGTH, STIFFNESS_CHOSEN, NO_FRICTION, FREE_OF_ROCK ->
                true;
        };
    }
}
