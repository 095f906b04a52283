package thalweg.rig;

/** Is told how far a cascade has come, and may end it. */
@FunctionalInterface
public interface CascadeWatch {

    /**
     * Called now and then from the thread that computes.
     *
     * @param done trials so far
     * @param planned trials in all
     * @return whether to go on
     */
    boolean goOn(int done, int planned);
}
