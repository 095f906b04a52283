package thalweg.rig;

import java.util.OptionalDouble;
import thalweg.fault.Sentence;

/**
 * A rig held against one letter of the checklist.
 *
 * @param letter which
 * @param verdict how it stands up
 * @param figure the number that decides, in the unit of its letter: E a share [-], A an angle [°], R a part of
 *     the single failures [-], NE a drop [m], S a ratio of strength to force [-], T a count of knots and connectors;
 *     empty for none
 * @param saying one or two sentences with their numbers, naming the point or the angle
 */
public record LetterCheck(CheckLetter letter, RigVerdict verdict, OptionalDouble figure, Sentence saying) {

    public LetterCheck {
        if (saying.toString().isBlank()) {
            throw new IllegalArgumentException("a verdict says why");
        }
    }

    /** Why, in English. */
    public String why() {
        return saying.toString();
    }
}
