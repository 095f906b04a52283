package thalweg.body;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The kinds of things that change by revisions. Parents come before their children. */
public enum ThingType {
    CANYON,
    OBSTACLE,
    STATION,
    ANCHOR,
    PART;

    /** As the ledger writes it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The type written with that word, if this version knows it. */
    public static Optional<ThingType> of(String word) {
        return Arrays.stream(values()).filter(type -> type.word().equals(word)).findFirst();
    }
}
