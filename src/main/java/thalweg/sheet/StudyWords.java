package thalweg.sheet;

import java.util.Locale;
import java.util.stream.Collectors;
import thalweg.rig.BestFocus;
import thalweg.rig.RigInput;
import thalweg.text.Phrases;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** What was studied about a rig, in words, the same on the screen and in the terminal. */
public final class StudyWords {

    private final Phrases phrases;
    private final UnitSystem units;

    /**
     * Words in a language and a system of units.
     */
    public StudyWords(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** Where the focus would spare the weakest point most, or why there is no such place. */
    public String best(BestFocus best) {
        return best.found()
                .map(found -> phrases.say(
                        "rig.best",
                        metres(found.focus().x()),
                        metres(found.focus().y()),
                        metres(found.focus().z()),
                        found.shares().stream()
                                .map(force -> phrases.say(
                                        "rig.best.share",
                                        force.point(),
                                        String.format(Locale.ROOT, "%.0f", force.share() * 100)))
                                .collect(Collectors.joining(", ")),
                        found.times(),
                        found.timesAsGiven(),
                        best.saying()))
                .orElseGet(() -> phrases.say("rig.best.none", best.saying()));
    }

    /** How far the beliefs in strengths and load spread that a cascade drew from. */
    public String beliefs(RigInput input) {
        return phrases.say(
                "rig.cascade.beliefs",
                input.points().stream()
                        .map(point -> point.name() + " " + point.spread())
                        .collect(Collectors.joining(", ")),
                input.load().spread());
    }

    private String metres(double along) {
        return new Length(along).printFine(units);
    }
}
