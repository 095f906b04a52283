package thalweg.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A JSON value that cannot change. */
public sealed interface Json {

    /** The one value of JSON's {@code null}. */
    Nothing NOTHING = new Nothing();

    /**
     * A string.
     *
     * @param value any text
     */
    record Text(String value) implements Json {}

    /**
     * A number.
     *
     * @param value exactly as it was written
     */
    record Decimal(BigDecimal value) implements Json {}

    /**
     * True or false.
     *
     * @param value which of the two
     */
    record Flag(boolean value) implements Json {}

    /** JSON's {@code null}. */
    record Nothing() implements Json {}

    /**
     * An array.
     *
     * @param values in order, possibly none
     */
    record Items(List<Json> values) implements Json {
        public Items {
            values = List.copyOf(values);
        }
    }

    /**
     * An object.
     *
     * @param values by name, in the order in which they were written
     */
    record Fields(Map<String, Json> values) implements Json {
        public Fields {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        }

        /** The value under that name, if there is one. */
        public Optional<Json> field(String name) {
            return Optional.ofNullable(values.get(name));
        }

        /** The text under that name; empty text where there is none. */
        public String text(String name) {
            return field(name)
                    .map(value -> value instanceof Text text ? text.value() : "")
                    .orElse("");
        }

        /** The same without one field. */
        public Fields without(String name) {
            Map<String, Json> changed = new LinkedHashMap<>(values);
            changed.remove(name);
            return new Fields(changed);
        }

        /** The same with one field set. */
        public Fields with(String name, Json value) {
            Map<String, Json> changed = new LinkedHashMap<>(values);
            changed.put(name, value);
            return new Fields(changed);
        }
    }

    /** Text as a value. */
    static Json of(String value) {
        return new Text(value);
    }

    /** A whole number as a value. */
    static Json of(long value) {
        return new Decimal(BigDecimal.valueOf(value));
    }

    /**
     * A number as a value, or {@code null} where it is not finite.
     *
     * @param decimals to which it is rounded, 0 or more
     */
    static Json rounded(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return NOTHING;
        }
        BigDecimal exact = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        BigDecimal shortest = exact.signum() == 0 ? BigDecimal.ZERO : exact.stripTrailingZeros();
        return new Decimal(shortest.scale() < 0 ? shortest.setScale(0) : shortest);
    }

    /** A flag as a value. */
    static Json of(boolean value) {
        return new Flag(value);
    }

    /** A list of texts as a value. */
    static Json texts(List<String> values) {
        List<Json> items = new ArrayList<>();
        values.forEach(value -> items.add(of(value)));
        return new Items(items);
    }

    /** Begins an object. */
    static FieldWriter fields() {
        return new FieldWriter();
    }
}
