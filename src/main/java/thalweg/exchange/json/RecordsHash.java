package thalweg.exchange.json;

import thalweg.exchange.Parcel;
import thalweg.json.JsonText;
import thalweg.ledger.Hash;
import thalweg.logbook.CanyonRecord;

/**
 * By which a canyon's records can be told from what they are later.
 *
 * <p>It is the SHA-256 of the canyon's object in a file of records, written as canonical text (RFC 8785), with entries
 * that no longer count and without anything that stays with one database. The head of the file is not in it, so that a
 * later version of the format changes nothing for records that it writes in the same way.
 */
public final class RecordsHash {

    private RecordsHash() {}

    /** The hash of the canyon with everything in it. */
    public static Hash of(CanyonRecord canyon) {
        return Hash.of(JsonText.canonical(RecordsWriter.canyon(Parcel.of(canyon))));
    }
}
