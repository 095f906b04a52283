package thalweg.why;

import java.util.List;
import java.util.stream.Collectors;
import thalweg.rig.RedirectFigures;
import thalweg.rig.RigAnswer;
import thalweg.sheet.RedirectWords;
import thalweg.why.Figure.Topic;
import thalweg.why.Ground.Kind;

/** Explains what a redirect bears over which the rope runs, and what its loss leaves. */
final class ExplainRedirect {

    private final RigAnswer answer;
    private final Grounds grounds;
    private final Words words;

    ExplainRedirect(RigAnswer answer, Grounds grounds, Words words) {
        this.answer = answer;
        this.grounds = grounds;
        this.words = words;
    }

    /** None for a rig whose load hangs from the master. */
    List<Figure> figures() {
        return answer.redirect()
                .map(figures -> List.of(force(figures), lost(figures)))
                .orElse(List.of());
    }

    private Figure force(RedirectFigures figures) {
        RedirectWords told = new RedirectWords(words.phrases(), words.units());
        return new Figure(
                Topic.REST,
                words.say("why.redirect", figures.redirect().name()),
                words.say(
                        "why.redirect.value",
                        words.force(figures.force()),
                        words.force(figures.worst()),
                        figures.worstToward().print()),
                List.of(
                        told.bears(answer, figures),
                        words.say(
                                "why.redirect.how",
                                words.force(answer.input().load().weight()),
                                figures.deflection().print(),
                                words.force(figures.force())),
                        told.strength(figures)),
                grounds.atRest(Kind.SWAY),
                words.say("why.redirect.source"),
                words.say("why.redirect.not"));
    }

    private Figure lost(RedirectFigures figures) {
        RedirectWords told = new RedirectWords(words.phrases(), words.units());
        String points = figures.freed().steady().points().stream()
                .map(point -> point.point() + " " + words.force(point.force()))
                .collect(Collectors.joining(", "));
        return new Figure(
                Topic.LOSS,
                words.say("why.redirect_lost", figures.redirect().name()),
                points,
                List.of(told.lost(figures), told.slack(figures), words.say("why.redirect_lost.how")),
                grounds.atRest(Kind.SWAY, Kind.ROPE),
                words.say("why.model.source"),
                words.say("why.redirect_lost.not"));
    }
}
