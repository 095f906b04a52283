package thalweg.rig;

import java.util.Locale;

/** Where textile has been since it was made. */
public enum Kept {
    /** In a store, out of the light, and out only for use. */
    INDOORS,
    /** Left at an anchor, in light and weather. */
    OUTDOORS;

    /** How a rig file names it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
