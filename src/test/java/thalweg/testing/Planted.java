package thalweg.testing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.Json;

/**
 * A body with a word in every free text that stands nowhere else, so that a test can say where each text comes out. What
 * is no free text, such as a date or one of a list of words, stays as it was.
 */
public final class Planted {

    private final String prefix;
    private final Function<FieldReader, Boolean> reader;
    private final Map<String, List<String>> words = new LinkedHashMap<>();
    private final Json.Fields body;
    private int next;

    private Planted(Json.Fields original, String prefix, Function<FieldReader, Boolean> reader, Set<String> leaving) {
        this.prefix = prefix;
        this.reader = reader;
        Json.Fields planted = original;
        for (String key : original.values().keySet()) {
            if (leaving.contains(key)) {
                continue;
            }
            Json.Fields before = planted;
            Json value = plant(key, before.field(key).orElseThrow(), one -> before.with(key, one));
            planted = planted.with(key, value);
        }
        this.body = planted;
    }

    /**
     * Plants words in a body.
     *
     * @param prefix lower-case letters that no other body's words begin with
     * @param reader whether the codec of such bodies takes what it reads
     * @param leaving keys that stay as they are, such as the one under which a body names what it belongs to
     */
    public static Planted in(
            Json.Fields body, String prefix, Function<FieldReader, Boolean> reader, Set<String> leaving) {
        return new Planted(body, prefix, reader, leaving);
    }

    private Json plant(String key, Json value, Function<Json, Json.Fields> whole) {
        if (value instanceof Json.Text) {
            next++;
            String word = "q" + prefix + next + "z";
            boolean free = reader.apply(FieldReader.of(whole.apply(Json.of(word)), new Findings()));
            if (free) {
                words.computeIfAbsent(key, one -> new ArrayList<>()).add(word);
            }
            return free ? Json.of(word) : value;
        }
        if (value instanceof Json.Items items) {
            List<Json> planted = new ArrayList<>(items.values());
            for (int i = 0; i < planted.size(); i++) {
                int at = i;
                planted.set(i, plant(key, planted.get(i), one -> {
                    List<Json> changed = new ArrayList<>(planted);
                    changed.set(at, one);
                    return whole.apply(new Json.Items(changed));
                }));
            }
            return new Json.Items(planted);
        }
        if (value instanceof Json.Fields fields) {
            Json.Fields planted = fields;
            for (String inner : fields.values().keySet()) {
                Json.Fields before = planted;
                Json one = plant(
                        key, before.field(inner).orElseThrow(), changed -> whole.apply(before.with(inner, changed)));
                planted = planted.with(inner, one);
            }
            return planted;
        }
        return value;
    }

    /** The body with the words in it. */
    public Json.Fields body() {
        return body;
    }

    /** A reader of that body. */
    public FieldReader reader() {
        return FieldReader.of(body, new Findings());
    }

    /** The words under each key of the body that holds free text. */
    public Map<String, List<String>> words() {
        return words;
    }

    /** Every word. */
    public List<String> all() {
        return words.values().stream().flatMap(List::stream).toList();
    }
}
