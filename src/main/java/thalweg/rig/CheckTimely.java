package thalweg.rig;

import java.util.OptionalDouble;
import thalweg.fault.Sentence;

/**
 * Judges the letter T of the checklist as far as a calculator can: how much there is to tie and to clip where everything is
 * rigged on the spot. How long that takes somebody it cannot know.
 */
final class CheckTimely {

    /** Up to so many knots and connectors is called good; our choice: any layout on two points stays within it. */
    static final int GOOD = 6;

    /** Above so many it is poor; our choice, twice the line for good. */
    static final int POOR = 12;

    private CheckTimely() {}

    static LetterCheck of(RigMaterial material) {
        int knots = material.knots();
        int connectors = material.connectors();
        int things = knots + connectors;
        RigVerdict verdict = things <= GOOD ? RigVerdict.GOOD : things <= POOR ? RigVerdict.WATCH : RigVerdict.POOR;
        Sentence counted = knots == 1
                ? Sentence.of("Rigged from nothing it takes 1 knot to tie and {0} connectors to clip.", connectors)
                : Sentence.of(
                        "Rigged from nothing it takes {0} knots to tie and {1} connectors to clip.", knots, connectors);
        Sentence line = switch (verdict) {
            case GOOD -> Sentence.of("Up to {0} together is our own line for good.", GOOD);
            case WATCH -> Sentence.of("More than {0} together is over our own line for good.", GOOD);
            default -> Sentence.of("More than {0} together is our own line for poor.", POOR);
        };
        return new LetterCheck(
                CheckLetter.T,
                verdict,
                OptionalDouble.of(things),
                Sentence.of("{0} {1} How long that takes you, cold and wet, is not known here.", counted, line));
    }
}
