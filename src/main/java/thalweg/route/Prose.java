package thalweg.route;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What somebody wrote in their own words, under headings.
 *
 * @param <K> the headings
 * @param texts by heading, in the order of the headings; a heading that is missing says that nothing is known
 */
public record Prose<K extends Enum<K>>(Map<K, String> texts) {

    public Prose {
        if (texts.values().stream().anyMatch(String::isBlank)) {
            throw new IllegalArgumentException("a heading without text is left out");
        }
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(new TreeMap<>(texts)));
    }

    /** Nothing written under any heading. */
    public static <K extends Enum<K>> Prose<K> none() {
        return new Prose<K>(Map.of());
    }

    /** What is written under that heading. */
    public Optional<String> under(K heading) {
        return Optional.ofNullable(texts.get(heading));
    }

    /** The same with other words under one heading; blank words take the heading away. */
    public Prose<K> with(K heading, String words) {
        Map<K, String> changed = new LinkedHashMap<>(texts);
        changed.remove(heading);
        if (!words.isBlank()) {
            changed.put(heading, words);
        }
        return new Prose<>(changed);
    }
}
