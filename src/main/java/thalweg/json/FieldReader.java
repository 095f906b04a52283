package thalweg.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import thalweg.fault.Sentence;
import thalweg.text.Clean;

/**
 * Reads the fields of an object with their rules; every breach becomes a finding and a stand-in value, so that reading
 * goes on. Whoever asks checks {@link #sound()} before trusting what was read.
 */
public final class FieldReader {

    private final Json.Fields fields;
    private final String path;
    private final Findings findings;
    private final ToIntFunction<Json> lines;
    private final Set<String> asked = new LinkedHashSet<>();
    private final int line;
    private final Runnable onBreach;
    private boolean sound = true;

    FieldReader(Json.Fields fields, String path, Findings findings, ToIntFunction<Json> lines) {
        this(fields, path, findings, lines, () -> {});
    }

    private FieldReader(
            Json.Fields fields, String path, Findings findings, ToIntFunction<Json> lines, Runnable onBreach) {
        this.fields = fields;
        this.path = path;
        this.findings = findings;
        this.lines = lines;
        this.line = lines.applyAsInt(fields);
        this.onBreach = onBreach;
    }

    /** A reader of an object that came from no file. */
    public static FieldReader of(Json.Fields fields, Findings findings) {
        return new FieldReader(fields, "", findings, value -> 0);
    }

    /** Whether nothing that was asked here, or of the objects inside, broke a rule so far. */
    public boolean sound() {
        return sound;
    }

    /** The line on which the object begins, 0 where that is not known. */
    public int line() {
        return line;
    }

    /** Notes a breach of a rule under that key. */
    public void refuse(String key, Sentence what) {
        int own = fields.field(key).map(lines::applyAsInt).orElse(0);
        findings.add(at(key), own > 0 ? own : line, what);
        breached();
    }

    private void breached() {
        sound = false;
        onBreach.run();
    }

    /** Whether the key is there and not null. */
    public boolean has(String key) {
        return present(key).isPresent();
    }

    /** A text on one line that must be there and not blank; cleaned, as all that comes from outside. */
    public String text(String key, int longest) {
        return required(key, optionalText(key, longest));
    }

    private String required(String key, Optional<String> text) {
        if (text.isEmpty() && present(key).isEmpty()) {
            refuse(key, Sentence.of("is missing; it should be a text."));
        }
        return text.orElse("?");
    }

    /** A text on one line that may be missing. */
    public String textOrEmpty(String key, int longest) {
        return optionalText(key, longest).orElse("");
    }

    /** A text of several lines that may be missing. */
    public String linesOrEmpty(String key, int longest) {
        return optionalLines(key, longest).orElse("");
    }

    /** A text on one line that may be missing; a blank one is refused. */
    public Optional<String> optionalText(String key, int longest) {
        return raw(key, longest).map(text -> Clean.line(text, longest)).filter(text -> soundText(key, text));
    }

    /** A text of several lines that may be missing; a blank one is refused. */
    public Optional<String> optionalLines(String key, int longest) {
        return raw(key, longest).map(text -> Clean.lines(text, longest)).filter(text -> soundText(key, text));
    }

    /** A text that must be there and is kept to the letter; for what is only ever read by a program. */
    public String exact(String key, int longest) {
        return required(key, raw(key, longest).filter(text -> soundText(key, text)));
    }

    private Optional<String> raw(String key, int longest) {
        Optional<Json> value = present(key);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (!(value.get() instanceof Json.Text text)) {
            refuse(key, Sentence.of("should be a text."));
            return Optional.empty();
        }
        if (length(text) > longest) {
            refuse(key, Sentence.of("is longer than {0} characters.", longest));
            return Optional.empty();
        }
        return Optional.of(text.value());
    }

    private boolean soundText(String key, String cleaned) {
        if (cleaned.isBlank()) {
            refuse(key, Sentence.of("is blank; leave it out where it is not known."));
            return false;
        }
        return true;
    }

    private static int length(Json.Text text) {
        return text.value().codePointCount(0, text.value().length());
    }

    /** A whole number that may be missing. */
    public OptionalLong whole(String key, long least, long most) {
        Optional<BigDecimal> number = number(key);
        if (number.isEmpty()) {
            return OptionalLong.empty();
        }
        BigDecimal value = number.get();
        if (value.stripTrailingZeros().scale() > 0
                || value.compareTo(BigDecimal.valueOf(least)) < 0
                || value.compareTo(BigDecimal.valueOf(most)) > 0) {
            refuse(
                    key,
                    Sentence.of(
                            "is {0}; it should be a whole number from {1} to {2}.",
                            JsonText.number(value), least, most));
            return OptionalLong.empty();
        }
        return OptionalLong.of(value.longValueExact());
    }

