package thalweg.tui.core;

import java.util.List;
import java.util.Optional;
import thalweg.draft.Draft;

/** One screen of the interface: an immutable value. */
public interface Screen {

    /** What stands at the top. */
    String title(Surroundings around);

    /** What keys do here, in the order of their importance; the one list from which foot line and help come. */
    List<Binding> bindings(Surroundings around);

    /** Answers what no binding took. */
    Step update(Message message, Surroundings around);

    /** Paints the state; reads only. */
    void draw(Canvas canvas, Surroundings around);

    /** Whether a field has the focus, so that characters are text and no commands. */
    default boolean writing() {
        return false;
    }

    /** Whether it has not got its content yet, so that what its keys do cannot be told. */
    default boolean waiting() {
        return false;
    }

    /** What was entered and is not saved, so that it is kept whatever happens; the same for the same state. */
    default Optional<Draft> draft(Surroundings around) {
        return Optional.empty();
    }

    /** Whether something was entered that leaving would lose. */
    default boolean unsaved() {
        return false;
    }
}
