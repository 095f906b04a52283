package thalweg.rig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import thalweg.fault.Sentence;
import thalweg.units.Angle;
import thalweg.units.Force;

/** Holds what every point, every strand and every connector is taken to hold against the largest forces on it. */
final class FindSafety {

    private static final Sentence BEARS_NOTHING = Sentence.of("it bears nothing in any direction of the load");
    private static final Sentence BEARS_NOTHING_LATER =
            Sentence.of("it bears nothing after any loss that leaves something to hang on");

    private final RigInput input;
    private final List<PointLoss> losses;
    private final FrictionAllowance allowance;
    private final double bears;

    private FindSafety(RigInput input, List<PointLoss> losses, FrictionAllowance allowance) {
        this.input = input;
        this.losses = losses;
        this.allowance = allowance;
        this.bears = Analyze.LOADED * input.load().weight().inKilonewtons();
    }

    /**
     * The hardest pull in a strand anywhere in the sector.
     *
     * @param label of the strand
     * @param count of its parallel strands
     * @param tension in one of them
     * @param direction of the load at which it happens
     */
    record WorstTension(String label, int count, Force tension, Angle direction) {

        /** This or another of the same name; this where both are alike. */
        WorstTension harder(WorstTension other) {
            return other.tension().compareTo(tension) > 0 ? other : this;
        }
    }

    /**
     * A force on a part.
     *
     * @param force on it
     * @param counted as it counts against its strength
     */
    private record Borne(Force force, Force counted) {

        static Borne of(Force force) {
            return new Borne(force, force);
        }

        Sentence at(Sentence where) {
            return counted.compareTo(force) > 0 ? Sentence.of("{0}, its pull along its axis counted", where) : where;
        }
    }

    /** A peak on a part after one loss; empty where the motion could not be followed. */
    private record AfterLoss(String lost, Optional<Borne> peak, boolean rising) {

        boolean known() {
            return peak.isPresent() && !rising;
        }

        double counted() {
            return peak.orElseThrow().counted().inKilonewtons();
        }
    }

    /**
     * Every point in the order of the input, then every strand in the order in which they are laid, then the connectors that
     * are stated.
     *
     * @param strands the hardest pull in each
     * @param allowance what friction may add; for a strand, the most that it may add to a point
     */
    static List<PartSafety> of(
            RigInput input,
            RigSector sector,
            List<WorstTension> strands,
            List<PointLoss> losses,
            FrictionAllowance allowance) {
        FindSafety find = new FindSafety(input, losses, allowance);
        List<PartSafety> parts = new ArrayList<>();
        input.points().forEach(point -> parts.add(find.point(point, sector)));
        strands.forEach(worst -> parts.add(find.strand(worst)));
        input.points().forEach(point -> find.connector(point, sector).ifPresent(parts::add));
        find.masterConnector().ifPresent(parts::add);
        return parts;
    }

    private PartSafety point(RigPoint point, RigSector sector) {
        PartStrength strength = input.strengthOf(point);
        CountedForce worst = sector.countedOn(point.name());
        double byFriction = allowance.times(point.name());
        Borne hardest = new Borne(new Force(worst.force().newtons() * byFriction), allowance.counted(worst));
        List<AfterLoss> after = after(
                loss -> !loss.point().equals(point.name()),
                peaks -> peaks.on(point.name())
                        .map(peak ->
                                new Borne(peak, peaks.countedOn(point.name()).orElse(peak))));
        return new PartSafety(
                point.name(),
                PartSafety.Kind.POINT,
                strength,
                steady(strength, hardest, worst.direction(), byFriction),
                afterLoss(strength, after));
    }

    private PartSafety strand(WorstTension worst) {
        PartStrength strength = input.strengthOfStrands(worst.label(), worst.count());
        Borne hardest = Borne.of(new Force(worst.tension().newtons() * worst.count() * allowance.most()));
        List<AfterLoss> after = after(loss -> isLeft(worst.label(), loss), peaks -> in(peaks, worst));
        return new PartSafety(
                worst.label(),
                PartSafety.Kind.STRAND,
                strength,
                steady(strength, hardest, worst.direction(), allowance.most()),
                afterLoss(strength, after));
    }

    /** The connector in a point bears what the point bears, whatever the direction. */
    private Optional<PartSafety> connector(RigPoint point, RigSector sector) {
        return input.connectorAt(point).map(strength -> {
            WorstForce worst = sector.worstOf(point.name());
            double byFriction = allowance.times(point.name());
            List<AfterLoss> after = after(
                    loss -> !loss.point().equals(point.name()),
                    peaks -> peaks.on(point.name()).map(Borne::of));
            return new PartSafety(
                    RigInput.connectorLabel(point),
                    PartSafety.Kind.CONNECTOR,
                    strength,
                    steady(strength, Borne.of(allowance.largest(worst)), worst.direction(), byFriction),
                    afterLoss(strength, after));
        });
    }

