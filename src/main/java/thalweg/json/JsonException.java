package thalweg.json;

import thalweg.fault.InputException;

/** The text is not JSON, or not JSON that is safe to read. */
public final class JsonException extends InputException {

    JsonException(String sentence) {
        super(sentence);
    }

    JsonException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
