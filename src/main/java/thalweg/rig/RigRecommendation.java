package thalweg.rig;

import java.util.List;
import java.util.Optional;

/**
 * Which layout the figures speak for.
 *
 * @param choice the layout; empty where none can be named
 * @param says which, or why none, in a sentence
 * @param restsOn the figures that decided, a sentence each
 * @param wouldChange what would speak for another, a sentence each
 */
public record RigRecommendation(Optional<LaidOut> choice, String says, List<String> restsOn, List<String> wouldChange) {

    public RigRecommendation {
        restsOn = List.copyOf(restsOn);
        wouldChange = List.copyOf(wouldChange);
    }
}
