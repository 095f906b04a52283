package thalweg.exchange.table;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thalweg.body.ThingType;

/** What the rows of a table are. */
public enum TableKind {
    /** A canyon a row. */
    CANYONS(
            List.of(
                    Field.CANYON,
                    Field.OTHER_NAMES,
                    Field.REGION,
                    Field.COUNTRY,
                    Field.FRENCH_GRADE,
                    Field.AMERICAN_GRADE,
                    Field.LONGEST_DROP,
                    Field.COORDINATES,
                    Field.LATITUDE,
                    Field.LONGITUDE,
                    Field.ACCURACY,
                    Field.APPROACH_TIME,
                    Field.DESCENT_TIME,
                    Field.EXIT_TIME,
                    Field.ROPES,
                    Field.APPROACH,
                    Field.EXIT,
                    Field.SEASON,
                    Field.CATCHMENT,
                    Field.ACCESS,
                    Field.EMERGENCY,
                    Field.SOURCES,
                    Field.NOTES,
                    Field.INVENTED,
                    Field.CANYON_UID),
            Set.of(
                    "longest_drop_cm",
                    "stations",
                    "worst_condition",
                    "gone",
                    "never_inspected",
                    "last_inspected",
                    "may_fit")),
    /** A station with its place on the line a row, or a place without a station. */
    STATIONS(
            List.of(
                    Field.STATION,
                    Field.CANYON,
                    Field.PLACE,
                    Field.PLACE_KIND,
                    Field.PLACE_NAME,
                    Field.HEIGHT,
                    Field.DISTANCE,
                    Field.WAY_OUT,
                    Field.PLACE_NOTE,
                    Field.PLACE_COORDINATES,
                    Field.PLACE_LATITUDE,
                    Field.PLACE_LONGITUDE,
                    Field.PLACE_ACCURACY,
                    Field.SIDE,
                    Field.ROPE_NEEDED,
                    Field.EXPOSURE,
                    Field.COORDINATES,
                    Field.LATITUDE,
                    Field.LONGITUDE,
                    Field.ACCURACY,
                    Field.FINDING,
                    Field.RUB_POINTS,
                    Field.LANDING,
                    Field.NOTES,
                    Field.INVENTED,
                    Field.STATION_UID,
                    Field.PLACE_UID,
                    Field.CANYON_UID),
            Set.of(
                    "parts",
                    "worst_condition",
                    "gone",
                    "never_inspected",
                    "oldest_look",
                    "due_parts",
                    "due",
                    "due_reason",
                    "due_on")),
    /** A part with its anchor a row, or an anchor without a part. */
    PARTS(
            List.of(
                    Field.PART,
                    Field.CANYON,
                    Field.PLACE,
                    Field.STATION,
                    Field.ANCHOR,
                    Field.ANCHOR_ROLE,
                    Field.ANCHOR_NOTE,
                    Field.KIND,
                    Field.MATERIAL,
                    Field.SIZE,
                    Field.STANDARD,
                    Field.MAKER,
                    Field.BATCH,
                    Field.PLACED,
                    Field.RIGHT,
                    Field.UP,
                    Field.OUT,
                    Field.STRENGTH,
                    Field.AXIAL_STRENGTH,
                    Field.HOLDS_ALONE,
                    Field.NOTE,
                    Field.PART_UID,
                    Field.ANCHOR_UID,
                    Field.STATION_UID,
                    Field.CANYON_UID),
            Set.of(
                    "replaced_since",
                    "condition",
                    "seen_on",
                    "entries_disagree",
                    "not_seen_since",
                    "invented",
                    "may_fit",
                    "task",
                    "reason",
                    "due_on",
                    "days_over")),
    /** What was found on a part, a look a row. */
    INSPECTIONS(
            List.of(
                    Field.CANYON,
                    Field.PLACE,
                    Field.STATION,
                    Field.PART,
                    Field.ON,
                    Field.BY,
                    Field.FOUND,
                    Field.LEFT,
                    Field.NOT_SEEN,
                    Field.WATER,
                    Field.WORK,
                    Field.NOTE,
                    Field.PHOTOS,
                    Field.PHOTO_HASHES,
                    Field.PHOTO_CAPTIONS,
                    Field.COUNTS,
                    Field.WITHDRAWN_BECAUSE,
                    Field.WITHDRAWN_BY,
                    Field.WITHDRAWN_AT,
                    Field.CORRECTS_UID,
                    Field.CORRECTION_REASON,
                    Field.WRITTEN_BY,
                    Field.WRITTEN_AT,
                    Field.ROUND_UID,
                    Field.ENTRY_UID,
                    Field.PART_UID,
                    Field.STATION_UID,
                    Field.CANYON_UID),
            Set.of("kind", "invented"));

    // Both are what List.of and Set.of made, which nobody can change.
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<Field> fields;

    // As above.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Set<String> workedOut;

    TableKind(List<Field> fields, Set<String> workedOut) {
        this.fields = fields;
        this.workedOut = workedOut;
    }

    /** As it is typed. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The kind of that word. */
    public static Optional<TableKind> of(String word) {
        return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }

    /** All words, with commas between. */
    public static String words() {
        return Arrays.stream(values()).map(TableKind::word).collect(Collectors.joining(", "));
    }

    /** The fields that a column can be, that by which a row is called first. */
    public List<Field> fields() {
        return fields;
    }

    /** Whether exported tables have a column under that heading that the program works out from the records. */
    public boolean worksOut(String heading) {
        return workedOut.contains(heading);
    }

    /** The field by itself, where it can be a column of such a table. */
    public boolean has(Field field) {
        return fields.contains(field);
    }

    /** The fields of that thing which a row sets in its body. */
    Set<Field> of(ThingType type) {
        EnumSet<Field> own = EnumSet.noneOf(Field.class);
        for (Field field : fields) {
            if (!field.key().isEmpty() && Owners.of(this, field).equals(Optional.of(type))) {
                own.add(field);
            }
        }
        return own;
    }
}
