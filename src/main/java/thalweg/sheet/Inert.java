package thalweg.sheet;

import java.util.stream.Collectors;
import thalweg.text.Shown;

/**
 * The last door before a text from outside is shown on a sheet: what could steer a terminal, reorder a line or hide in
 * it becomes a visible sign that something stood there. It leaves every letter and every line as it is.
 */
public final class Inert {

    private Inert() {}

    /** The text with line ends as single line feeds, and everything else that only steers or hides replaced. */
    public static String of(String text) {
        return text.replace("\r\n", "\n")
                .replace('\r', '\n')
                .replace('\t', ' ')
                .lines()
                .map(Shown::safe)
                .collect(Collectors.joining("\n"));
    }

    /** The same on one line. */
    public static String line(String text) {
        return of(text).replace('\n', ' ');
    }
}
