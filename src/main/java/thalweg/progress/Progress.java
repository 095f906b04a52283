package thalweg.progress;

/** Is told by long work how far it is, and ends it where a person has stopped it. */
@FunctionalInterface
public interface Progress {

    /** Nobody watches, and nothing stops it. */
    Progress UNWATCHED = (done, all) -> {};

    /**
     * So much is done. Called often; it is cheap.
     *
     * @param done steps, 0 or more
     * @param all steps there are, or 0 where that is not known
     * @throws StoppedException when the work is to stop; what it began is then taken back
     */
    void at(long done, long all);
}
