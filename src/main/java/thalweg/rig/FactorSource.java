package thalweg.rig;

/** How sure the figure is that a strength is multiplied by. */
public enum FactorSource {
    /** Read in a source that is named beside it. */
    PUBLISHED("published"),
    /** Worked out from a published figure, in a way that is named beside it. */
    DERIVED("derived"),
    /** What the trade does, without a source. */
    PRACTICE("common practice"),
    /** From memory, unconfirmed. */
    MEMORY("from memory"),
    /** No source has a figure; this one is ours. */
    OUR_CHOICE("our choice"),
    /** Somebody stated it for this rig or in the settings. */
    STATED("as stated with the rig");

    private final String words;

    FactorSource(String words) {
        this.words = words;
    }

    /** As it stands behind a figure. */
    public String words() {
        return words;
    }
}
