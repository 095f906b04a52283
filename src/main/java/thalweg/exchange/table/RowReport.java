package thalweg.exchange.table;

import java.util.List;
import thalweg.fault.Sentence;

/**
 * What becomes of one row.
 *
 * @param line of the file on which it begins
 * @param state what becomes of it
 * @param what it is about, as "Gully/3/Left ledge"; empty text where that cannot be told
 * @param said why it is refused, or what a person should know about it
 */
public record RowReport(int line, State state, String what, List<Sentence> said) {

    /** What becomes of a row. */
    public enum State {
        NEW,
        CHANGED,
        SAME,
        REFUSED
    }

    public RowReport {
        said = List.copyOf(said);
    }
}
