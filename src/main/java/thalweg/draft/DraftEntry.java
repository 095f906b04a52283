package thalweg.draft;

/**
 * One field of a form that was left open.
 *
 * @param label in front of it
 * @param was what stood in it when the form opened
 * @param is what stands in it
 * @param shown what is shown for that, where it is one of a few
 */
public record DraftEntry(String label, String was, String is, String shown) {

    /** Whether somebody entered something else than what stood there. */
    public boolean changed() {
        return !is.equals(was);
    }
}
