package thalweg.settings;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** How the screen is coloured. Nothing is told by colour alone, so that every theme says the same. */
public enum Theme {
    /** By the colours of the terminal itself, on its own background. */
    TERMINAL,
    /** Light on black, each pair of colours at least 7 to 1 apart, as far as the terminal's colours are the usual ones. */
    CONTRAST,
    /** Without any colour: bold, underlined and reversed only. */
    PLAIN;

    /** The theme of that word. */
    public static Optional<Theme> of(String word) {
        return Arrays.stream(values())
                .filter(theme -> theme.word().equals(word))
                .findFirst();
    }

    /** As it is written in settings and arguments. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** All words, with commas between. */
    public static String words() {
        return Arrays.stream(values()).map(Theme::word).collect(Collectors.joining(", "));
    }
}
