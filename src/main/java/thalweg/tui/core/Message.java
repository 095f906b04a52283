package thalweg.tui.core;

/** Something that a screen is told. Results of work are messages of their own, declared beside the screens. */
public interface Message {

    /** A key that no binding of the screen took. */
    record KeyPressed(Key key) implements Message {}

    /** Text that was pasted as one piece. */
    record Pasted(String text) implements Message {}

    /** A press of the mouse's main button, at a cell of the whole screen, counted from 0. */
    record MousePressed(int row, int column) implements Message {}

    /** The wheel, by so many rows: negative is up. */
    record Wheel(int rows) implements Message {}

    /** The screen is shown for the first time. */
    record Opened() implements Message {}

    /** The screen is on top again; what it shows may have changed meanwhile. */
    record Returned() implements Message {}

    /** The terminal has the attention of the person again. */
    record Focused() implements Message {}

    /** Somebody else has changed what the screens may show. */
    record ChangedElsewhere() implements Message {}

    /** Nobody else has changed anything. */
    record Unchanged() implements Message {}

    /** Work waits for another program. */
    record Waiting() implements Message {}

    /**
     * Work that the screen asked for goes on.
     *
     * @param done steps, 0 or more
     * @param all steps there are, or 0 where that is not known
     */
    record Progressed(Effect effect, long done, long all) implements Message {}

    /** Work that the screen asked for came to nothing, and why. */
    record Failed(Effect effect, String sentence) implements Message {}
}
