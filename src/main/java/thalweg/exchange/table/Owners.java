package thalweg.exchange.table;

import java.util.Optional;
import thalweg.body.ThingType;

/** Of which thing a column says something. */
final class Owners {

    private Owners() {}

    /** The thing of that field in a table of that kind; empty where the field only names what the row is about. */
    static Optional<ThingType> of(TableKind kind, Field field) {
        return switch (field) {
            case CANYON -> only(kind == TableKind.CANYONS, ThingType.CANYON);
            case STATION -> only(kind == TableKind.STATIONS, ThingType.STATION);
            case PART -> only(kind == TableKind.PARTS, ThingType.PART);
            case PLACE_KIND, PLACE_NAME, DISTANCE, HEIGHT, WAY_OUT, PLACE_NOTE -> Optional.of(ThingType.OBSTACLE);
            case ANCHOR, ANCHOR_ROLE, ANCHOR_NOTE -> Optional.of(ThingType.ANCHOR);
            case INVENTED -> Optional.of(ThingType.CANYON);
            default -> main(kind);
        };
    }

    private static Optional<ThingType> only(boolean is, ThingType type) {
        return is ? Optional.of(type) : Optional.empty();
    }

    private static Optional<ThingType> main(TableKind kind) {
        return switch (kind) {
            case CANYONS -> Optional.of(ThingType.CANYON);
            case STATIONS -> Optional.of(ThingType.STATION);
            case PARTS -> Optional.of(ThingType.PART);
            case INSPECTIONS -> Optional.empty();
        };
    }
}
