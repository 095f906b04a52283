package thalweg.fault;

/** The database cannot be used: missing, foreign, newer, damaged, read-only or busy. */
public final class StoreException extends AppException {

    /**
     * @param sentence names the file and the mend
     */
    public StoreException(String sentence) {
        super(sentence);
    }

    /**
     * @param sentence names the file and the mend
     * @param cause goes to the log
     */
    public StoreException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
