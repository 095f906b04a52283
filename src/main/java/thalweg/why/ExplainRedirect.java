package thalweg.why;

import java.util.ArrayList;
import java.util.List;
import thalweg.rig.RedirectFigures;
import thalweg.rig.RigAnswer;
import thalweg.sheet.RedirectWords;
import thalweg.why.Figure.Topic;
import thalweg.why.Ground.Kind;

/** Explains what a redirect bears, and what the rig is without it. */
final class ExplainRedirect {

    private final RigAnswer answer;
    private final Grounds grounds;
    private final Words words;

    ExplainRedirect(RigAnswer answer, Grounds grounds, Words words) {
        this.answer = answer;
        this.grounds = grounds;
        this.words = words;
    }

    List<Figure> figures() {
        return answer.redirect().map(this::figure).map(List::of).orElse(List.of());
    }

    private Figure figure(RedirectFigures figures) {
        List<String> how = new ArrayList<>();
        how.add(words.say(
                "why.redirect.how",
                words.force(answer.input().load().weight()),
                figures.deflection().printFine(),
                words.force(figures.force())));
        how.addAll(new RedirectWords(words.phrases(), words.units()).sentences(answer));
        return new Figure(
                Topic.REST,
                words.say("why.redirect", figures.redirect().name()),
                words.say("why.redirect.value", words.force(figures.force()), words.force(figures.worst())),
                how,
                grounds.atRest(Kind.SWAY, Kind.ROPE),
                words.say("why.redirect.source"),
                words.say("why.redirect.not"));
    }
}
