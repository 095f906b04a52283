package thalweg.rig;

import java.util.Arrays;
import java.util.List;

/** What every answer of the model takes for granted. Its words are kept by key in the phrases. */
public enum RigAssumption {
    /** The load is at rest. */
    AT_REST("rig.assumption.at_rest", false),
    /** The points neither move nor give. */
    POINTS_FIXED("rig.assumption.points_fixed", false),
    /** Knots and the master weigh nothing. */
    KNOTS_MASSLESS("rig.assumption.knots_massless", false),
    /** The lengths of the legs are as tied, to the millimetre. */
    TIED_TO_LENGTH("rig.assumption.tied_to_length", false),
    /** The stiffness is chosen, not measured. */
    STIFFNESS_CHOSEN("rig.assumption.stiffness_chosen", false),
    /** Strands are dry and slide without friction. */
    NO_FRICTION("rig.assumption.no_friction", false),
    /** The cords hang on nothing but the points: no edge, no wall. */
    FREE_OF_ROCK("rig.assumption.free_of_rock", false),
    /** Some of the numbers are the program's defaults. */
    DEFAULTS("rig.assumption.defaults", true);

    private final String key;
    private final boolean onlyWithDefaults;

    RigAssumption(String key, boolean onlyWithDefaults) {
        this.key = key;
        this.onlyWithDefaults = onlyWithDefaults;
    }

    /** Under which the phrases keep its sentence. {@link #DEFAULTS} takes the list of keys as {0}. */
    public String key() {
        return key;
    }

    /** Those that stand beside an answer, in the order of reading. */
    public static List<RigAssumption> of(RigAnswer answer) {
        boolean defaults = !answer.assumed().isEmpty();
        return Arrays.stream(values())
                .filter(assumption -> defaults || !assumption.onlyWithDefaults)
                .toList();
    }
}
