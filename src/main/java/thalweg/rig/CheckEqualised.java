package thalweg.rig;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;

/**
 * Judges the letter E of the checklist: how near the points come to equal shares, at the aim and over the sector.
 *
 * <p>An equal part is one over the number of points. The lines are our choice, as no standard draws any: for two points
 * they stand at shares of 40 to 60 % and of 25 to 75 %.
 */
final class CheckEqualised {

    /** Every share within this distance of an equal part, in equal parts, is good [-]; our choice. */
    static final double GOOD = 0.2;

    /** Beyond this distance of an equal part, in equal parts, it is poor [-]; our choice. */
    static final double POOR = 0.5;

    /** Up to this distance of an equal part, in equal parts, nobody sees a difference [-]. */
    private static final double EVEN = 0.005;

    private CheckEqualised() {}

    static LetterCheck of(RigState steady, RigSector sector, Optional<FrictionRange> friction) {
        int count = steady.points().size();
        if (count == 1) {
            String only = steady.points().get(0).point();
            return new LetterCheck(
                    CheckLetter.E,
                    RigVerdict.UNKNOWN,
                    OptionalDouble.of(1),
                    Sentence.of(
                            "{0} is the only point and bears the whole load, so there is nothing to equalise.", only));
        }
        RigState worst = sector.directions().stream()
                .max(Comparator.comparingDouble(CheckEqualised::comparable)
                        .thenComparingDouble(state -> -fromAim(state, steady)))
                .orElseThrow();
        double unevenness = unevenness(worst);
        Sentence why = Sentence.of(
                "At the aim {0}; most uneven with the load at {1}°, where {2}.",
                mostAndLeast(steady), Figures.fixed(worst.direction().degrees(), 1), mostAndLeast(worst));
        if (friction.isEmpty()) {
            return new LetterCheck(
                    CheckLetter.E,
                    verdict(unevenness),
                    OptionalDouble.of(most(worst).share()),
                    Sentence.of("{0} {1}", why, line(count)));
        }
        return withFriction(
                friction.get(),
                worst,
                unevenness < EVEN
                        ? Sentence.of("Without friction all points carry alike.")
                        : Sentence.of("Without friction: {0}", why));
    }

    /** Shares that only slide to be equal are judged by what friction may leave of that. */
    private static LetterCheck withFriction(FrictionRange friction, RigState worst, Sentence why) {
        double unevenness = unevenness(worst);
        double share = most(worst).share();
        if (!friction.known()) {
            RigVerdict verdict = unevenness > POOR ? RigVerdict.POOR : RigVerdict.UNKNOWN;
            return new LetterCheck(
                    CheckLetter.E, verdict, OptionalDouble.of(share), Sentence.of("{0} {1}", why, friction.saying()));
        }
        int count = friction.shares().size();
        for (ShareRange range : friction.shares()) {
            unevenness = Math.max(unevenness, Math.max(range.most() * count - 1, 1 - range.least() * count));
            share = Math.max(share, range.most());
        }
        Sentence ranges = Sentence.joined(
                ", ",
                friction.shares().stream()
                        .map(range -> Sentence.of(
                                "{0} {1} to {2}",
                                range.point(), Figures.percent(range.least()), Figures.percent(range.most())))
                        .toList());
        return new LetterCheck(
                CheckLetter.E,
                verdict(unevenness),
                OptionalDouble.of(share),
                Sentence.of(
                        "{0} Friction at the master may hold it at other shares, at the aim: {1}. {2}",
                        why, ranges, line(count)));
    }

    private static RigVerdict verdict(double unevenness) {
        return unevenness <= GOOD ? RigVerdict.GOOD : unevenness <= POOR ? RigVerdict.WATCH : RigVerdict.POOR;
    }

    /** So that of two directions that differ by rounding only, the same one is named everywhere. */
    private static double comparable(RigState state) {
        return Math.rint(unevenness(state) * 1e9);
    }

    /** How far the share that is farthest from an equal part is from it, in equal parts [-]. */
    private static double unevenness(RigState state) {
        int count = state.points().size();
        return state.points().stream()
                .mapToDouble(point -> Math.abs(point.share() * count - 1))
                .max()
                .orElseThrow();
    }

    private static double fromAim(RigState state, RigState steady) {
        return Math.abs(state.direction().degrees() - steady.direction().degrees());
    }

    private static PointForce most(RigState state) {
        return state.points().stream()
                .max(Comparator.comparingDouble(PointForce::share))
                .orElseThrow();
    }

    private static Sentence mostAndLeast(RigState state) {
        List<PointForce> sorted = state.points().stream()
                .sorted(Comparator.comparingDouble(PointForce::share).reversed())
                .toList();
        PointForce most = sorted.get(0);
        PointForce least = sorted.get(sorted.size() - 1);
        return least.share() < Analyze.LOADED
                ? Sentence.of(
                        "{0} carries {1} and {2} hangs slack",
                        most.point(), Figures.percent(most.share()), least.point())
                : Sentence.of(
                        "{0} carries {1} and {2} {3}",
                        most.point(), Figures.percent(most.share()), least.point(), Figures.percent(least.share()));
    }

    private static Sentence line(int count) {
        return Sentence.of(
                "An equal part is {0}; our own lines call {1} to {2} good and {3} to {4} still fair.",
                Figures.percent(1.0 / count),
                Figures.percent((1 - GOOD) / count),
                Figures.percent((1 + GOOD) / count),
                Figures.percent((1 - POOR) / count),
                Figures.percent((1 + POOR) / count));
    }
}
