package thalweg.logbook;

import java.util.Arrays;

/** The condition of a part, best first. */
public enum Condition {
    SOUND(0),
    WORN(1),
    DOUBTFUL(2),
    UNSAFE(3),
    GONE(4);

    private final int severity;

    Condition(int severity) {
        this.severity = severity;
    }

    /** A number that grows with how bad it is and never changes for a condition; databases keep it. */
    public int severity() {
        return severity;
    }

    /** The condition of that severity. */
    public static Condition ofSeverity(int severity) {
        return Arrays.stream(values())
                .filter(condition -> condition.severity == severity)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no condition has the severity " + severity));
    }

    /** Whether this is worse than that. */
    public boolean isWorseThan(Condition other) {
        return severity > other.severity;
    }

    /** The worse of two. */
    public static Condition worse(Condition one, Condition other) {
        return one.isWorseThan(other) ? one : other;
    }
}
