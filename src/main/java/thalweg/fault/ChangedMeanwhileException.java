package thalweg.fault;

/** Somebody else changed the same record between reading it and writing it. */
public final class ChangedMeanwhileException extends AppException {

    /**
     * @param sentence names the record and the mend
     */
    public ChangedMeanwhileException(String sentence) {
        super(sentence);
    }
}
