package thalweg.tui.screen;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.tui.core.Surroundings;

/**
 * Words of the domain in what people type: shown in their language, and read in it and in English, which is what files and
 * commands take.
 *
 * @param list of phrases, one a word
 * @param words of the domain
 * @param before what stands before such a word, as a pattern
 * @param after what stands after it, as a pattern
 * @param around for the words of the language
 */
record TypedWords<E extends Enum<E>>(String list, Class<E> words, String before, String after, Surroundings around) {

    /** Words that stand anywhere, as long as they are whole. */
    static <E extends Enum<E>> TypedWords<E> whole(String list, Class<E> words, Surroundings around) {
        return new TypedWords<>(list, words, "(?<!\\p{L})", "(?!\\p{L})", around);
    }

    /** Words that stand by themselves behind a comma or semicolon. */
    static <E extends Enum<E>> TypedWords<E> listed(String list, Class<E> words, Surroundings around) {
        return new TypedWords<>(list, words, "(?<=[,;]\\s{0,9})", "(?=\\s*(?:[,;]|$))", around);
    }

    /** As it is shown. */
    String shown(String english) {
        String text = english;
        for (E word : words.getEnumConstants()) {
            text = replaced(text, key(word), phrase(word));
        }
        return text;
    }

    /** In the words that are kept. */
    String read(String typed) {
        String text = typed;
        for (E word : words.getEnumConstants()) {
            text = replaced(text, phrase(word), key(word));
        }
        return text;
    }

    private String replaced(String text, String from, String to) {
        return Pattern.compile(before + Pattern.quote(from) + after, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
                .matcher(text)
                .replaceAll(Matcher.quoteReplacement(to));
    }

    private String phrase(E word) {
        return Looks.word(around, list, word);
    }

    private static String key(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
