package thalweg.progress;

import thalweg.fault.AppException;
import thalweg.fault.Sentence;

/** A person stopped long work. What it had begun is not there any more. */
public final class StoppedException extends AppException {

    private static final long serialVersionUID = 1;

    /**
     * @param saying says what was stopped and that nothing of it remains
     */
    public StoppedException(Sentence saying) {
        super(saying);
    }
}
