package thalweg.logbook;

import thalweg.ledger.Uid;

/**
 * What the keeper wrote for nobody else. It stays with the database in which it was written.
 *
 * @param uid its name in this database
 * @param about the canyon, place or station it is about
 * @param text not blank
 */
public record PrivateNote(Uid uid, Uid about, String text) {

    public PrivateNote {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a private note says something");
        }
    }
}
