package thalweg.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.rig.Aftermath;
import thalweg.rig.PeakRange;
import thalweg.rig.PointForce;
import thalweg.rig.PointLoss;
import thalweg.rig.RigAnswer;
import thalweg.rig.WithinStrength;
import thalweg.sheet.LossWords;
import thalweg.units.Force;
import thalweg.units.Mass;
import thalweg.why.Figure.Topic;
import thalweg.why.Ground.Kind;

/** Explains what is said of the loss of each point and the cut of each strand. */
final class ExplainLosses {

    private final RigAnswer answer;
    private final Optional<PeakRange> ranges;
    private final Grounds grounds;
    private final Words words;

    /**
     * @param ranges of the peaks, where they have been worked out
     */
    ExplainLosses(RigAnswer answer, Optional<PeakRange> ranges, Grounds grounds, Words words) {
        this.answer = answer;
        this.ranges = ranges;
        this.grounds = grounds;
        this.words = words;
    }

    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        for (PointLoss loss : answer.losses()) {
            figures.add(verdict(loss));
            loss.aftermath().ifPresent(after -> {
                figures.add(way(loss.point(), after));
                figures.add(peaks(loss.point(), after));
            });
        }
        if (!answer.cuts().isEmpty()) {
            figures.add(cuts());
        }
        return figures;
    }

    private LossWords losses() {
        return new LossWords(words.phrases(), words.units());
    }

    private List<Ground> inputs(Kind... more) {
        List<Kind> kinds = new ArrayList<>(List.of(more));
        kinds.add(Kind.CAPTURED);
        kinds.add(Kind.ROPE);
        return grounds.atRest(kinds.toArray(new Kind[0]));
    }

    private Figure verdict(PointLoss loss) {
        List<String> how = new ArrayList<>();
        String value = loss.aftermath()
                .map(after -> {
                    how.add(words.say("why.held.how"));
                    how.add(words.say(after.within().saying()));
                    return words.say("why.held.value", within(after.within()));
                })
                .orElseGet(() -> {
                    how.add(words.say("why.lost.how"));
                    return words.say("why.lost.value");
                });
        return new Figure(
                Topic.LOSS,
                words.say("why.held", loss.point()),
                value,
                how,
                inputs(Kind.STRENGTHS, Kind.STRAND_STRENGTH, Kind.KNOT),
                words.say("why.held.source"),
                words.say("why.held.not"));
    }

    private String within(WithinStrength within) {
        return within.verdict()
                .map(yes -> words.say(yes ? "rig.within.yes" : "rig.within.no", within.times()))
                .orElseGet(() -> words.say("rig.within.unknown")
                        + (within.ratio().isPresent() ? words.say("why.held.known", within.times()) : ""));
    }

    private Figure way(String point, Aftermath after) {
        List<String> how = new ArrayList<>();
        how.add(words.say(
                "why.way.drop",
                words.place(answer.steady().master()),
                words.place(after.rest().master())));
        how.add(words.say("why.way.free"));
        after.rest().angle().ifPresent(angle -> how.add(words.say("why.way.angle", angle.print())));
        return new Figure(
                Topic.LOSS,
                words.say("why.way", point),
                words.say(
                        "rig.loss.moves",
                        words.length(after.drop()),
                        words.length(after.freeTravel()),
                        words.length(after.swing())),
                how,
                inputs(),
                words.say("why.model.source"),
                words.say("why.way.not"));
    }

    private Figure peaks(String point, Aftermath after) {
        List<String> how = new ArrayList<>();
        Mass mass = new Mass(answer.input().load().weight().newtons() / Mass.STANDARD_GRAVITY);
        how.add(words.say(
                "why.peak.how",
                mass.print(words.units()),
                words.force(answer.input().load().weight())));
        String value = after.peaks()
                .map(peaks -> losses().peaks(peaks, ranges.flatMap(known -> known.after(point)), "why.peak.open"))
                .orElse(words.say("unknown"));
        for (PointForce rest : after.rest().points()) {
            after.peaks().flatMap(peaks -> peaks.on(rest.point())).ifPresent(peak -> how.add(against(rest, peak)));
        }
        if (after.peaks().isEmpty()) {
            how.add(words.say("rig.loss.no_peak"));
        }
        return new Figure(
                Topic.LOSS,
                words.say("why.peak", point),
                value,
                how,
                inputs(),
                words.say("why.peak.source"),
                words.say("why.peak.not"));
    }

    private String against(PointForce rest, Force peak) {
        Force before = answer.steady().at(rest.point()).force();
        return words.say(
                "why.peak.against", rest.point(), words.force(before), words.force(peak), words.force(rest.force()));
    }

    private Figure cuts() {
        return new Figure(
                Topic.LOSS,
                words.say("why.cuts"),
                answer.cuts().stream().map(losses()::cut).collect(Collectors.joining(" ")),
                List.of(words.say("why.cuts.how")),
                grounds.of(Kind.LAYOUT, Kind.STRANDS, Kind.CAPTURED, Kind.SLIDER),
                words.say("why.layout.source"),
                words.say("why.cuts.not"));
    }
}
