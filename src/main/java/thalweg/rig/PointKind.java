package thalweg.rig;

import java.util.Locale;

/** What a point is: something that was placed, or something that was there. */
public enum PointKind {
    BOLT,
    TREE,
    BOULDER,
    CHOCKSTONE,
    THREAD,
    OTHER;

    /** Whether nobody placed it, so that no standard and no maker says what it holds. */
    public boolean isNatural() {
        return switch (this) {
            case TREE, BOULDER, CHOCKSTONE, THREAD -> true;
            case BOLT, OTHER -> false;
        };
    }

    /** How a rig file names it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Under which the phrases keep its name. */
    public String key() {
        return "rig.point_kind." + word();
    }
}
