package thalweg.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.rig.BestFocus;
import thalweg.rig.CascadeOdds;
import thalweg.rig.FindBestFocus;
import thalweg.rig.PeakRange;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigStudy;
import thalweg.sheet.LossWords;
import thalweg.why.Figure.Topic;
import thalweg.why.Ground.Kind;

/** Explains what was studied besides the answer, as far as it was asked for. */
final class ExplainStudies {

    private final RigAnswer answer;
    private final Grounds grounds;
    private final Words words;

    ExplainStudies(RigAnswer answer, Grounds grounds, Words words) {
        this.answer = answer;
        this.grounds = grounds;
        this.words = words;
    }

    List<Figure> figures(RigStudy study) {
        List<Figure> figures = new ArrayList<>();
        study.bestFocus().ifPresent(best -> figures.add(best(best)));
        study.peakRange().ifPresent(range -> range.losses().forEach(loss -> figures.add(range(loss))));
        study.cascade().ifPresent(odds -> figures.addAll(cascade(odds)));
        return figures;
    }

    private Figure best(BestFocus best) {
        String value = best.found().map(this::found).orElseGet(() -> words.say("why.best.none"));
        List<String> how = new ArrayList<>();
        if (best.found().isPresent()) {
            how.add(words.say("why.best.how", words.percent(FindBestFocus.LEAST_SHARE)));
        }
        how.add(words.say(best.saying()));
        return new Figure(
                Topic.STUDIES,
                words.say("why.best"),
                value,
                how,
                grounds.atRest(Kind.SWAY, Kind.STRENGTHS),
                words.say("why.best.source"),
                words.say("why.best.not"));
    }

    private String found(BestFocus.Found found) {
        String shares = found.shares().stream()
                .map(force -> words.say("rig.best.share", force.point(), Words.fixed(100 * force.share(), 0)))
                .collect(Collectors.joining(", "));
        return words.say(
                "why.best.value",
                words.metres(found.focus().x()),
                words.metres(found.focus().y()),
                words.metres(found.focus().z()),
                shares,
                found.times(),
                found.timesAsGiven());
    }

    private Figure range(PeakRange.Loss loss) {
        String value = new LossWords(words.phrases(), words.units()).ranges(loss);
        List<String> how = new ArrayList<>();
        how.add(words.say("why.range.how"));
        if (loss.mayLieOutside()) {
            how.add(words.say("rig.peaks.outside"));
        }
        return new Figure(
                Topic.STUDIES,
                words.say("why.range", loss.lost()),
                value,
                how,
                grounds.atRest(Kind.SWAY, Kind.ROPE, Kind.CAPTURED),
                words.say("why.range.source"),
                words.say("why.range.not"));
    }

    private List<Figure> cascade(CascadeOdds odds) {
        if (odds.unknown().isPresent()) {
            return List.of(chance(
                    words.say("why.cascade"),
                    words.say("unknown"),
                    List.of(words.say(odds.unknown().get()))));
        }
        List<Figure> figures = new ArrayList<>();
        String trials = words.say("why.cascade.trials", odds.trials(), odds.planned(), odds.seed());
        Optional<String> rising = odds.rising() ? Optional.of(words.say("rig.cascade.rising")) : Optional.empty();
        List<String> how = new ArrayList<>(List.of(trials, words.say("why.cascade.how"), words.say("why.interval")));
        rising.ifPresent(how::add);
        odds.anyPointFails()
                .ifPresent(share -> figures.add(chance(words.say("why.cascade.any"), words.say(share.saying()), how)));
        odds.everythingLost()
                .ifPresent(share -> figures.add(chance(words.say("why.cascade.all"), words.say(share.saying()), how)));
        if (odds.trials() > 0) {
            figures.add(chance(
                    words.say("why.cascade.error"),
                    words.say("why.cascade.error.value", odds.printError()),
                    List.of(words.say("why.cascade.error.how"))));
            String spreads = answer.input().points().stream()
                    .map(point -> point.name() + " " + words.plain(point.spread()))
                    .collect(Collectors.joining(", "));
            figures.add(chance(
                    words.say("why.spreads"),
                    words.say(
                            "why.spreads.value",
                            spreads,
                            words.plain(answer.input().load().spread())),
                    List.of(words.say("why.spreads.how"))));
        } else {
            figures.add(chance(words.say("why.cascade"), words.say("unknown"), List.of(trials)));
        }
        return figures;
    }

    private Figure chance(String label, String value, List<String> how) {
        return new Figure(
                Topic.STUDIES,
                label,
                value,
                how,
                grounds.atRest(Kind.SWAY, Kind.ROPE, Kind.CAPTURED, Kind.STRENGTHS, Kind.SPREADS, Kind.LOAD_SPREAD),
                words.say("why.cascade.source"),
                words.say("why.cascade.not"));
    }
}
