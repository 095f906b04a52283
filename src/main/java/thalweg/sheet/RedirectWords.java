package thalweg.sheet;

import java.util.List;
import java.util.stream.Collectors;
import thalweg.rig.PointForce;
import thalweg.rig.RedirectFigures;
import thalweg.rig.RigAnswer;
import thalweg.rig.WorstForce;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** What a redirect bears and what its loss does, in words, the same on sheets, on the screen and in the terminal. */
public final class RedirectWords {

    private final Phrases phrases;
    private final UnitSystem units;

    /**
     * Words in a language and a system of units.
     */
    public RedirectWords(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** Sentences, of which the first says what it bears; none for a rig without a redirect. */
    public List<String> sentences(RigAnswer answer) {
        return answer.redirect()
                .map(figures -> List.of(
                        bears(answer, figures),
                        strength(figures),
                        lost(figures),
                        slack(figures),
                        phrases.say("rig.redirect.not_in_the_letters")))
                .orElse(List.of());
    }

    /** What it bears, at the aim and at most. */
    public String bears(RigAnswer answer, RedirectFigures figures) {
        return phrases.say(
                "rig.redirect",
                figures.redirect().name(),
                answer.input().load().toward().print(),
                answer.input().load().leanOut().print(),
                figures.deflection().print(),
                figures.force().print(units),
                figures.worst().print(units),
                figures.worstToward().print());
    }

    /** Its strength over that, or that it is unknown. */
    public String strength(RedirectFigures figures) {
        return figures.ratio().isPresent()
                ? phrases.say(
                        "rig.redirect.ratio",
                        figures.redirect().name(),
                        figures.redirect().strength().orElseThrow().print(units),
                        figures.times())
                : phrases.say(
                        figures.redirect().strength().isPresent()
                                ? "rig.redirect.bears_nothing"
                                : "rig.redirect.unknown",
                        figures.redirect().name());
    }

    /** How the rig hangs without it. */
    public String lost(RedirectFigures figures) {
        RedirectFigures.Freed freed = figures.freed();
        String points = freed.steady().points().stream()
                .map(point -> phrases.say(
                        "rig.redirect.point",
                        point.point(),
                        point.force().print(units),
                        worst(freed, point).force().print(units),
                        worst(freed, point).direction().print()))
                .collect(Collectors.joining("; "));
        return phrases.say(
                "rig.redirect.lost", figures.redirect().name(), freed.turn().print(), points);
    }

    private static WorstForce worst(RedirectFigures.Freed freed, PointForce point) {
        return freed.worst().stream()
                .filter(worst -> worst.point().equals(point.point()))
                .findFirst()
                .orElseThrow();
    }

    /** What its loss frees of rope, and what of that is not modelled. */
    public String slack(RedirectFigures figures) {
        return figures.freed()
                .slack()
                .map(slack -> phrases.say("rig.redirect.slack", slack.printFine(units)))
                .orElse(phrases.say("rig.redirect.slack_unknown"));
    }
}
