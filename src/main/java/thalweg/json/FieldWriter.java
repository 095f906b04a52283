package thalweg.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Builds an object field by field; what is unknown or empty is left out, so that it can never look like a value. */
public final class FieldWriter {

    private final Map<String, Json> values = new LinkedHashMap<>();

    FieldWriter() {}

    /** Sets a field. */
    public FieldWriter put(String name, Json value) {
        values.put(name, value);
        return this;
    }

    /** Sets a text, unless it is blank: readers refuse a blank one. */
    public FieldWriter put(String name, String text) {
        if (!text.isBlank()) {
            values.put(name, Json.of(text));
        }
        return this;
    }

    /** Sets a whole number. */
    public FieldWriter put(String name, long number) {
        values.put(name, Json.of(number));
        return this;
    }

    /** Sets a flag, unless it is false: an absent flag reads as false. */
    public FieldWriter putIfTrue(String name, boolean flag) {
        if (flag) {
            values.put(name, Json.of(true));
        }
        return this;
    }

    /** Sets one of a list of words, in lower case. */
    public FieldWriter put(String name, Enum<?> word) {
        values.put(name, Json.of(word.name().toLowerCase(Locale.ROOT)));
        return this;
    }

    /** Sets a value that may be unknown. */
    public FieldWriter putKnown(String name, Optional<Json> value) {
        value.ifPresent(known -> values.put(name, known));
        return this;
    }

    /** Sets a word that may be unknown. */
    public FieldWriter putWord(String name, Optional<? extends Enum<?>> word) {
        word.ifPresent(known -> put(name, known));
        return this;
    }

    /** Sets a list of texts, unless there is none. */
    public FieldWriter put(String name, List<String> texts) {
        if (!texts.isEmpty()) {
            values.put(name, Json.texts(texts));
        }
        return this;
    }

    /** The finished object. */
    public Json.Fields done() {
        return new Json.Fields(values);
    }
}
