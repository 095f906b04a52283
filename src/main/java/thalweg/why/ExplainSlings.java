package thalweg.why;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import thalweg.rig.RigAnswer;
import thalweg.rig.SlungFigures;
import thalweg.sheet.SlingWords;
import thalweg.why.Figure.Topic;
import thalweg.why.Ground.Kind;

/** Explains what each sling round a point bears, and what a natural point without one is taken for. */
final class ExplainSlings {

    private final RigAnswer answer;
    private final Grounds grounds;
    private final Words words;

    ExplainSlings(RigAnswer answer, Grounds grounds, Words words) {
        this.answer = answer;
        this.grounds = grounds;
        this.words = words;
    }

    List<Figure> figures() {
        List<SlungFigures> slings = SlungFigures.of(answer);
        List<String> sentences = new SlingWords(words.phrases(), words.units()).sentences(answer);
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < sentences.size(); i++) {
            figures.add(i < slings.size() ? sling(slings.get(i), sentences.get(i)) : without(sentences.get(i)));
        }
        return figures;
    }

    private Figure sling(SlungFigures slung, String sentence) {
        String sides = slung.sides().stream().map(words::force).collect(Collectors.joining(", "));
        return new Figure(
                Topic.REST,
                words.say("why.sling", slung.point().name()),
                slung.angle()
                        .map(angle -> words.say("why.sling.value", sides, angle.print()))
                        .orElse(sides),
                List.of(sentence, words.say("why.sling.how")),
                grounds.atRest(Kind.SWAY),
                words.say("why.sling.source"),
                words.say("why.sling.not"));
    }

    private Figure without(String sentence) {
        return new Figure(
                Topic.REST,
                words.say("why.sling.none"),
                words.say("why.sling.none.value"),
                List.of(sentence),
                grounds.of(Kind.PLACES),
                words.say("why.stated"),
                words.say("why.sling.not"));
    }
}
