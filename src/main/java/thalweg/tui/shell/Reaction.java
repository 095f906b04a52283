package thalweg.tui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What the interface does upon a message.
 *
 * @param shell its next state
 * @param work to start
 * @param order something for the terminal itself
 */
public record Reaction(Shell shell, List<Work> work, Order order) {

    /** What the terminal itself is told. */
    public enum Order {
        NONE,
        QUIT,
        REPAINT,
        SUSPEND
    }

    public Reaction {
        work = List.copyOf(work);
    }

    /** This and what follows upon it; once the terminal itself is told something, nothing follows. */
    Reaction then(Function<Shell, Reaction> next) {
        if (order != Order.NONE) {
            return this;
        }
        Reaction following = next.apply(shell);
        List<Work> all = new ArrayList<>(work);
        all.addAll(following.work);
        return new Reaction(following.shell, all, following.order);
    }
}
