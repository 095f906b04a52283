package thalweg.sheet;

import thalweg.rig.PartSafety;
import thalweg.text.Phrases;

/** How many times a part would hold a force, in words, the same on sheets, on the screen and in explanations. */
public final class SafetyWords {

    private final Phrases phrases;

    /**
     * Words in a language.
     */
    public SafetyWords(Phrases phrases) {
        this.phrases = phrases;
    }

    /**
     * "12.3 times", with its range where a factor has one; or why there is no ratio.
     *
     * @param times one of the part's two
     */
    public String ratio(PartSafety part, PartSafety.Times times) {
        if (times.ratio().isEmpty()) {
            return none(times);
        }
        String range = part.range(times).map(phrases::say).orElse("");
        return range.isEmpty()
                ? phrases.say("rig.safety.times", times.print())
                : phrases.say("rig.safety.times.range", times.print(), range);
    }

    /** The same, with where the force is largest. */
    public String ratioAndWhere(PartSafety part, PartSafety.Times times) {
        if (times.ratio().isEmpty()) {
            return none(times);
        }
        String range = part.range(times).map(phrases::say).orElse("");
        return range.isEmpty()
                ? phrases.say("rig.safety.times.where", times.print(), times.saying())
                : phrases.say("rig.safety.times.range.where", times.print(), range, times.saying());
    }

    private String none(PartSafety.Times times) {
        return phrases.say(times.idle() ? "rig.safety.none" : "rig.safety.unknown", times.saying());
    }
}
