package thalweg.due;

import java.util.List;
import thalweg.logbook.PartRow;

/**
 * A part with what is to be done with it.
 *
 * @param row the part
 * @param dues what is to be done, the most urgent first; at least one
 */
public record DuePart(PartRow row, List<Due> dues) {
    public DuePart {
        dues = List.copyOf(dues);
        if (dues.isEmpty()) {
            throw new IllegalArgumentException("every part is due some day");
        }
    }

    /** What is most urgent. */
    public Due first() {
        return dues.get(0);
    }
}
