package thalweg.logbook;

import thalweg.ledger.Hash;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;

/**
 * A sheet that was handed out. It stays with the database in which it was noted, and never changes.
 *
 * @param canyon the sheet is about
 * @param on when it was given
 * @param to whom; not blank
 * @param number of the sheet in this database, 1 or more
 * @param file its name without folders; not blank
 * @param records SHA-256 of the canyon's records as they were, so that a change since can be told
 */
public record SheetGiven(Uid canyon, PartialDate on, String to, long number, String file, Hash records) {

    public SheetGiven {
        if (to.isBlank() || file.isBlank() || number < 1) {
            throw new IllegalArgumentException("a sheet was given to somebody, as a file with a number");
        }
    }
}
