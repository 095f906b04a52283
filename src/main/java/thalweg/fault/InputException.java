package thalweg.fault;

/** Something that was typed, or a file that was given, cannot be used as it is. */
public class InputException extends AppException {

    /**
     * @param saying names the input and the mend
     */
    public InputException(Sentence saying) {
        super(saying);
    }

    /**
     * @param saying names the input and the mend
     * @param cause goes to the log
     */
    public InputException(Sentence saying, Throwable cause) {
        super(saying, cause);
    }
}
