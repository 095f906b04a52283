package thalweg.tui.widget;

/**
 * Which row of a list is chosen, and which stands at the top.
 *
 * @param chosen counted from 0; 0 in an empty list
 * @param top counted from 0
 */
public record ListState(int chosen, int top) {

    /** The first row. */
    public static final ListState START = new ListState(0, 0);

    /**
     * The choice moved by so many rows, as far as the list goes.
     *
     * @param size rows of the list
     */
    public ListState moved(int by, int size) {
        return at(chosen + by, size);
    }

    /** The choice at that row, or the nearest that is there. */
    public ListState at(int row, int size) {
        return new ListState(Math.max(0, Math.min(size - 1, row)), top);
    }

    /** The same scrolled as little as needed to show the choice in a window of that height. */
    public ListState shownIn(int height, int size) {
        int least = Math.max(0, chosen - height + 1);
        int most = Math.min(chosen, Math.max(0, size - height));
        return new ListState(chosen, Math.max(least, Math.min(top, Math.max(least, most))));
    }
}
