package thalweg.tui.shell;

import java.util.List;

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
}
