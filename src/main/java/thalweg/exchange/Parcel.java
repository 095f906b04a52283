package thalweg.exchange;

import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LocalRecord;

/**
 * A canyon as it goes from one database to another.
 *
 * @param canyon with everything in it
 * @param local what its database keeps to itself, where the keeper chose to pass it on
 */
public record Parcel(CanyonRecord canyon, LocalRecord local) {

    /** A canyon without anything private. */
    public static Parcel of(CanyonRecord canyon) {
        return new Parcel(canyon, LocalRecord.NOTHING);
    }
}
