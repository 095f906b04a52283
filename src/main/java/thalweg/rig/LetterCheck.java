package thalweg.rig;

import java.util.OptionalDouble;

/**
 * A rig held against one letter of the checklist.
 *
 * @param letter which
 * @param verdict how it stands up
 * @param figure the number that decides, in the unit of its letter: E a share [-], A an angle [°], R a part of
 *     the single failures [-], NE a drop [m], S a ratio of strength to force [-], T a count of knots and connectors;
 *     empty for none
 * @param why one or two sentences with their numbers, naming the point or the angle
 */
public record LetterCheck(CheckLetter letter, RigVerdict verdict, OptionalDouble figure, String why) {

    public LetterCheck {
        if (why.isBlank()) {
            throw new IllegalArgumentException("a verdict says why");
        }
    }
}
