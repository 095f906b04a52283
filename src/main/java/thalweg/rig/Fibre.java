package thalweg.rig;

import java.util.Locale;

/** What the strands are spun of. */
public enum Fibre {
    /** Polyamide. */
    NYLON("nylon"),
    /** Polyester. */
    POLYESTER("polyester"),
    /** Polyethylene of ultra-high molecular weight. */
    UHMWPE("UHMWPE");

    private final String words;

    Fibre(String words) {
        this.words = words;
    }

    /** How a rig file names it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As it stands in a sentence. */
    String words() {
        return words;
    }
}
