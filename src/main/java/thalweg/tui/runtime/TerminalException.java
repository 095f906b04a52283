package thalweg.tui.runtime;

import thalweg.fault.AppException;

/** The terminal cannot do what is needed, or is gone. */
public final class TerminalException extends AppException {

    /** An answer that stands for itself. */
    public TerminalException(String sentence) {
        super(sentence);
    }

    /** An answer with what was met. */
    public TerminalException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
