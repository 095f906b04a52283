package thalweg.tui.screen;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import thalweg.logbook.RowOrder;
import thalweg.tui.widget.ListState;

/**
 * A list too long to be read whole: the keys of all rows in order, and the rows around those in view.
 *
 * @param keys of all rows
 * @param read rows by key
 * @param state which row is chosen
 */
record LongList<R>(RowOrder keys, Map<Long, R> read, ListState state) {

    /** Rows that are read above and below those in view, so that no move by a page waits for them. */
    static final int MARGIN = 100;

    LongList {
        read = Map.copyOf(read);
    }

    /** A list of nothing. */
    static <R> LongList<R> none() {
        return new LongList<>(RowOrder.NONE, Map.of(), ListState.START);
    }

    int size() {
        return keys.size();
    }

    /** The row at that index, if it has been read. */
    Optional<R> row(int index) {
        return index < size() ? Optional.ofNullable(read.get(keys.at(index))) : Optional.empty();
    }

    Optional<R> chosen() {
        return row(state.chosen());
    }

    /** By which the chosen row is found again in another order. */
    OptionalLong chosenKey() {
        return size() == 0 ? OptionalLong.empty() : OptionalLong.of(keys.at(Math.min(state.chosen(), size() - 1)));
    }

    LongList<R> moved(ListState to) {
        return new LongList<>(keys, read, to);
    }

    /**
     * The keys of rows to read now: none where all of a page above and below the view is there.
     *
     * @param height rows in view
     */
    RowOrder wanted(int height) {
        int top = state.shownIn(height, size()).top();
        boolean there = Arrays.stream(
                        keys.between(top - height, top + 2 * height).toArray())
                .allMatch(read::containsKey);
        return there ? RowOrder.NONE : window(keys, top, height);
    }

    /** The keys around a row of those in view. */
    static RowOrder window(RowOrder keys, int top, int height) {
        return keys.between(top - MARGIN, top + height + MARGIN);
    }

    /** With rows that were read; those far from the view are forgotten. */
    LongList<R> with(Map<Long, R> more, int height) {
        Map<Long, R> near = new HashMap<>();
        int top = state.shownIn(height, size()).top();
        LongStream.of(keys.between(top - 2 * MARGIN, top + height + 2 * MARGIN).toArray())
                .forEach(key -> Optional.ofNullable(more.get(key))
                        .or(() -> Optional.ofNullable(read.get(key)))
                        .ifPresent(row -> near.put(key, row)));
        return new LongList<>(keys, near, state);
    }
}