    /** The connector at the master bears the load at rest, and after a loss what holds the master all together. */
    private Optional<PartSafety> masterConnector() {
        return input.masterConnector()
                .map(strength -> new PartSafety(
                        RigInput.MASTER_CONNECTOR,
                        PartSafety.Kind.CONNECTOR,
                        strength,
                        held(strength, Borne.of(input.load().weight()), Sentence.of("under the whole load")),
                        afterLoss(strength, after(loss -> true, peaks -> Optional.of(Borne.of(peaks.held()))))));
    }

    private PartSafety.Times steady(PartStrength strength, Borne largest, Angle direction, double byFriction) {
        if (largest.force().inKilonewtons() < bears) {
            return PartSafety.Times.none(BEARS_NOTHING);
        }
        Sentence where = byFriction > 1
                ? Sentence.of("with the load toward {0}, friction allowed for", direction.print())
                : Sentence.of("with the load toward {0}", direction.print());
        return held(strength, largest, where);
    }

    private static PartSafety.Times held(PartStrength strength, Borne largest, Sentence where) {
        return strength.left()
                .map(left -> PartSafety.Times.known(
                        left.inKilonewtons() / largest.counted().inKilonewtons(), largest.force(), largest.at(where)))
                .orElseGet(() -> PartSafety.Times.unknown(Optional.of(largest.force()), strength.saying()));
    }

    private static boolean isLeft(String strand, PointLoss loss) {
        return loss.aftermath().stream()
                .flatMap(left -> left.rest().strands().stream())
                .anyMatch(pull -> pull.label().equals(strand));
    }

    /**
     * What each loss that leaves something puts on a part; where the part bears nothing after it, that loss is left out.
     *
     * @param survives whether the part is still there after a loss
     * @param pick its peak among those of one loss
     */
    private List<AfterLoss> after(Predicate<PointLoss> survives, Function<PeakForces, Optional<Borne>> pick) {
        List<AfterLoss> after = new ArrayList<>();
        for (PointLoss loss : losses.stream().filter(survives).toList()) {
            loss.aftermath().ifPresent(left -> {
                if (left.peaks().isEmpty()) {
                    after.add(new AfterLoss(loss.point(), Optional.empty(), false));
                    return;
                }
                boolean rising = left.peaks().get().rising();
                pick.apply(left.peaks().get())
                        .filter(peak -> peak.force().inKilonewtons() >= bears)
                        .ifPresent(peak -> after.add(new AfterLoss(loss.point(), Optional.of(peak), rising)));
            });
        }
        return after;
    }

    private static Optional<Borne> in(PeakForces peaks, WorstTension strand) {
        return peaks.strands().stream()
                .filter(peak -> peak.label().equals(strand.label()))
                .map(peak -> Borne.of(new Force(peak.tension().newtons() * strand.count())))
                .findFirst();
    }

    private static PartSafety.Times afterLoss(PartStrength strength, List<AfterLoss> after) {
        Optional<AfterLoss> hardest = after.stream()
                .filter(one -> one.peak().isPresent())
                .max(Comparator.comparingDouble(AfterLoss::counted));
        Optional<AfterLoss> doubt = after.stream().filter(one -> !one.known()).findFirst();
        if (after.isEmpty()) {
            return PartSafety.Times.none(BEARS_NOTHING_LATER);
        }
        if (doubt.isPresent()) {
            String lost = doubt.get().lost();
            Sentence why = doubt.get().rising()
                    ? Sentence.of("a force still rises at the end of the 2 s that are followed when {0} goes", lost)
                    : Sentence.of("the motion is too fast to be followed when {0} goes", lost);
            return PartSafety.Times.unknown(Optional.empty(), atMost(why, strength, hardest));
        }
        AfterLoss known = hardest.orElseThrow();
        return held(strength, known.peak().orElseThrow(), Sentence.of("when {0} goes", known.lost()));
    }

    /** What the ratio cannot be above, from the peaks as far as they are known. */
    private static Sentence atMost(Sentence why, PartStrength strength, Optional<AfterLoss> hardest) {
        if (strength.left().isEmpty() || hardest.isEmpty()) {
            return why;
        }
        double most = strength.left().get().inKilonewtons() / hardest.get().counted();
        return Sentence.of("{0}; it is {1} at most", why, Figures.times(most));
    }
}
