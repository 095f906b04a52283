package thalweg.rig;

import java.util.List;
import java.util.Optional;
import thalweg.fault.Sentence;

/**
 * Which layout the figures speak for.
 *
 * @param choice the layout; empty where none can be named
 * @param saying which, or why none, in a sentence
 * @param restsOn the figures that decided, a sentence each
 * @param wouldChange what would speak for another, a sentence each
 */
public record RigRecommendation(
        Optional<LaidOut> choice, Sentence saying, List<Sentence> restsOn, List<Sentence> wouldChange) {

    public RigRecommendation {
        restsOn = List.copyOf(restsOn);
        wouldChange = List.copyOf(wouldChange);
    }

    /** The same in English. */
    public String says() {
        return saying.toString();
    }
}
