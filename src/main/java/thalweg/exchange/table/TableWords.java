package thalweg.exchange.table;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thalweg.text.Fold;

/** The words in which people of several languages write headings and values, folded. What two values share is no word. */
public final class TableWords {

    private final Map<String, Map<String, String>> byList;

    private TableWords(Map<String, Map<String, String>> byList) {
        this.byList = byList;
    }

    /** Collects words. */
    public static final class Builder {

        private final Map<String, Map<String, String>> byList = new HashMap<>();
        private final Set<String> shared = new HashSet<>();

        /**
         * One more.
         *
         * @param list such as "condition"
         * @param word as people write it
         * @param value of the list
         */
        public Builder add(String list, String word, String value) {
            String folded = plain(word);
            String before = byList.computeIfAbsent(list, key -> new HashMap<>()).putIfAbsent(folded, value);
            if (before != null && !before.equals(value)) {
                shared.add(list + " " + folded);
            }
            return this;
        }

        /** All of them. */
        public TableWords done() {
            Map<String, Map<String, String>> all = new HashMap<>();
            byList.forEach((list, words) -> {
                Map<String, String> own = new HashMap<>(words);
                own.keySet().removeIf(word -> shared.contains(list + " " + word));
                all.put(list, Map.copyOf(own));
            });
            return new TableWords(Map.copyOf(all));
        }
    }

    /** The value that the word stands for in that list. */
    Optional<String> value(String list, String word) {
        return Optional.ofNullable(byList.getOrDefault(list, Map.of()).get(plain(word)));
    }

    /** The words of the text with one space between, folded: "High-water_anchor" as "high water anchor". */
    static String plain(String text) {
        return String.join(" ", Fold.tokens(text.replace('_', ' ')));
    }
}
