package thalweg.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import thalweg.fault.Sentence;

/** A text that was read as JSON, which remembers the line on which each object and list began. */
public final class JsonDocument {

    private static final Pattern TWICE = Pattern.compile("Duplicate.*?('[^']*'|\"[^\"]*\")");

    /** Beyond it a number is no measurement, and writing it out would fill the memory. A double ends at 1e-324. */
    private static final int MOST_SCALE = 400;

    private static final JsonFactory READER = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(16)
                    .maxStringLength(20_000)
                    .maxNameLength(64)
                    .maxNumberLength(20)
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
            .build();

    /**
     * Where a text is from.
     *
     * @param name what it is called in messages
     * @param linesBefore that it stands behind
     */
    private record Source(String name, long linesBefore) {

        Sentence place(@Nullable JsonLocation location) {
            return location == null
                    ? Sentence.of("an unknown place")
                    : Sentence.of("line {0}, column {1}", linesBefore + location.getLineNr(), location.getColumnNr());
        }
    }

    private final Json root;
    private final IdentityHashMap<Json, Integer> lines;

    private JsonDocument(Json root, IdentityHashMap<Json, Integer> lines) {
        this.root = root;
        this.lines = lines;
    }

    /**
     * Reads one JSON value, with limits: depth 16, text 20,000 characters, name 64, number 20 and exponent 400, no name
     * twice, no half characters.
     *
     * @param name what the text is called in messages, such as the file's name
     * @param bytes UTF-8, with or without a byte order mark
     * @throws JsonException when it is not JSON or goes beyond a limit, naming line and column
     */
    public static JsonDocument read(String name, byte[] bytes) {
        return read(new Source(name, 0), bytes);
    }

    /**
     * Reads the JSON value on one line of a file that holds many; limits as for a file.
     *
     * @param name what the file is called in messages
     * @param line on which the value stands, from 1
     * @param bytes of that line, UTF-8
     * @throws JsonException when it is not JSON or goes beyond a limit, naming line and column in the file
     */
    public static JsonDocument readLine(String name, long line, byte[] bytes) {
        return read(new Source(name, line - 1), bytes);
    }

    private static JsonDocument read(Source source, byte[] bytes) {
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new JsonException(
                    Sentence.of("{0} is not UTF-8 text; save it as UTF-8 and try again.", source.name()), e);
        }
        return read(source, text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    /**
     * Reads one JSON value from text; limits as for bytes.
     *
     * @throws JsonException when it is not JSON or goes beyond a limit
     */
    public static JsonDocument read(String name, String text) {
        return read(new Source(name, 0), text);
    }

    private static JsonDocument read(Source source, String text) {
        try (JsonParser parser = READER.createParser(text)) {
            return read(source, parser);
        } catch (JsonProcessingException e) {
            if (e.getOriginalMessage().startsWith("Unexpected end-of-input")) {
                throw new JsonException(
                        Sentence.of(
                                "{0} ends in the middle, at {1}; it was cut off on its way, or brackets are not closed.",
                                source.name(), source.place(e.getLocation())),
                        e);
            }
            throw new JsonException(
                    Sentence.of(
                            "{0} is not valid JSON at {1}: {2}.",
                            source.name(), source.place(e.getLocation()), reason(e.getOriginalMessage())),
                    e);
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory cannot fail to be read", e);
        }
    }

    private static JsonDocument read(Source source, JsonParser parser) throws IOException {
        IdentityHashMap<Json, Integer> lines = new IdentityHashMap<>();
        try {
            if (parser.nextToken() == null) {
                throw new JsonException(Sentence.of("{0} is empty; it should hold one JSON object.", source.name()));
            }
            Json root = value(source, parser, lines);
            if (parser.nextToken() != null) {
                throw new JsonException(Sentence.of(
                        "{0} goes on after its end, at {1}; it should hold one JSON value only.",
                        source.name(), source.place(parser.currentTokenLocation())));
            }
            return new JsonDocument(root, lines);
        } catch (StreamConstraintsException e) {
            throw new JsonException(beyond(source, parser.currentLocation()), e);
        }
    }

    private static Json value(Source source, JsonParser parser, IdentityHashMap<Json, Integer> lines)
            throws IOException {
        JsonToken token = parser.currentToken();
        int line = parser.currentTokenLocation().getLineNr();
        return switch (token) {
            case START_OBJECT -> {
                Map<String, Json> values = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String key = whole(source, parser, parser.currentName());
                    parser.nextToken();
                    values.put(key, value(source, parser, lines));
                }
                Json fields = new Json.Fields(values);
                lines.put(fields, line);
                yield fields;
            }
            case START_ARRAY -> {
                List<Json> values = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    values.add(value(source, parser, lines));
                }
                Json items = new Json.Items(values);
                lines.put(items, line);
                yield items;
            }
            case VALUE_STRING -> new Json.Text(whole(source, parser, parser.getText()));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Decimal(number(source, parser));
            case VALUE_TRUE -> new Json.Flag(true);
            case VALUE_FALSE -> new Json.Flag(false);
            case VALUE_NULL -> Json.NOTHING;
            default -> throw new AssertionError("no value begins with " + token);
        };
    }

    private static BigDecimal number(Source source, JsonParser parser) throws IOException {
        BigDecimal number;
        try {
            number = parser.getDecimalValue();
        } catch (NumberFormatException e) {
            throw new JsonException(beyond(source, parser.currentTokenLocation()), e);
        }
        if (Math.abs((long) number.scale()) > MOST_SCALE) {
            throw new JsonException(beyond(source, parser.currentTokenLocation()));
        }
        return number;
    }

    /** Half a character cannot be written as UTF-8, so it could not be stored and named by its hash. */
    private static String whole(Source source, JsonParser parser, String text) {
        if (!JsonText.isWhole(text)) {
            throw new JsonException(Sentence.of(
                    "{0} holds half a character (a lone surrogate) at {1}; write the whole character.",
                    source.name(), source.place(parser.currentTokenLocation())));
        }
        return text;
    }

    private static Sentence beyond(Source source, JsonLocation location) {
        return Sentence.of(
                "{0} goes beyond what is read safely at {1}: nesting up to 16, texts up to 20,000 characters, names up"
                        + " to 64, numbers up to 20 and exponents up to {2}.",
                source.name(), source.place(location), MOST_SCALE);
    }

    /** The library speaks to programmers; of its reasons only those are kept that a person can act on. */
    private static Sentence reason(String message) {
        Matcher twice = TWICE.matcher(message);
        if (twice.find()) {
            return Sentence.of("the name {0} stands twice", twice.group(1));
        }
        return message.contains("surrogate")
                ? Sentence.of("a name holds half a character (a lone surrogate)")
                : Sentence.of("look there for a missing comma, quote or bracket, or for what is no plain number");
    }

    /** The value. */
    public Json root() {
        return root;
    }

    /** The root as an object whose fields are read one by one. */
    public FieldReader reader(Findings findings) {
        if (root instanceof Json.Fields fields) {
            return new FieldReader(fields, "", findings, this::lineOf);
        }
        findings.add("", 1, Sentence.of("there is no JSON object; it should begin with {."));
        return new FieldReader(Json.fields().done(), "", findings, this::lineOf);
    }

    private int lineOf(Json value) {
        return lines.getOrDefault(value, 0);
    }
}
