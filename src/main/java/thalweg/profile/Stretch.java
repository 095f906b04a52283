package thalweg.profile;

import java.util.Optional;

/**
 * A straight piece of the line.
 *
 * @param fromAlong where it begins, as {@link Stop#along}
 * @param fromDown how far down [m]
 * @param toAlong where it ends, not before it begins
 * @param toDown how far down [m], not above its beginning
 * @param known whether its place and length are as entered
 * @param fall whether it is the fall of a place rather than the way between two
 */
record Stretch(double fromAlong, double fromDown, double toAlong, double toDown, boolean known, boolean fall) {

    /** What of it lies inside the window, if anything. */
    Optional<Stretch> within(Window window) {
        if (toAlong < window.from() || fromAlong > window.to()) {
            return Optional.empty();
        }
        double begin = Math.max(fromAlong, window.from());
        double end = Math.min(toAlong, window.to());
        return Optional.of(new Stretch(begin, downAt(begin, fromDown), end, downAt(end, toDown), known, fall));
    }

    private double downAt(double along, double upright) {
        double length = toAlong - fromAlong;
        return length == 0 ? upright : fromDown + (toDown - fromDown) * (along - fromAlong) / length;
    }
}
