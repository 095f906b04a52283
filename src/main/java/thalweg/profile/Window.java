package thalweg.profile;

import java.util.Optional;

/**
 * A part of the line that is drawn.
 *
 * @param from as {@link Stop#along}
 * @param to not before it begins
 */
public record Window(double from, double to) {

    public Window {
        if (!(from <= to)) {
            throw new IllegalArgumentException("a window ends after it begins");
        }
    }

    /** What two have in common, if they have. */
    Optional<Window> and(Window other) {
        double begin = Math.max(from, other.from);
        double end = Math.min(to, other.to);
        return begin <= end ? Optional.of(new Window(begin, end)) : Optional.empty();
    }

    boolean holds(double along) {
        return along >= from && along <= to;
    }
}
