package thalweg.body;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import thalweg.fault.Sentence;

/** The kinds of things that change by revisions. Parents come before their children. */
public enum ThingType {
    CANYON(""),
    OBSTACLE(ObstacleBody.PARENT),
    STATION(StationBody.PARENT),
    ANCHOR(AnchorBody.PARENT),
    PART(PartBody.PARENT),
    TRIP(TripBody.PARENT),
    PRIVATE_NOTE(PrivateNoteBody.PARENT);

    private final String parentKey;

    ThingType(String parentKey) {
        this.parentKey = parentKey;
    }

    /** The key under which a body names what it is in; empty text for a canyon, which is in nothing. */
    public String parentKey() {
        return parentKey;
    }

    /** Whether it stays with the database in which it was entered. */
    public boolean isLocal() {
        return this == TRIP || this == PRIVATE_NOTE;
    }

    /** As the ledger writes it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As a person reads it. */
    public Sentence inWords() {
        return Sentence.word(this == OBSTACLE ? "place" : word().replace('_', ' '));
    }

    /** The type written with that word, if this version knows it. */
    public static Optional<ThingType> of(String word) {
        return Arrays.stream(values()).filter(type -> type.word().equals(word)).findFirst();
    }
}
