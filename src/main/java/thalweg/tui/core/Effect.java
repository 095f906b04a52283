package thalweg.tui.core;

/** Work outside the interface that a screen asks for. What there is to do is declared beside the screens. */
public interface Effect {

    /** Puts a text on the clipboard of the person's terminal. */
    record Copy(String text) implements Effect {}
}
