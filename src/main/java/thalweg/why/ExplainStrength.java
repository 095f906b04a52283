package thalweg.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.fault.Sentence;
import thalweg.rig.PartSafety;
import thalweg.rig.PartStrength;
import thalweg.rig.RigAnswer;
import thalweg.sheet.SafetyWords;
import thalweg.sheet.StrengthWords;
import thalweg.units.Force;
import thalweg.why.Figure.Topic;
import thalweg.why.Ground.Kind;

/** Explains how many times each part would hold what it bears: the chain from its strength as stated, and the force. */
final class ExplainStrength {

    /** From here on a force that counts as a larger one is told as both [-]. */
    private static final double COUNTS_AS_MORE = 1.001;

    private final RigAnswer answer;
    private final Grounds grounds;
    private final Words words;
    private final SafetyWords safety;

    ExplainStrength(RigAnswer answer, Grounds grounds, Words words) {
        this.answer = answer;
        this.grounds = grounds;
        this.words = words;
        this.safety = new SafetyWords(words.phrases());
    }

    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        answer.safety().forEach(part -> figures.add(part(part)));
        strengths().ifPresent(figures::add);
        return figures;
    }

    private Figure part(PartSafety part) {
        List<String> how = new ArrayList<>();
        chain(part, how);
        how.add(times(part, part.steady(), words.say("why.safety.at_rest")));
        how.add(times(part, part.afterLoss(), words.say("why.safety.after_loss")));
        if (!part.strength().notes().isEmpty()) {
            how.add(words.say(
                    "why.safety.note", Sentence.joined(", ", part.strength().notes())));
        }
        List<Ground> rests = part.kind() == PartSafety.Kind.STRAND
                ? grounds.atRest(Kind.SWAY, Kind.ROPE, Kind.CAPTURED, Kind.FRICTION, Kind.STRAND_STRENGTH, Kind.KNOT)
                : grounds.atRest(Kind.SWAY, Kind.ROPE, Kind.CAPTURED, Kind.FRICTION, Kind.STRENGTHS);
        return new Figure(
                Topic.STRENGTH,
                words.say("why.safety", part.called()),
                value(part),
                how,
                rests,
                words.say("why.safety.source"),
                words.say("why.safety.not"));
    }

    private String value(PartSafety part) {
        String steady = safety.ratio(part, part.steady());
        String afterLoss = safety.ratio(part, part.afterLoss());
        return steady.equals(afterLoss) && part.steady().ratio().isEmpty()
                ? steady
                : words.say("why.safety.value", steady, afterLoss);
    }

    /** From the strength as stated to what is left, one factor after the other, each with its source. */
    private void chain(PartSafety part, List<String> how) {
        PartStrength strength = part.strength();
        Optional<Force> left = strength.left();
        if (strength.base().isEmpty() || left.isEmpty()) {
            how.add(words.say("why.safety.unknown", strength.saying()));
            return;
        }
        String base = base(part, strength.base().get());
        if (strength.factors().isEmpty()) {
            how.add(words.say("why.safety.base", base));
            return;
        }
        String product = strength.factors().stream()
                .map(factor ->
                        words.say("why.safety.factor", words.plain(factor.nominal()), Sentence.word(factor.name())))
                .collect(Collectors.joining(" "));
        how.add(words.say("why.safety.chain", base, product, words.force(left.get())));
        strength.factors().forEach(factor -> how.add(words.say("why.safety.because", factor.said())));
        if (strength.isRange()) {
            how.add(words.say(
                    "why.safety.range",
                    words.force(strength.low().orElseThrow()),
                    words.force(strength.high().orElseThrow())));
        }
    }

    /** What was stated: of strands that lie in parallel, the strength of one and how many there are. */
    private String base(PartSafety part, Force all) {
        return answer.steady().strands().stream()
                .filter(strand -> part.strand() && strand.label().equals(part.part()))
                .findFirst()
                .map(strand -> words.say(
                        "why.safety.strands",
                        words.force(all),
                        strand.count(),
                        words.force(new Force(all.newtons() / strand.count()))))
                .orElseGet(() -> words.force(all));
    }

    private String times(PartSafety part, PartSafety.Times times, String when) {
        Optional<Force> left = part.strength().left();
        if (times.ratio().isEmpty() || times.force().isEmpty() || left.isEmpty()) {
            return times.force()
                    .map(force -> words.say("why.safety.times.no_ratio", when, words.force(force)))
                    .orElseGet(() -> words.say("why.safety.times.none", when, safety.ratio(part, times)));
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
                times.saying(),
                times.print());
    }

    /** What stands on record of all strengths together: bolts of two strengths, chains, what is not allowed for. */
    private Optional<Figure> strengths() {
        List<String> lines = new StrengthWords(words.phrases(), words.units()).lines(answer);
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        String value = answer.safety().stream()
                .map(part -> part.part() + " "
                        + part.strength().left().map(words::force).orElse(words.say("unknown")))
                .collect(Collectors.joining(", "));
        return Optional.of(new Figure(
                Topic.STRENGTH,
                words.say("why.strengths"),
                value,
                lines,
                grounds.of(Kind.STRENGTHS, Kind.STRAND_STRENGTH, Kind.KNOT, Kind.SLINGS),
                words.say("why.strengths.source"),
                words.say("why.strengths.not")));
    }
}
