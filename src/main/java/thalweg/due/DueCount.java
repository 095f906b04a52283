package thalweg.due;

/**
 * How much is due.
 *
 * @param due parts that are due, 0 or more
 * @param unknown textile parts of unknown age of which nothing else is due, 0 or more
 */
public record DueCount(int due, int unknown) {

    /** All of them together. */
    public int all() {
        return due + unknown;
    }
}
