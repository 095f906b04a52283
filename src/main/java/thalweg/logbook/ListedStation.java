package thalweg.logbook;

import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.route.ObstacleKind;
import thalweg.route.PartialDate;
import thalweg.units.Length;

/**
 * A station as one line of the list of all stations.
 *
 * @param uid its name in every database
 * @param name as entered
 * @param canyon in which it is
 * @param place of the line at which it is, counted from 1
 * @param kind of that place; empty where only a newer version of the program knows it
 * @param height of that place, where it was entered
 * @param parts how many are entered, 0 or more
 * @param standing of those parts
 * @param oldestLook when the part that was longest not seen was seen last, of those that were ever seen
 * @param due how many of them are due; empty where nobody asked
 */
public record ListedStation(
        Uid uid,
        String name,
        CanyonName canyon,
        int place,
        Optional<ObstacleKind> kind,
        Optional<Length> height,
        int parts,
        Standing standing,
        Optional<PartialDate> oldestLook,
        Optional<Integer> due) {

    /** The same with so many parts that are due. */
    public ListedStation withDue(int count) {
        return new ListedStation(
                uid, name, canyon, place, kind, height, parts, standing, oldestLook, Optional.of(count));
    }
}
