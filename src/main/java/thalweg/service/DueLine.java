package thalweg.service;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import thalweg.due.Due;
import thalweg.logbook.DueKey;

/** Parts that stand in the order in which they are due, read a piece at a time. */
final class DueLine {

    /** By urgency; of one urgency along the lines of the canyons. */
    static final Comparator<Next> IN_TURN =
            Comparator.comparing(Next::due, Due.BY_URGENCY).thenComparing(Next::key, DueKey.ALONG);

    private final Function<Optional<DueKey>, List<DueKey>> read;
    private final Function<DueKey, Optional<LocalDate>> from;
    private final Function<DueKey, Due> rule;
    private final Predicate<Next> turn;
    private final Deque<Next> coming = new ArrayDeque<>();
    private final Deque<Next> ahead = new ArrayDeque<>();
    private Optional<DueKey> last = Optional.empty();
    private boolean whole;

    /**
     * @param read the next piece after a part, or the first; empty where there are no more
     * @param from the day by which they stand in this line
     * @param rule what is due of a part in this line, never earlier for a later day
     * @param turn whether a part has its turn in this line, and not in another
     */
    DueLine(
            Function<Optional<DueKey>, List<DueKey>> read,
            Function<DueKey, Optional<LocalDate>> from,
            Function<DueKey, Due> rule,
            Predicate<Next> turn) {
        this.read = read;
        this.from = from;
        this.rule = rule;
        this.turn = turn;
    }

    /** A part in turn, with what is due of it by that order. */
    record Next(Due due, DueKey key) {}

    /** Whether there are no more. */
    boolean isOver() {
        fill();
        return ahead.isEmpty();
    }

    /** The one whose turn it is. */
    Next first() {
        fill();
        return ahead.getFirst();
    }

    /** The same, and the line goes on. */
    Next take() {
        fill();
        return ahead.removeFirst();
    }

    private void fill() {
        if (ahead.isEmpty() && hasNext()) {
            Next next = coming.removeFirst();
            ahead.add(next);
            if (mayMeetOthers(next)) {
                List<Next> same = new ArrayList<>(List.of(ahead.removeFirst()));
                while (hasNext() && coming.getFirst().due().equals(next.due())) {
                    same.add(coming.removeFirst());
                }
                same.sort(IN_TURN);
                ahead.addAll(same);
            }
        }
    }

    /** The last days of a long month are the same day of a short one: then later days of the line are due on one day. */
    private boolean mayMeetOthers(Next next) {
        return from.apply(next.key())
                .flatMap(day -> next.due()
                        .day()
                        .filter(due -> due.getDayOfMonth() == due.lengthOfMonth()
                                && day.getDayOfMonth() >= due.getDayOfMonth()))
                .isPresent();
    }

    private boolean hasNext() {
        while (coming.isEmpty() && !whole) {
            List<DueKey> piece = read.apply(last);
            whole = piece.isEmpty();
            for (DueKey key : piece) {
                Next next = new Next(rule.apply(key), key);
                if (turn.test(next)) {
                    coming.add(next);
                }
                last = Optional.of(key);
            }
        }
        return !coming.isEmpty();
    }
}
