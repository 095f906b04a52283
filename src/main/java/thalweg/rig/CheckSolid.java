package thalweg.rig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import thalweg.fault.Sentence;

/**
 * Judges the letter S of the checklist, as far as strengths are known, by {@link PartStrength}: how many times each point
 * would hold the whole load alone, or the largest steady force on it over the sector, with what friction may add, where
 * that is more. It is no look at the rock.
 */
final class CheckSolid {

    /** So many times is called good [-]; our choice, near a ratio of 10 that rescue practice names (from memory). */
    static final double GOOD = 10;

    /** Below so many times it is poor [-]; our choice, as a bounce or uneven tying can take that up. */
    static final double POOR = 3;

    private CheckSolid() {}

    static LetterCheck of(RigInput input, RigSector sector, FrictionAllowance allowance) {
        Optional<RigPoint> weakest = input.points().stream()
                .filter(point -> input.strengthOf(point).left().isPresent())
                .min(Comparator.comparingDouble(point -> ratio(input, sector, allowance, point)));
        double least =
                weakest.map(point -> ratio(input, sector, allowance, point)).orElse(Double.POSITIVE_INFINITY);
        OptionalDouble figure = weakest.isPresent() ? OptionalDouble.of(least) : OptionalDouble.empty();
        List<Sentence> said = new ArrayList<>();
        weakest.ifPresent(point -> said.add(
                input.points().size() > 1
                        ? Sentence.of(
                                "{0} is {1} to hold {2} times the larger of the load and its own largest steady force,"
                                        + " the least of those stated.",
                                point.name(),
                                Sentence.word(input.strengthOf(point).believed()),
                                Figures.times(least))
                        : Sentence.of(
                                "{0} is {1} to hold {2} times the larger of the load and its own largest steady force.",
                                point.name(),
                                Sentence.word(input.strengthOf(point).believed()),
                                Figures.times(least))));
        List<String> unknown = input.unknownStrengths();
        String doubted = input.points().stream()
                .filter(point -> point.holdsAlone().equals(Optional.of(false)))
                .map(RigPoint::name)
                .collect(Collectors.joining(", "));
        if (!doubted.isEmpty()) {
            said.add(Sentence.of("Not believed to hold the load alone: {0}.", doubted));
        }
        RigVerdict verdict;
        if (least < POOR) {
            verdict = RigVerdict.POOR;
            said.add(Sentence.of("Our own line for poor is below {0} times.", Figures.fixed(POOR, 0)));
        } else if (!unknown.isEmpty()) {
            verdict = RigVerdict.UNKNOWN;
            said.add(Sentence.of(
                    "Not known: the strength of {0}.",
                    Figures.said(unknown.stream().map(Sentence::plain).toList())));
        } else {
            verdict = least >= GOOD && doubted.isEmpty() ? RigVerdict.GOOD : RigVerdict.WATCH;
            said.add(Sentence.of(
                    "Our own line for good is {0} times. A stated strength is no look at the rock.",
                    Figures.fixed(GOOD, 0)));
        }
        return new LetterCheck(CheckLetter.S, verdict, figure, Sentence.joined(" ", said));
    }

    private static double ratio(RigInput input, RigSector sector, FrictionAllowance allowance, RigPoint point) {
        double weight = input.load().weight().inKilonewtons();
        double alone = sector.directions().stream()
                .mapToDouble(state ->
                        point.counted(input.load().direction(state.direction()).times(weight)))
                .max()
                .orElseThrow();
        double largest = Math.max(
                alone, allowance.counted(sector.countedOn(point.name())).inKilonewtons());
        return input.strengthOf(point).left().orElseThrow().inKilonewtons() / largest;
    }
}
