package thalweg.body;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The kinds of facts. */
public enum FactType {
    INSPECTION,
    RIGGING_NOTE,
    RIG_ANALYSIS;

    /** As the ledger writes it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The type written with that word, if this version knows it. */
    public static Optional<FactType> of(String word) {
        return Arrays.stream(values()).filter(type -> type.word().equals(word)).findFirst();
    }
}
