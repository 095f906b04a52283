package thalweg.logbook;

import java.util.Optional;
import thalweg.ledger.Hash;
import thalweg.ledger.LedgerPlace;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;

/**
 * A sheet that was written. It stays with the database in which it was noted, and never changes.
 *
 * @param canyon the sheet is about
 * @param on when it was written
 * @param to whom it was given; empty text where nobody said
 * @param number of the sheet in this database, 1 or more
 * @param file its name without folders; not blank
 * @param records SHA-256 of the canyon's records as they were, so that a change since can be told
 * @param ledger how far this database had been written, so that the records can be had again as they were; empty for sheets
 *     of earlier versions
 */
public record SheetGiven(
        Uid canyon, PartialDate on, String to, long number, String file, Hash records, Optional<LedgerPlace> ledger) {

    public SheetGiven {
        if (file.isBlank() || number < 1) {
            throw new IllegalArgumentException("a sheet is a file with a number");
        }
    }

    /** What stands on it to tell it from every other. */
    public SheetNumber mark() {
        return SheetNumber.of(number, canyon, records);
    }
}
