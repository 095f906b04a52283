package thalweg.rig;

import java.util.List;

/**
 * Where friction may hold a sliding master, at the aim.
 *
 * @param shares of the points, in the order of the input; empty where unknown
 * @param why it is unknown, a sentence; empty text where it is known
 */
public record FrictionRange(List<ShareRange> shares, String why) {

    public FrictionRange {
        shares = List.copyOf(shares);
        if (shares.isEmpty() == why.isEmpty()) {
            throw new IllegalArgumentException("a range is known, or there is a reason why not");
        }
    }

    /** Whether the model can tell. */
    public boolean known() {
        return !shares.isEmpty();
    }
}
