package thalweg.tui.screen;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import thalweg.route.Prose;
import thalweg.text.Clean;
import thalweg.tui.widget.Form;

/**
 * A form that was filled in, beside what it held at first: a quantity that nobody touched keeps the value it was shown
 * from, not the rounded one that was shown.
 *
 * @param first as it was opened
 * @param last as it was sent
 */
record Filled(Form first, Form last) {

    /** The words in a field, without spaces around them. */
    String text(String key) {
        return Clean.lines(last.value(key), Integer.MAX_VALUE).strip();
    }

    /** The photos in a field, with semicolons between; names of files stay exactly as they were typed. */
    List<String> photos(String key) {
        return Arrays.stream(last.value(key).split(";", -1))
                .map(String::strip)
                .filter(photo -> !photo.isEmpty())
                .toList();
    }

    /** The value in a field that may be left empty. */
    <T> Optional<T> value(String key, Optional<T> before, Function<String, T> parse) {
        if (last.value(key).equals(first.value(key))) {
            return before;
        }
        String typed = text(key);
        return typed.isEmpty() ? Optional.empty() : Optional.of(parse.apply(typed));
    }

    /** One value of a list, which the form shows by its name in lower case. */
    <E extends Enum<E>> Optional<E> word(String key, Class<E> words) {
        return Arrays.stream(words.getEnumConstants())
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(last.value(key)))
                .findFirst();
    }

    /** The words under every heading. */
    <K extends Enum<K>> Prose<K> prose(Class<K> headings) {
        Prose<K> prose = Prose.none();
        for (K heading : headings.getEnumConstants()) {
            prose = prose.with(heading, text(heading.name().toLowerCase(Locale.ROOT)));
        }
        return prose;
    }

    /** Names between commas. */
    List<String> names(String key) {
        return Arrays.stream(text(key).split(",", -1))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }
}
