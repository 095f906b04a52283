package thalweg.fault;

/** The database cannot be used: missing, foreign, newer, damaged, read-only or busy. */
public final class StoreException extends AppException {

    /**
     * @param saying names the file and the mend
     */
    public StoreException(Sentence saying) {
        super(saying);
    }

    /**
     * @param saying names the file and the mend
     * @param cause goes to the log
     */
    public StoreException(Sentence saying, Throwable cause) {
        super(saying, cause);
    }
}
