package thalweg.plan;

import thalweg.units.Length;

/**
 * By how much ropes are counted shorter than they are labelled.
 *
 * @param shrinkage share that a wet and used rope has lost of its length [-], 0 to below 1
 * @param reserve for the anchor, knots and an end that does not hang short, 0 or more
 */
public record RopeMargin(double shrinkage, Length reserve) {

    /** Both are our choice: how much ropes shrink differs from one to the next, so measure yours. */
    public static final RopeMargin STANDARD = new RopeMargin(0.05, new Length(2));

    public RopeMargin {
        if (!(shrinkage >= 0 && shrinkage < 1) || reserve.metres() < 0) {
            throw new IllegalArgumentException("a rope shrinks by a part of its length, and a reserve is 0 or more");
        }
    }

    /** What of a rope can be counted on [m]; 0 where nothing is left. */
    public double usable(RopeAtHand rope) {
        return Math.max(0, rope.length().metres() * (1 - shrinkage));
    }

    /** How long a rope is before it shrinks, of which that is left [m]. */
    double before(double metres) {
        return metres / (1 - shrinkage);
    }

    /** How much of one rope a drop takes where it hangs single [m]. */
    double single(double metres) {
        return metres + reserve.metres();
    }

    /** How much of one rope a drop takes where it hangs doubled [m]. */
    double doubled(double metres) {
        return 2 * metres + reserve.metres();
    }
}
