package thalweg.tui.core;

/** Work outside the interface that a screen asks for. What there is to do is declared beside the screens. */
public interface Effect {

    /**
     * Work that changes nothing: it begins once the picture of the key that asked for it is painted, so that it takes no
     * processor from that.
     */
    interface AfterPicture extends Effect {}

    /**
     * Such work of which a screen needs the last answer alone: once it asks for the same kind again, what has not begun is
     * left undone and never answered.
     */
    interface OnlyLatest extends AfterPicture {}

    /** Puts a text on the clipboard of the person's terminal. */
    record Copy(String text) implements Effect {}

    /** Stops the work that this screen asked for, as far as it can be stopped; the work then fails and says so. */
    record Stop() implements Effect {}

    /**
     * Looks whether somebody else has changed what the screens show; answered by {@link Message.ChangedElsewhere} or
     * {@link Message.Unchanged}.
     */
    record Look() implements AfterPicture {}

    /**
     * Leaves this interface, for another to begin in its place.
     *
     * @param to the word for that
     */
    record Leave(String to) implements Effect {}
}
