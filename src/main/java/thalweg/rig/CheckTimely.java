package thalweg.rig;

import java.util.OptionalDouble;

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
        String counted = "Rigged from nothing it takes " + knots + (knots == 1 ? " knot" : " knots") + " to tie and "
                + connectors + " connectors to clip. ";
        String line = switch (verdict) {
            case GOOD -> "Up to " + GOOD + " together is our own line for good.";
            case WATCH -> "More than " + GOOD + " together is over our own line for good.";
            default -> "More than " + POOR + " together is our own line for poor.";
        };
        return new LetterCheck(
                CheckLetter.T,
                verdict,
                OptionalDouble.of(things),
                counted + line + " How long that takes you, cold and wet, is not known here.");
    }
}
