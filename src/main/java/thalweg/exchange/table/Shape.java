package thalweg.exchange.table;

import java.util.List;

/** How what stands in a cell is read. */
enum Shape {
    /** A text on one line. */
    TEXT,
    /** A text that may have several lines. */
    LINES,
    /** Several texts, with semicolons or line ends between. */
    LIST,
    /** A length with its unit. */
    LENGTH("m", "cm", "mm", "km", "ft", "in"),
    /** A force with its unit. */
    FORCE("kn", "n", "lbf"),
    /** A time in minutes, or in hours and minutes. */
    MINUTES("min", "h"),
    /** A day, a month or a year. */
    DATE,
    /** A value of a list of the program. */
    WORD,
    /** Several of them, with semicolons or commas between. */
    WORDS,
    /** Yes or no. */
    FLAG,
    /** A whole number from 1. */
    NUMBER,
    /** A grade in its notation. */
    GRADE,
    /** A share of a pair of coordinates, or both. */
    COORDINATE,
    /** The name of a record in every database. */
    UID;

    // What List.of made, which nobody can change.
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> units;

    Shape(String... units) {
        this.units = List.of(units);
    }

    /** Units in which a bare number may be meant, the usual one first; none for what has none. */
    List<String> units() {
        return units;
    }
}
