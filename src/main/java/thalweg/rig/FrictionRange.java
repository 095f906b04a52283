package thalweg.rig;

import java.util.List;
import thalweg.fault.Sentence;

/**
 * Where friction may hold a sliding master, at the aim.
 *
 * @param shares of the points, in the order of the input; empty where unknown
 * @param saying it is unknown, a sentence; empty text where it is known
 */
public record FrictionRange(List<ShareRange> shares, Sentence saying) {

    public FrictionRange {
        shares = List.copyOf(shares);
        if (shares.isEmpty() == saying.toString().isEmpty()) {
            throw new IllegalArgumentException("a range is known, or there is a reason why not");
        }
    }

    /** Why it is unknown, in English; empty text where it is known. */
    public String why() {
        return saying.toString();
    }

    /** Whether the model can tell. */
    public boolean known() {
        return !shares.isEmpty();
    }
}
