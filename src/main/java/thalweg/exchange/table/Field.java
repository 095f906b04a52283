package thalweg.exchange.table;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The fields of the records that a column can be. */
public enum Field {
    CANYON(Shape.TEXT, "name"),
    OTHER_NAMES(Shape.LIST, "other_names"),
    REGION(Shape.TEXT, "region"),
    COUNTRY(Shape.TEXT, "country"),
    FRENCH_GRADE(Shape.GRADE, "french_grade"),
    AMERICAN_GRADE(Shape.GRADE, "american_grade"),
    LONGEST_DROP(Shape.LENGTH, "longest_drop_cm"),
    APPROACH_TIME(Shape.MINUTES, "approach_min"),
    DESCENT_TIME(Shape.MINUTES, "descent_min"),
    EXIT_TIME(Shape.MINUTES, "exit_min"),
    ROPES(Shape.LINES, "ropes"),
    APPROACH(Shape.LINES, "approach"),
    EXIT(Shape.LINES, "exit"),
    SEASON(Shape.LINES, "season"),
    CATCHMENT(Shape.LINES, "catchment"),
    ACCESS(Shape.LINES, "access"),
    EMERGENCY(Shape.LINES, "emergency"),
    SOURCES(Shape.LINES, "sources"),
    NOTES(Shape.LINES, "notes"),
    INVENTED(Shape.FLAG, "invented"),
    COORDINATES(Shape.COORDINATE, ""),
    LATITUDE(Shape.COORDINATE, ""),
    LONGITUDE(Shape.COORDINATE, ""),
    ACCURACY(Shape.LENGTH, ""),
    PLACE(Shape.NUMBER, ""),
    PLACE_KIND(Shape.WORD, "kind", "obstacle"),
    PLACE_NAME(Shape.TEXT, "name"),
    DISTANCE(Shape.LENGTH, "distance_cm"),
    HEIGHT(Shape.LENGTH, "height_cm"),
    WAY_OUT(Shape.MINUTES, "way_out_min"),
    PLACE_NOTE(Shape.LINES, "note"),
    PLACE_COORDINATES(Shape.COORDINATE, ""),
    PLACE_LATITUDE(Shape.COORDINATE, ""),
    PLACE_LONGITUDE(Shape.COORDINATE, ""),
    PLACE_ACCURACY(Shape.LENGTH, ""),
    STATION(Shape.TEXT, "name"),
    SIDE(Shape.WORD, "side", "side"),
    ROPE_NEEDED(Shape.LENGTH, "rope_needed_cm"),
    EXPOSURE(Shape.WORD, "exposure", "exposure"),
    FINDING(Shape.LINES, "finding"),
    RUB_POINTS(Shape.LINES, "rub_points"),
    LANDING(Shape.LINES, "landing"),
    ANCHOR(Shape.TEXT, "name"),
    ANCHOR_ROLE(Shape.WORD, "role", "role"),
    ANCHOR_NOTE(Shape.LINES, "note"),
    PART(Shape.TEXT, "label"),
    KIND(Shape.WORD, "kind", "part"),
    MATERIAL(Shape.TEXT, "material"),
    SIZE(Shape.TEXT, "size"),
    STANDARD(Shape.TEXT, "standard"),
    MAKER(Shape.TEXT, "maker"),
    BATCH(Shape.TEXT, "batch"),
    PLACED(Shape.DATE, "placed"),
    RIGHT(Shape.LENGTH, ""),
    UP(Shape.LENGTH, ""),
    OUT(Shape.LENGTH, ""),
    STRENGTH(Shape.FORCE, "strength_n"),
    AXIAL_STRENGTH(Shape.FORCE, "axial_strength_n"),
    HOLDS_ALONE(Shape.WORD, "holds_alone", "holds"),
    NOTE(Shape.LINES, "note"),
    ON(Shape.DATE, "on"),
    BY(Shape.TEXT, "by"),
    FOUND(Shape.WORD, "found", "condition"),
    LEFT(Shape.WORD, "left", "condition"),
    NOT_SEEN(Shape.FLAG, "not_seen"),
    WATER(Shape.WORD, "water", "water"),
    WORK(Shape.WORDS, "work", "work"),
    PHOTOS(Shape.LINES, ""),
    PHOTO_HASHES(Shape.LINES, ""),
    PHOTO_CAPTIONS(Shape.LINES, ""),
    COUNTS(Shape.FLAG, ""),
    WITHDRAWN_BECAUSE(Shape.TEXT, ""),
    WITHDRAWN_BY(Shape.TEXT, ""),
    WITHDRAWN_AT(Shape.TEXT, ""),
    CORRECTION_REASON(Shape.TEXT, ""),
    WRITTEN_BY(Shape.TEXT, ""),
    WRITTEN_AT(Shape.TEXT, ""),
    CORRECTS_UID(Shape.UID, ""),
    ROUND_UID(Shape.UID, "round"),
    ENTRY_UID(Shape.UID, ""),
    PART_UID(Shape.UID, ""),
    ANCHOR_UID(Shape.UID, ""),
    STATION_UID(Shape.UID, ""),
    PLACE_UID(Shape.UID, ""),
    CANYON_UID(Shape.UID, "");

    private final Shape shape;
    private final String key;
    private final String list;

    Field(Shape shape, String key) {
        this(shape, key, "");
    }

    Field(Shape shape, String key, String list) {
        this.shape = shape;
        this.key = key;
        this.list = list;
    }

    /** As it is typed, and as the headings of exported tables have it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The field of that word. */
    public static Optional<Field> of(String word) {
        return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }

    /** How its cells are read. */
    Shape shape() {
        return shape;
    }

    /** Its key in the body of a record; empty text where it takes more than one cell, or names what the row is about. */
    String key() {
        return key;
    }

    /** Where its words are from: the beginning of their keys among the phrases. */
    String list() {
        return list;
    }

    /** Whether a bare number says nothing in it: the heading or the cell has to name the unit. */
    public boolean needsUnit() {
        return shape == Shape.LENGTH || shape == Shape.FORCE;
    }
}
