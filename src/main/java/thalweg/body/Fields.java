package thalweg.body;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.units.Force;
import thalweg.units.Length;

/** The fields that several bodies share: names, dates, lengths in centimetres, forces in newtons, prose. */
final class Fields {

    /** The key of a place in line. */
    static final String ORDER = "order";

    private Fields() {}

    static Optional<Length> centimetres(FieldReader in, String key, long least, long most) {
        OptionalLong value = in.whole(key, least, most);
        return value.isPresent() ? Optional.of(Length.centimetres(value.getAsLong())) : Optional.empty();
    }

    static Optional<Json> centimetres(Optional<Length> length) {
        return length.map(known -> Json.of(known.inCentimetres()));
    }

    static Optional<Force> newtons(FieldReader in, String key) {
        OptionalLong value = in.whole(key, 1, Limits.STRENGTH_N);
        return value.isPresent() ? Optional.of(new Force(value.getAsLong())) : Optional.empty();
    }

    static Optional<Json> newtons(Optional<Force> force) {
        return force.map(known -> Json.of(Math.round(known.newtons())));
    }

    static Optional<Integer> whole(FieldReader in, String key, long least, long most) {
        OptionalLong value = in.whole(key, least, most);
        return value.isPresent() ? Optional.of((int) value.getAsLong()) : Optional.empty();
    }

    static Optional<Json> whole(Optional<Integer> number) {
        return number.map(Json::of);
    }

    static Optional<PartialDate> date(FieldReader in, String key) {
        return in.optionalText(key, 10).flatMap(text -> {
            try {
                return Optional.of(PartialDate.parse(text));
            } catch (InputException e) {
                in.refuse(
                        key,
                        Sentence.of("is \"{0}\"; a date is a day, month or year: 2019-06-14, 2019-06 or 2019.", text));
                return Optional.empty();
            }
        });
    }

    static PartialDate requiredDate(FieldReader in, String key) {
        if (!in.has(key)) {
            in.refuse(key, Sentence.of("is missing; it should be a day, month or year: 2019-06-14, 2019-06 or 2019."));
        }
        return date(in, key).orElse(new PartialDate(2000, 0, 0));
    }

    static Optional<Uid> uid(FieldReader in, String key) {
        Optional<String> text = in.optionalText(key, 36);
        Optional<Uid> uid = text.flatMap(Uid::parse);
        if (text.isPresent() && uid.isEmpty()) {
            in.refuse(key, Sentence.of("is no id; it should be 32 hexadecimal digits in five groups."));
        }
        return uid;
    }

    /** The place in line, or the stand-in where the file leaves it to the order of its lists. */
    static String order(FieldReader in, String standIn) {
        Optional<String> order = in.optionalText(ORDER, 64);
        if (order.filter(key -> !OrderKey.isKey(key)).isPresent()) {
            in.refuse(ORDER, Sentence.of("is no place in line; leave it out and the order of the list counts."));
            return standIn;
        }
        return order.orElse(standIn);
    }

    static <K extends Enum<K>> Prose<K> prose(FieldReader in, Class<K> headings) {
        Map<K, String> texts = new LinkedHashMap<>();
        for (K heading : headings.getEnumConstants()) {
            in.optionalLines(key(heading), Limits.PROSE).ifPresent(text -> texts.put(heading, text));
        }
        return new Prose<>(texts);
    }

    static String key(Enum<?> heading) {
        return heading.name().toLowerCase(Locale.ROOT);
    }

    static Json.Fields withProse(Json.Fields fields, Prose<?> prose) {
        Json.Fields all = fields;
        for (Map.Entry<? extends Enum<?>, String> text : prose.texts().entrySet()) {
            all = all.with(key(text.getKey()), Json.of(text.getValue()));
        }
        return all;
    }

    static List<Json> words(List<? extends Enum<?>> words) {
        return words.stream().map(word -> Json.of(key(word))).toList();
    }
}
