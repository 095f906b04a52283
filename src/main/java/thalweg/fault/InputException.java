package thalweg.fault;

/** Something that was typed, or a file that was given, cannot be used as it is. */
public class InputException extends AppException {

    /**
     * @param sentence names the input and the mend
     */
    public InputException(String sentence) {
        super(sentence);
    }

    /**
     * @param sentence names the input and the mend
     * @param cause goes to the log
     */
    public InputException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
