package thalweg.sheet;

import java.util.List;

/**
 * One thing with its name.
 *
 * @param label its name, one line, not blank
 * @param lines what is known, never empty: what is unknown says so
 */
public record Fact(String label, List<Words> lines) {

    public Fact {
        label = Inert.line(label);
        lines = List.copyOf(lines);
        if (label.isBlank() || lines.isEmpty()) {
            throw new IllegalArgumentException("a fact has a name, and says so where it is unknown");
        }
    }

    /** A fact in one piece. */
    public static Fact of(String label, Words words) {
        return new Fact(label, List.of(words));
    }
}
