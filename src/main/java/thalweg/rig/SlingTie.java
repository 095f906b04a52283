package thalweg.rig;

import java.util.Locale;

/** How a sling goes round a point, and so how many of its strands reach its end, and from where. */
public enum SlingTie {
    /** A closed loop laid round, both bights clipped: two strands from each side. */
    BASKET(2, 2),
    /** A loop drawn through itself: two strands side by side, from where it is drawn through. */
    CHOKE(1, 2),
    /** Wrapped three times, two of the wraps pulled, the knot in the one that is not: two strands from each side. */
    WRAP_THREE_PULL_TWO(2, 2),
    /** A strand laid round and tied to a loop: one strand from each side. */
    TIED_ROUND(2, 1);

    private final int sides;
    private final int strandsASide;

    SlingTie(int sides, int strandsASide) {
        this.sides = sides;
        this.strandsASide = strandsASide;
    }

    /** From how many places its strands leave the point, 1 or 2. */
    public int sides() {
        return sides;
    }

    /** How many parallel strands leave each of them. */
    public int strandsASide() {
        return strandsASide;
    }

    /** How a rig file names it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Under which the phrases keep its name. */
    public String key() {
        return "rig.sling_tie." + word();
    }
}
