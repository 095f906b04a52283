package thalweg.tui.runtime;

import thalweg.fault.AppException;
import thalweg.fault.Sentence;

/** The terminal cannot do what is needed, or is gone. */
public final class TerminalException extends AppException {

    /** An answer that stands for itself. */
    public TerminalException(Sentence saying) {
        super(saying);
    }

    /** An answer with what was met. */
    public TerminalException(Sentence saying, Throwable cause) {
        super(saying, cause);
    }
}
