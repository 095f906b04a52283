package thalweg.body;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The kinds of facts. */
public enum FactType {
    ROUND(ThingType.CANYON),
    INSPECTION(ThingType.PART),
    RIGGING_NOTE(ThingType.STATION),
    RIG_ANALYSIS(ThingType.STATION),
    SHEET_GIVEN(ThingType.CANYON);

    private final ThingType owner;

    FactType(ThingType owner) {
        this.owner = owner;
    }

    /** The kind of thing that such a fact is about. */
    public ThingType owner() {
        return owner;
    }

    /** Whether it stays with the database in which it was noted. */
    public boolean isLocal() {
        return this == SHEET_GIVEN;
    }

    /** As the ledger writes it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The type written with that word, if this version knows it. */
    public static Optional<FactType> of(String word) {
        return Arrays.stream(values()).filter(type -> type.word().equals(word)).findFirst();
    }
}
