package thalweg.fault;

/**
 * An answer that stops the work at hand: its message is one whole sentence that names the thing and the mend.
 *
 * <p>It is caught in two places only: where an effect of a screen ran, and where a command ends. Bugs are other
 * exceptions and are never caught as this one.
 */
public abstract class AppException extends RuntimeException {

    /**
     * @param sentence shown to the person as it stands
     */
    protected AppException(String sentence) {
        super(sentence);
    }

    /**
     * @param sentence shown to the person as it stands
     * @param cause goes to the log, never to the person
     */
    protected AppException(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    /** The sentence a person reads. */
    public String sentence() {
        String message = getMessage();
        if (message == null) {
            throw new AssertionError("an answer has a sentence");
        }
        return message;
    }
}
