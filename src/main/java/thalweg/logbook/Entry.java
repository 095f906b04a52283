package thalweg.logbook;

import thalweg.ledger.Uid;

/**
 * A fact as it stands in the logbook: what it says, its name, and who wrote it down when.
 *
 * @param <T> what it says
 * @param uid its name in every database
 * @param content what it says
 * @param author who wrote it down
 * @param at when it was written down, as RFC 3339 in UTC
 */
public record Entry<T>(Uid uid, T content, String author, String at) {}
