package thalweg.fault;

/** Somebody else changed the same record between reading it and writing it. */
public final class ChangedMeanwhileException extends AppException {

    /**
     * @param saying names the record and the mend
     */
    public ChangedMeanwhileException(Sentence saying) {
        super(saying);
    }
}
