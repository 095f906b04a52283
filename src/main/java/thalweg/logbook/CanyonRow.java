package thalweg.logbook;

import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.units.Length;

/**
 * A canyon as one line of a list.
 *
 * @param uid its name in every database
 * @param name of it
 * @param whereabouts region and country, empty where unknown
 * @param french grade as written, empty where unknown
 * @param american grade as written, empty where unknown
 * @param longestDrop stated or from the line; empty where unknown
 * @param stations how many there are
 * @param standing how all its parts stand together
 * @param newestInspection when any part was inspected last, as stored; empty where never
 * @param invented whether it is made up for practice
 */
public record CanyonRow(
        Uid uid,
        String name,
        String whereabouts,
        String french,
        String american,
        Optional<Length> longestDrop,
        int stations,
        Standing standing,
        String newestInspection,
        boolean invented) {}
