package thalweg.fault;

/**
 * An answer that stops the work at hand: its message is one whole sentence that names the thing and the mend.
 *
 * <p>It is caught in two places only: where an effect of a screen ran, and where a command ends. Bugs are other
 * exceptions and are never caught as this one.
 */
public abstract class AppException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Sentence saying;

    /**
     * @param saying shown to the person as it stands, in the language in use
     */
    protected AppException(Sentence saying) {
        super(saying.toString());
        this.saying = saying;
    }

    /**
     * @param saying shown to the person as it stands, in the language in use
     * @param cause goes to the log, never to the person
     */
    protected AppException(Sentence saying, Throwable cause) {
        super(saying.toString(), cause);
        this.saying = saying;
    }

    /** What a person reads. */
    public Sentence saying() {
        return saying;
    }

    /** The sentence in English, as it is logged. */
    public String sentence() {
        return saying.toString();
    }
}
