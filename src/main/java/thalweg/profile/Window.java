package thalweg.profile;

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

    boolean holds(double along) {
        return along >= from && along <= to;
    }
}
