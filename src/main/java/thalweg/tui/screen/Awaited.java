package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.tui.widget.ListState;

/**
 * What a list of records waits for while its rows are read anew.
 *
 * @param row on which the cursor will be once it is there: something new, or something that was moved
 * @param saving whether something is being saved that the rows do not show yet
 * @param gone whether the canyon is out of use
 */
record Awaited(Optional<Uid> row, boolean saving, boolean gone) {

    /** Nothing. */
    static final Awaited NOTHING = new Awaited(Optional.empty(), false, false);

    /** The canyon is not there any more. */
    static final Awaited GONE = new Awaited(Optional.empty(), false, true);

    /** A thing that may be entered now. */
    static Awaited entered(Uid row) {
        return new Awaited(Optional.of(row), false, false);
    }

    /** A thing that is being moved. */
    static Awaited moved(Uid row) {
        return new Awaited(Optional.of(row), true, false);
    }

    /**
     * Where the cursor goes: to the awaited row, else to the one on which it was, else to the nearest.
     *
     * @param list before
     * @param before what each row was about, where it was about a record
     * @param after the same of the new rows
     */
    ListState placed(ListState list, List<Optional<Uid>> before, List<Optional<Uid>> after) {
        int was = list.chosen();
        Optional<Uid> same = was < before.size() ? before.get(was) : Optional.empty();
        return row.filter(uid -> after.contains(Optional.of(uid)))
                .or(() -> same)
                .map(uid -> after.indexOf(Optional.of(uid)))
                .filter(at -> at >= 0)
                .map(at -> list.at(at, after.size()))
                .orElseGet(() -> list.at(was, after.size()));
    }
}
