package thalweg.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.rig.Knot;
import thalweg.rig.PartSafety;
import thalweg.rig.PartStrength;
import thalweg.rig.RigAnswer;
import thalweg.units.Force;
import thalweg.why.Figure.Topic;
import thalweg.why.Ground.Kind;

/** Explains how many times each part would hold what it bears: the chain from its strength as stated, and the force. */
final class ExplainStrength {

    /** From here on a force that counts as a larger one is told as both [-]. */
    private static final double COUNTS_AS_MORE = 1.001;

    private final RigAnswer answer;
    private final Optional<Knot> knot;
    private final Grounds grounds;
    private final Words words;

    /**
     * @param knot by whose name it was chosen what knots leave
     */
    ExplainStrength(RigAnswer answer, Optional<Knot> knot, Grounds grounds, Words words) {
        this.answer = answer;
        this.knot = knot;
        this.grounds = grounds;
        this.words = words;
    }

    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        answer.safety().forEach(part -> figures.add(part(part)));
        knotShare().ifPresent(figures::add);
        return figures;
    }

    private Figure part(PartSafety part) {
        List<String> how = new ArrayList<>();
        chain(part, how);
        how.add(times(part, part.steady(), words.say("why.safety.at_rest")));
        how.add(times(part, part.afterLoss(), words.say("why.safety.after_loss")));
        if (!part.strength().notes().isEmpty()) {
            how.add(words.say(
                    "why.safety.note", String.join(", ", part.strength().notes())));
        }
        List<Ground> rests = part.kind() == PartSafety.Kind.STRAND
                ? grounds.atRest(Kind.SWAY, Kind.ROPE, Kind.CAPTURED, Kind.FRICTION, Kind.STRAND_STRENGTH, Kind.KNOT)
                : grounds.atRest(Kind.SWAY, Kind.ROPE, Kind.CAPTURED, Kind.FRICTION, Kind.STRENGTHS);
        return new Figure(
                Topic.STRENGTH,
                words.say("why.safety", part.part()),
                value(part),
                how,
                rests,
                words.say("why.safety.source"),
                words.say("why.safety.not"));
    }

    private String value(PartSafety part) {
        String steady = printed(part, part.steady());
        String afterLoss = printed(part, part.afterLoss());
        return steady.equals(afterLoss) && part.steady().ratio().isEmpty()
                ? steady
                : words.say("why.safety.value", steady, afterLoss);
    }

    /** From the strength as stated to what is left, one factor after the other, each with its source. */
    private void chain(PartSafety part, List<String> how) {
        PartStrength strength = part.strength();
        Optional<Force> left = strength.left();
        if (strength.base().isEmpty() || left.isEmpty()) {
            how.add(words.say("why.safety.unknown", strength.why()));
            return;
        }
        String base = base(part, strength.base().get());
        if (strength.factors().isEmpty()) {
            how.add(words.say("why.safety.base", base));
            return;
        }
        String product = strength.factors().stream()
                .map(factor -> words.say("why.safety.factor", words.plain(factor.nominal()), factor.name()))
                .collect(Collectors.joining(" "));
        how.add(words.say("why.safety.chain", base, product, words.force(left.get())));
        strength.factors().forEach(factor -> how.add(words.say("why.safety.because", factor.print())));
        if (strength.isRange()) {
            how.add(words.say(
                    "why.safety.range",
                    words.force(strength.low().orElseThrow()),
                    words.force(strength.high().orElseThrow())));
        }
    }

    /** What was stated: of a strand that lies in parallel, the strength of one and how many there are. */
    private String base(PartSafety part, Force all) {
        Optional<Force> one = answer.input().rig().strandStrength().filter(known -> part.strand());
        return one.map(strand -> words.say(
                        "why.safety.strands",
                        Math.round(all.newtons() / strand.newtons()),
                        words.force(strand),
                        words.force(all)))
                .orElseGet(() -> words.force(all));
    }

    private String times(PartSafety part, PartSafety.Times times, String when) {
        Optional<Force> left = part.strength().left();
        if (times.ratio().isEmpty() || times.force().isEmpty() || left.isEmpty()) {
            return times.force()
                    .map(force -> words.say("why.safety.times.no_ratio", when, words.force(force)))
                    .orElseGet(() -> words.say("why.safety.times.none", when, printed(part, times)));
        }
        double counted = left.get().inKilonewtons() / times.ratio().getAsDouble();
        double borne = times.force().get().inKilonewtons();
        String force = words.force(times.force().get());
        return words.say(
                "why.safety.times",
                when,
                words.force(left.get()),
                counted > borne * COUNTS_AS_MORE
                        ? words.say("why.safety.counts_as", force, words.kilonewtons(counted))
                        : force,
                times.why(),
                times.print());
    }

    private String printed(PartSafety part, PartSafety.Times times) {
        if (times.ratio().isEmpty()) {
            return words.say(times.idle() ? "rig.safety.none" : "rig.safety.unknown", times.why());
        }
        return knot.filter(known -> part.strand())
                .map(known -> words.say("rig.safety.times.range", times.print(), times.printRange(known)))
                .orElseGet(() -> words.say("rig.safety.times", times.print()));
    }

    private Optional<Figure> knotShare() {
        if (answer.input().rig().knotEfficiency().isEmpty()) {
            return Optional.empty();
        }
        double share = answer.input().rig().knotEfficiency().getAsDouble();
        return Optional.of(new Figure(
                Topic.STRENGTH,
                words.say("why.knot"),
                knot.map(known -> words.say(
                                "why.knot.value",
                                words.percent(share),
                                words.percent(known.low().left()),
                                words.percent(known.high().left())))
                        .orElseGet(() -> words.percent(share)),
                List.of(words.say("why.knot.how")),
                grounds.of(Kind.KNOT),
                knot.map(known -> words.say(
                                "why.knot.source",
                                words.say(known.key()),
                                words.say(known.nominal().source().key()),
                                words.say(known.low().source().key()),
                                words.say(known.high().source().key())))
                        .orElseGet(() -> words.say("why.stated")),
                words.say("why.knot.not")));
    }
}
