package thalweg.route;

/** What a part of an anchor is: a point that the rock or ground holds, or material between points and rope. */
public enum PartKind {
    BOLT(true),
    PITON(true),
    TREE(true),
    BOULDER(true),
    CHOCKSTONE(true),
    THREAD(true),
    CHOCK(true),
    OTHER_POINT(true),
    WEBBING(false),
    CORD(false),
    SLING(false),
    ROPE(false),
    CHAIN(false),
    RING(false),
    QUICK_LINK(false),
    KARABINER(false),
    OTHER_MATERIAL(false);

    private final boolean point;

    PartKind(boolean point) {
        this.point = point;
    }

    /** Whether the load leaves the rig here, into rock, wood or ground. */
    public boolean isPoint() {
        return point;
    }

    /** Whether it is made of textile, which ages even if nobody uses it. */
    public boolean isTextile() {
        return switch (this) {
            case WEBBING, CORD, SLING, ROPE -> true;
            case BOLT, PITON, TREE, BOULDER, CHOCKSTONE, THREAD, CHOCK, OTHER_POINT, CHAIN, RING, QUICK_LINK -> false;
            case KARABINER, OTHER_MATERIAL -> false;
        };
    }
}
