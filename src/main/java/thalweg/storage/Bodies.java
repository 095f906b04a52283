package thalweg.storage;

import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.JsonDocument;
import thalweg.json.JsonException;
import thalweg.ledger.Uid;

/** Reads the bodies that the query tables hold. What was checked before it was stored can only fail here if it changed. */
final class Bodies {

    private Bodies() {}

    /**
     * A reader of a stored body.
     *
     * @throws StoreException when it is no JSON any more
     */
    static FieldReader reader(Uid uid, String body) {
        try {
            return JsonDocument.read("The stored record", body).reader(new Findings());
        } catch (JsonException e) {
            throw altered(uid, e);
        }
    }

    /**
     * The record that was read from a stored body.
     *
     * @throws StoreException when it breaks a rule now
     */
    static <T> T sound(Uid uid, Optional<T> record) {
        return record.orElseThrow(() -> new StoreException(sentence(uid)));
    }

    private static StoreException altered(Uid uid, JsonException cause) {
        return new StoreException(sentence(uid), cause);
    }

    private static Sentence sentence(Uid uid) {
        return Sentence.of(
                "The record {0} in the database cannot be read: it was altered outside this program."
                        + " Let check --rebuild mend it, or put a backup copy in its place.",
                uid.text());
    }
}
