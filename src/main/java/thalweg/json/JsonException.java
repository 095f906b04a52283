package thalweg.json;

import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/** The text is not JSON, or not JSON that is safe to read. */
public final class JsonException extends InputException {

    JsonException(Sentence saying) {
        super(saying);
    }

    JsonException(Sentence saying, Throwable cause) {
        super(saying, cause);
    }
}
