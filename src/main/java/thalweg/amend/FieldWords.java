package thalweg.amend;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.place.Position;
import thalweg.text.Phrases;
import thalweg.units.Force;
import thalweg.units.Length;
import thalweg.units.Mass;
import thalweg.units.UnitSystem;

/** Names and values of the fields of bodies as people read them; what only a newer version knows is shown as it is. */
final class FieldWords {

    /** Lists of words by the field that holds one of them; the two kinds are told apart by the type of thing. */
    private static final Map<String, String> LISTS = Map.of(
            "role", "role.",
            "side", "side.",
            "exposure", "exposure.",
            "holds_alone", "holds.",
            "water", "water.",
            "work", "work.",
            "found", "condition.",
            "left", "condition.",
            "pace_from", "trip_pace.");

    private static final Map<String, String> KINDS = Map.of("obstacle", "obstacle.", "part", "part.");

    private static final Set<String> TIMES_OF_DAY = Set.of("start_min", "back_min", "reached_min", "left_min");

    /** Longer texts are told by their length: nobody reads a rig file in a list of changes [characters]. */
    private static final int LONGEST = 1_000;

    private static final int MINUTES = 60;

    private final Phrases phrases;
    private final UnitSystem units;

    FieldWords(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** What a field is called. */
    String name(String key) {
        return phraseOr("field." + key, key);
    }

    private String phraseOr(String key, String otherwise) {
        return phrases.has(key) ? phrases.say(key) : otherwise;
    }

    /** What stands in a field; the word for nothing where it is not there. */
    String value(String type, String key, Optional<Json> value) {
        return value.map(known -> value(type, key, known)).orElse(phrases.say("field.none"));
    }

    private String value(String type, String key, Json value) {
        if (value instanceof Json.Text text) {
            return text(type, key, text.value());
        }
        if (value instanceof Json.Decimal number) {
            return number(key, number.value().longValue());
        }
        if (value instanceof Json.Flag flag) {
            return phrases.say(flag.value() ? "field.yes" : "field.no");
        }
        if (value instanceof Json.Items items) {
            return items.values().stream().map(item -> value(type, key, item)).collect(Collectors.joining(", "));
        }
        return value instanceof Json.Fields fields ? fields(key, fields) : JsonText.canonical(value);
    }

    private String text(String type, String key, String text) {
        String list = key.equals("kind") ? KINDS.getOrDefault(type, "") : LISTS.getOrDefault(key, "");
        if (!list.isEmpty()) {
            return phraseOr(list + text, text);
        }
        return text.length() > LONGEST ? phrases.say("field.long", text.length()) : text;
    }

    private String number(String key, long number) {
        if (key.endsWith("_cm")) {
            return Length.centimetres(number).print(units);
        }
        if (key.endsWith("_n")) {
            return new Force(number).print(units);
        }
        if (key.equals("weight_g")) {
            return new Mass(number / 1000.0).print(units);
        }
        if (TIMES_OF_DAY.contains(key)) {
            return String.format(Locale.ROOT, "%d:%02d", number / MINUTES, number % MINUTES);
        }
        return key.endsWith("_min") ? phrases.say("field.minutes", number) : Long.toString(number);
    }

    private String fields(String key, Json.Fields fields) {
        return switch (key) {
            case "position" -> position(fields);
            case "inventory" -> phrases.count("contents.part", fields.values().size());
            case "photos" -> photo(fields);
            case "times" -> members(fields.without("place"));
            default -> members(fields);
        };
    }

    private static String position(Json.Fields fields) {
        Optional<Long> lat = whole(fields, "lat_e7");
        Optional<Long> lon = whole(fields, "lon_e7");
        return lat.isPresent() && lon.isPresent()
                ? new Position(lat.get(), lon.get(), Optional.empty()).printDecimal()
                : JsonText.canonical(fields);
    }

    private static Optional<Long> whole(Json.Fields fields, String key) {
        return fields.field(key)
                .flatMap(value -> value instanceof Json.Decimal number
                        ? Optional.of(number.value().longValue())
                        : Optional.empty());
    }

    private static String photo(Json.Fields photo) {
        String caption = photo.text("caption");
        return photo.text("file") + (caption.isEmpty() ? "" : " (" + caption + ")");
    }

    /** A person or rope of a trip, or where a point is: each of its fields. */
    private String members(Json.Fields fields) {
        List<String> members = new ArrayList<>();
        fields.values().forEach((key, value) -> members.add(name(key) + " " + member(key, value)));
        return String.join(" ", members);
    }

    /** Where a point is matters to the hand-width. */
    private String member(String key, Json value) {
        return key.endsWith("_cm") && value instanceof Json.Decimal number
                ? Length.centimetres(number.value().longValue()).printFine(units)
                : value("", key, value);
    }
}
