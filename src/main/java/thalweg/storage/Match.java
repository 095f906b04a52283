package thalweg.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.text.Fold;

/**
 * A question to an index of words, in the index's own language. Only folded words get into it, each between quotes, and
 * those have letters, digits and marks alone: nothing that a person types can be taken for a sign of that language.
 */
final class Match {

    private final List<String> conditions = new ArrayList<>();

    /** Every word begins a word of any column. */
    Match words(String words) {
        return add("", all(words));
    }

    /** Every word begins a word of that column. */
    Match words(String column, String words) {
        return add(column + " : ", all(words));
    }

    /** One word or more begins a word of that column. */
    Match oneOf(String column, String words) {
        return add(column + " : ", joined(" OR ", Fold.tokens(words).stream().map(Match::begins)));
    }

    /** The same as {@link #words(String)}, but what stands between two spaces may be written in one or with signs. */
    Match spelled(String words) {
        for (String word : Fold.fold(words).split(" ", -1)) {
            add("", inOneOrNot(word));
        }
        return this;
    }

    /** The words of that column, written in one or with signs and spaces between. */
    Match spelled(String column, String words) {
        return add(column + " : ", inOneOrNot(words));
    }

    /** Exactly those words in that column. */
    Match exactly(String column, String words) {
        return add(column + " : ", joined(" AND ", Fold.tokens(words).stream().map(Match::quoted)));
    }

    /** The question; empty where nothing is asked. */
    Optional<String> question() {
        return conditions.isEmpty() ? Optional.empty() : Optional.of(String.join(" AND ", conditions));
    }

    private Match add(String column, String condition) {
        if (!condition.isEmpty()) {
            conditions.add(column + "(" + condition + ")");
        }
        return this;
    }

    private static String all(String words) {
        return joined(" AND ", Fold.tokens(words).stream().map(Match::begins));
    }

    private static String inOneOrNot(String words) {
        return Fold.tokens(words).size() < 2 ? all(words) : "(" + all(words) + ") OR " + begins(Fold.joined(words));
    }

    private static String joined(String operator, Stream<String> terms) {
        return terms.collect(Collectors.joining(operator));
    }

    private static String begins(String token) {
        return quoted(token) + "*";
    }

    private static String quoted(String token) {
        return '"' + token + '"';
    }
}
