package thalweg.rig;

import java.util.Locale;

/** What matters most to whoever rigs, where layouts trade one thing for another. */
public enum RigPriority {
    /** Nobody said. */
    UNSTATED,
    /** That the points carry alike, wherever the load goes: doubtful points of like strength. */
    EQUAL_SHARES,
    /** That nothing drops far when a point goes: a ledge or an edge below, a person beside the anchor. */
    LITTLE_EXTENSION;

    /** The next of them, after the last one the first again. */
    public RigPriority next() {
        return switch (this) {
            case UNSTATED -> EQUAL_SHARES;
            case EQUAL_SHARES -> LITTLE_EXTENSION;
            case LITTLE_EXTENSION -> UNSTATED;
        };
    }

    /** How a command spells it: "equal-shares". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
