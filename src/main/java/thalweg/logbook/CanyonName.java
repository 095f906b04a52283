package thalweg.logbook;

import thalweg.ledger.Uid;

/**
 * What tells a canyon from the others where it is only named.
 *
 * @param uid its name in every database
 * @param name as entered; two canyons may have the same
 * @param whereabouts region and country, empty text where neither is known
 * @param invented whether it is made up for practice and must say so wherever its name stands
 */
public record CanyonName(Uid uid, String name, String whereabouts, boolean invented) {}
