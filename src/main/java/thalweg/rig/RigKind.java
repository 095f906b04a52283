package thalweg.rig;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** A way of laying strands between the points and the master. */
public enum RigKind {
    /** One point, one leg. */
    SINGLE(1, 1),
    /** A leg for each point, tied together in one knot. */
    FOCUSED(1, 6),
    /** One closed strand over all points, on which the master slides. */
    SLIDING(1, 6),
    /** Two legs, and between their knots a strand on which the master slides. */
    LIMITED(2, 2),
    /** One closed strand through two points and the master. */
    LOOP(2, 2);

    private static final Set<String> COMMON = Set.of(
            "kind",
            "focus",
            "EA_kN",
            "strand_kN",
            "knot_efficiency",
            "knot",
            "condition",
            "strand_fibre",
            "strand_age_years",
            "strand_kept",
            "connector",
            "derating");

    private final int fewestPoints;
    private final int mostPoints;

    RigKind(int fewestPoints, int mostPoints) {
        this.fewestPoints = fewestPoints;
        this.mostPoints = mostPoints;
    }

    /** How a rig file names it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it has a leg for each point, laid in the order of the points and before all else. */
    boolean hasLegs() {
        return this == SINGLE || this == FOCUSED || this == LIMITED;
    }

    /** Whether a sling may reach from its point to the master and be the leg. */
    boolean takesSlingsAsLegs() {
        return this == SINGLE || this == FOCUSED;
    }

    /** Whether a rig of this kind may state that key of the rig object. */
    public boolean takes(String key) {
        return COMMON.contains(key) || ownKeys().contains(key);
    }

    private Set<String> ownKeys() {
        return switch (this) {
            case SINGLE -> Set.of("strands");
            case FOCUSED -> Set.of("strands", "slack_m");
            case SLIDING -> Set.of("captured", "friction");
            case LIMITED -> Set.of("strands", "friction", "slider_strands", "limit_m", "limit_range_deg");
            case LOOP -> Set.of();
        };
    }

    /** The fewest points it can be laid on, 1 or more. */
    public int fewestPoints() {
        return fewestPoints;
    }

    /** The most points it can be laid on. */
    public int mostPoints() {
        return mostPoints;
    }

    /** The words of all kinds, as "single, focused". */
    static String words() {
        return Arrays.stream(values()).map(RigKind::word).collect(Collectors.joining(", "));
    }

    /** The words of all kinds that may state that key of the rig object, as "sliding, limited". */
    static String wordsOfThoseThatTake(String key) {
        return Arrays.stream(values())
                .filter(kind -> kind.takes(key))
                .map(RigKind::word)
                .collect(Collectors.joining(", "));
    }
}
