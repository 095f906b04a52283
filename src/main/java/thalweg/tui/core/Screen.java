package thalweg.tui.core;

import java.util.List;

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

    /** Whether something was entered that leaving would lose. */
    default boolean unsaved() {
        return false;
    }
}
