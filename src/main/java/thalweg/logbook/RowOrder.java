package thalweg.logbook;

import java.util.Arrays;
import java.util.OptionalInt;

/**
 * The keys of all rows of a long list, in order. A key names a row in the database that is open and nowhere else, so that
 * a list of hundreds of thousands needs no more than eight bytes a row until rows are shown.
 */
public final class RowOrder {

    /** Of an empty list. */
    public static final RowOrder NONE = new RowOrder(new long[0]);

    private final long[] keys;

    /**
     * @param keys in order, each once
     */
    public RowOrder(long[] keys) {
        this.keys = keys.clone();
    }

    /** How many rows there are. */
    public int size() {
        return keys.length;
    }

    /**
     * The key of a row.
     *
     * @param row counted from 0
     */
    public long at(int row) {
        return keys[row];
    }

    /** Where the row of that key is, if it is there. */
    public OptionalInt rowOf(long key) {
        for (int row = 0; row < keys.length; row++) {
            if (keys[row] == key) {
                return OptionalInt.of(row);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * The keys of some rows, as far as they are there.
     *
     * @param from the first row, may be negative
     * @param to the row after the last
     */
    public RowOrder between(int from, int to) {
        int first = Math.max(0, Math.min(from, keys.length));
        return new RowOrder(Arrays.copyOfRange(keys, first, Math.max(first, Math.min(to, keys.length))));
    }

    /** The keys in order. */
    public long[] toArray() {
        return keys.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RowOrder keyed && Arrays.equals(keys, keyed.keys);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(keys);
    }
}
