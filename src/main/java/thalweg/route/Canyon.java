package thalweg.route;

import java.util.List;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.place.Position;
import thalweg.units.Length;

/**
 * A canyon as a whole.
 *
 * @param uid its name in every database
 * @param name not blank
 * @param otherNames other names it goes by, none of them blank
 * @param region empty text where unknown
 * @param country empty text where unknown
 * @param french grade in the French notation, if somebody gave one
 * @param american grade in the American notation, if somebody gave one; never derived from the other
 * @param position where the descent begins
 * @param times as stated
 * @param longestDrop as stated, 0 or more; where it is empty the line may still tell
 * @param prose what else is written about it
 * @param invented whether it is made up for practice and must say so wherever it is shown
 */
public record Canyon(
        Uid uid,
        String name,
        List<String> otherNames,
        String region,
        String country,
        Optional<FrenchGrade> french,
        Optional<AmericanGrade> american,
        Optional<Position> position,
        Times times,
        Optional<Length> longestDrop,
        Prose<CanyonText> prose,
        boolean invented) {

    public Canyon {
        otherNames = List.copyOf(otherNames);
        if (name.isBlank() || otherNames.stream().anyMatch(String::isBlank)) {
            throw new IllegalArgumentException("a canyon has a name");
        }
        if (longestDrop.filter(drop -> drop.metres() < 0).isPresent()) {
            throw new IllegalArgumentException("a drop is 0 or more");
        }
    }

    /** Region and country as one text, empty where neither is known. */
    public String whereabouts() {
        return region.isEmpty() || country.isEmpty() ? region + country : region + ", " + country;
    }
}
