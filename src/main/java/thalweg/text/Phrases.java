package thalweg.text;

import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.Sentence;

/**
 * The words of the program in one language, by key. A missing key or value is a bug of the program, never of the person
 * who reads, and stops it by name.
 */
public final class Phrases {

    private static final Pattern GAP = Pattern.compile("\\{([0-9])}");

    /** For looking up, not in order: each picture asks for dozens. */
    private final Map<String, String> patterns;

    private final Map<String, String> sentences;
    private final Optional<Phrases> original;

    /**
     * @param patterns by key; {0} to {9} stand for what is put in, any other brace for itself
     */
    public Phrases(Map<String, String> patterns) {
        this(patterns, Map.of(), Optional.empty());
    }

    /**
     * A translation.
     *
     * @param patterns by key; the phrase {@code language.reviewed} is "yes" once somebody of the trade has read them
     * @param sentences translated patterns by the English pattern of those sentences that have no key
     * @param original what the phrases translate, with the same keys
     */
    public Phrases(Map<String, String> patterns, Map<String, String> sentences, Phrases original) {
        this(patterns, sentences, Optional.of(original));
    }

    private Phrases(Map<String, String> patterns, Map<String, String> sentences, Optional<Phrases> original) {
        this.patterns = new HashMap<>(patterns);
        this.sentences = Map.copyOf(sentences);
        this.original = original;
    }

    /**
     * The phrase with its gaps filled.
     *
     * @param key that must be there
     * @param values for {0}, {1} and so on, as their {@code toString} prints them, sentences said; those without a gap are left out
     */
    public String say(String key, Object... values) {
        String pattern = patterns.get(key);
        if (pattern == null) {
            throw new AssertionError("there is no phrase with the key " + key);
        }
        if (pattern.indexOf('{') < 0) {
            return pattern;
        }
        Matcher gap = GAP.matcher(pattern);
        StringBuilder out = new StringBuilder();
        while (gap.find()) {
            int index = gap.group(1).charAt(0) - '0';
            if (index >= values.length) {
                throw new AssertionError("the phrase " + key + " is not given its value {" + index + "}");
            }
            Object value = values[index];
            String said = value instanceof Sentence sentence ? say(sentence) : value.toString();
            gap.appendReplacement(out, Matcher.quoteReplacement(said));
        }
        return gap.appendTail(out).toString();
    }

    /** A sentence of those that do not know the language, translated by its English pattern. */
    public String say(Sentence sentence) {
        return sentence.said(pattern -> sentences.getOrDefault(pattern, pattern));
    }

    /**
     * The phrase for that many: {@code key.one} for exactly one, {@code key.other} for every other number, zero too.
     *
     * @param key without its last part
     * @param number for {0} [-], printed in plain digits
     * @param values for {1}, {2} and so on
     */
    public String count(String key, long number, Object... values) {
        Object[] all = new Object[values.length + 1];
        all[0] = number;
        System.arraycopy(values, 0, all, 1, values.length);
        return say(key + (number == 1 ? ".one" : ".other"), all);
    }

    /**
     * A caution: the phrase, and where it is a translation that nobody has reviewed the original beside it, so that a slip
     * in it misleads nobody.
     */
    public String caution(String key, Object... values) {
        String said = say(key, values);
        return unreviewed()
                .map(english -> say("language.beside", said, english.say(key, values)))
                .orElse(said);
    }

    /**
     * What is said of something, after its name: some languages write a space before the colon.
     *
     * @param said may be empty where something else follows
     */
    public String labelled(String name, String said) {
        return say("labelled", name, said);
    }

    /** What these phrases translate, as long as nobody has reviewed them. */
    private Optional<Phrases> unreviewed() {
        return original.filter(english -> !say("language.reviewed").equals("yes"));
    }

    /** Whether there is a phrase with that key. */
    public boolean has(String key) {
        return patterns.containsKey(key);
    }

    /** Every key with its pattern, sorted by key. */
    public Map<String, String> all() {
        return Collections.unmodifiableMap(new TreeMap<>(patterns));
    }
}
