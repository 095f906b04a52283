package thalweg.rig;

import java.util.Locale;

/** How a rig stands up to one letter of the checklist. */
public enum RigVerdict {
    GOOD,
    WATCH,
    POOR,
    /** Nothing can be said, and the reason stands beside it. */
    UNKNOWN;

    /** As an answer spells it: "good". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