    /** A number that may be missing, with whatever value it has as long as that is finite. */
    public OptionalDouble real(String key) {
        Optional<BigDecimal> number = number(key);
        if (number.isEmpty()) {
            return OptionalDouble.empty();
        }
        double value = number.get().doubleValue();
        if (!Double.isFinite(value)) {
            refuse(key, Sentence.of("is beyond any number that can be reckoned with."));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    private Optional<BigDecimal> number(String key) {
        Optional<Json> value = present(key);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (value.get() instanceof Json.Decimal number) {
            return Optional.of(number.value());
        }
        refuse(key, Sentence.of("should be a number."));
        return Optional.empty();
    }

    /** A list of numbers that may be missing. */
    public Optional<List<Double>> reals(String key) {
        Optional<Json> value = present(key);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (value.get() instanceof Json.Items items
                && items.values().stream()
                        .allMatch(item -> item instanceof Json.Decimal number
                                && Double.isFinite(number.value().doubleValue()))) {
            return Optional.of(items.values().stream()
                    .map(item -> ((Json.Decimal) item).value().doubleValue())
                    .toList());
        }
        refuse(key, Sentence.of("should be a list of numbers."));
        return Optional.empty();
    }

    /** True or false; missing is empty. */
    public Optional<Boolean> flag(String key) {
        Optional<Json> value = present(key);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (value.get() instanceof Json.Flag flag) {
            return Optional.of(flag.value());
        }
        refuse(key, Sentence.of("should be true or false."));
        return Optional.empty();
    }

    /** One of the words of a list; missing is empty. */
    public <E extends Enum<E>> Optional<E> word(String key, Class<E> words) {
        Optional<String> text = optionalText(key, 64);
        return text.flatMap(word -> oneOf(key, word, words));
    }

    private <E extends Enum<E>> Optional<E> oneOf(String key, String word, Class<E> words) {
        Optional<E> match = Arrays.stream(words.getEnumConstants())
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst();
        if (match.isEmpty()) {
            refuse(key, Sentence.of("is \"{0}\"; it should be one of {1}.", word, allOf(words)));
        }
        return match;
    }

    private static <E extends Enum<E>> String allOf(Class<E> words) {
        return Arrays.stream(words.getEnumConstants())
                .map(one -> one.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
    }

    /** One of the words of a list, which must be there; the first of them stands in where it is not. */
    public <E extends Enum<E>> E requiredWord(String key, Class<E> words) {
        if (present(key).isEmpty()) {
            refuse(key, Sentence.of("is missing; it should be one of {0}.", allOf(words)));
        }
        return word(key, words).orElse(words.getEnumConstants()[0]);
    }

    /** A list of words of a list; missing is none. */
    public <E extends Enum<E>> List<E> words(String key, Class<E> words) {
        List<E> found = new ArrayList<>();
        for (String word : texts(key, 64)) {
            oneOf(key, word, words).ifPresent(found::add);
        }
        return found;
    }

    /** A list of texts; missing is none. */
    public List<String> texts(String key, int longest) {
        Optional<Json> value = present(key);
        if (value.isEmpty()) {
            return List.of();
        }
        if (value.get() instanceof Json.Items items
                && items.values().stream()
                        .allMatch(item -> item instanceof Json.Text text
                                && length(text) <= longest
                                && !Clean.line(text.value(), longest).isBlank())) {
            return items.values().stream()
                    .map(item -> Clean.line(((Json.Text) item).value(), longest))
                    .toList();
        }
        refuse(key, Sentence.of("should be a list of texts of at most {0} characters.", longest));
        return List.of();
    }

    /** An object inside, if it is there. */
    public Optional<FieldReader> object(String key) {
        Optional<Json> value = present(key);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (value.get() instanceof Json.Fields inner) {
            return Optional.of(new FieldReader(inner, at(key), findings, lines, this::breached));
        }
        refuse(key, Sentence.of("should be an object in braces."));
        return Optional.empty();
    }

    /** The object itself under that key, with whatever it holds. */
    public Optional<Json.Fields> raw(String key) {
        return present(key).filter(Json.Fields.class::isInstance).map(Json.Fields.class::cast);
    }

    /** The objects of a list; missing is none. */
    public List<FieldReader> objects(String key) {
        Optional<Json> value = present(key);
        if (value.isEmpty()) {
            return List.of();
        }
        if (!(value.get() instanceof Json.Items items)) {
            refuse(key, Sentence.of("should be a list of objects."));
            return List.of();
        }
        List<FieldReader> readers = new ArrayList<>();
        for (int i = 0; i < items.values().size(); i++) {
            if (items.values().get(i) instanceof Json.Fields inner) {
                readers.add(new FieldReader(inner, at(key) + "[" + i + "]", findings, lines, this::breached));
            } else {
                refuse(key + "[" + i + "]", Sentence.of("should be an object in braces."));
            }
        }
        return readers;
    }

    /** The keys that nobody asked for. */
    public Set<String> unasked() {
        Set<String> rest = new LinkedHashSet<>(fields.values().keySet());
        rest.removeAll(asked);
        return rest;
    }

    /** Refuses every key that nobody asked for. */
    public void refuseUnasked() {
        refuseUnasked(Map.of());
    }

    /**
     * Refuses every key that nobody asked for.
     *
     * @param homes where keys belong that are easily put in the wrong place, such as "an anchor"
     */
    public void refuseUnasked(Map<String, String> homes) {
        for (String key : unasked()) {
            String known = String.join(", ", asked);
            refuse(
                    key,
                    homes.containsKey(key)
                            ? Sentence.of(
                                    "is a key that is not known here; it belongs in {0}; known are {1}.",
                                    Sentence.word(homes.getOrDefault(key, "")), known)
                            : Sentence.of("is a key that is not known here; known are {0}.", known));
        }
    }

    /** The object that is read. */
    public Json.Fields fields() {
        return fields;
    }

    private Optional<Json> present(String key) {
        asked.add(key);
        return fields.field(key).filter(value -> !(value instanceof Json.Nothing));
    }

    private String at(String key) {
        return path.isEmpty() || key.isEmpty() ? path + key : path + "." + key;
    }
}
