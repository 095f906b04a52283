package thalweg.exchange.table;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What stands between the cells of a line. */
public enum Separator {
    COMMA(','),
    SEMICOLON(';'),
    TAB('\t');

    private final char sign;

    Separator(char sign) {
        this.sign = sign;
    }

    /** The sign itself. */
    public char sign() {
        return sign;
    }

    /** As it is typed. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** All words, with commas between. */
    public static String words() {
        return Arrays.stream(values()).map(Separator::word).collect(Collectors.joining(", "));
    }

    /** The one of that word. */
    public static Optional<Separator> of(String word) {
        return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }

    /**
     * The one that stands most often in the first line, outside of quotes; the comma where none does.
     *
     * @param text of the file
     */
    static Separator in(String text) {
        Map<Separator, Integer> counts = new EnumMap<>(Separator.class);
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == '\n' || c == '\r')) {
                break;
            } else if (!quoted) {
                for (Separator one : values()) {
                    counts.merge(one, c == one.sign ? 1 : 0, Integer::sum);
                }
            }
        }
        Separator most = COMMA;
        for (Separator one : values()) {
            most = counts.getOrDefault(one, 0) > counts.getOrDefault(most, 0) ? one : most;
        }
        return most;
    }
}
