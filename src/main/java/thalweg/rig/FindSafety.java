package thalweg.rig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import thalweg.units.Angle;
import thalweg.units.Force;

/** Holds the strength of every point and every strand against the largest forces on it. */
final class FindSafety {

    private static final String BEARS_NOTHING = "it bears nothing in any direction of the load";
    private static final String BEARS_NOTHING_LATER =
            "it bears nothing after any loss that leaves something to hang on";

    private final RigInput input;
    private final double bears;

    private FindSafety(RigInput input) {
        this.input = input;
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

    /** A peak on a part after one loss; empty where the motion could not be followed. */
    private record AfterLoss(String lost, Optional<Double> peak, boolean rising) {

        boolean known() {
            return peak.isPresent() && !rising;
        }
    }

    /**
     * Every point in the order of the input, then every strand in the order in which they are laid.
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
        FindSafety find = new FindSafety(input);
        List<PartSafety> parts = new ArrayList<>();
        for (RigPoint point : input.points()) {
            WorstForce worst = sector.worstOf(point.name());
            PartStrength strength = input.strengthOf(point);
            List<AfterLoss> after =
                    find.after(losses, loss -> !loss.point().equals(point.name()), peaks -> peaks.on(point.name()));
            parts.add(new PartSafety(
                    point.name(),
                    false,
                    find.steady(strength, allowance.largest(worst), worst.direction(), allowance.times(point.name())),
                    find.afterLoss(strength, after)));
        }
        for (WorstTension worst : strands) {
            PartStrength strength = input.strengthOfStrands(worst.label(), worst.count());
            List<AfterLoss> after = find.after(losses, loss -> isLeft(worst.label(), loss), peaks -> in(peaks, worst));
            parts.add(new PartSafety(
                    worst.label(),
                    true,
                    find.steady(
                            strength,
                            new Force(worst.tension().newtons() * worst.count() * allowance.most()),
                            worst.direction(),
                            allowance.most()),
                    find.afterLoss(strength, after)));
        }
        return parts;
    }

    private PartSafety.Times steady(PartStrength strength, Force largest, Angle direction, double byFriction) {
        if (largest.inKilonewtons() < bears) {
            return PartSafety.Times.none(BEARS_NOTHING);
        }
        String friction = byFriction > 1 ? ", friction allowed for" : "";
        return held(strength, largest, "with the load toward " + direction.print() + friction);
    }

    private static PartSafety.Times held(PartStrength strength, Force largest, String where) {
        return strength.left()
                .map(left -> PartSafety.Times.known(left.inKilonewtons() / largest.inKilonewtons(), largest, where))
                .orElseGet(() -> PartSafety.Times.unknown(Optional.of(largest), strength.why()));
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
    private List<AfterLoss> after(
            List<PointLoss> losses, Predicate<PointLoss> survives, Function<PeakForces, Optional<Force>> pick) {
        List<AfterLoss> after = new ArrayList<>();
        for (PointLoss loss : losses.stream().filter(survives).toList()) {
            loss.aftermath().ifPresent(left -> {
                if (left.peaks().isEmpty()) {
                    after.add(new AfterLoss(loss.point(), Optional.empty(), false));
                    return;
                }
                boolean rising = left.peaks().get().rising();
                pick.apply(left.peaks().get())
                        .map(Force::inKilonewtons)
                        .filter(peak -> peak >= bears)
                        .ifPresent(peak -> after.add(new AfterLoss(loss.point(), Optional.of(peak), rising)));
            });
        }
        return after;
    }

    private static Optional<Force> in(PeakForces peaks, WorstTension strand) {
        return peaks.strands().stream()
                .filter(peak -> peak.label().equals(strand.label()))
                .map(peak -> new Force(peak.tension().newtons() * strand.count()))
                .findFirst();
    }

    private PartSafety.Times afterLoss(PartStrength strength, List<AfterLoss> after) {
        Optional<AfterLoss> hardest = after.stream()
                .filter(one -> one.peak().isPresent())
                .max(Comparator.comparingDouble(one -> one.peak().orElseThrow()));
        Optional<AfterLoss> doubt = after.stream().filter(one -> !one.known()).findFirst();
        if (after.isEmpty()) {
            return PartSafety.Times.none(BEARS_NOTHING_LATER);
        }
        if (doubt.isPresent()) {
            String why = doubt.get().rising()
                    ? "a force still rises at the end of the 2 s that are followed when "
                            + doubt.get().lost() + " goes"
                    : "the motion is too fast to be followed when "
                            + doubt.get().lost() + " goes";
            return PartSafety.Times.unknown(Optional.empty(), why + atMost(strength, hardest));
        }
        AfterLoss known = hardest.orElseThrow();
        return held(strength, Force.kilonewtons(known.peak().orElseThrow()), "when " + known.lost() + " goes");
    }

    /** What the ratio cannot be above, from the peaks as far as they are known. */
    private static String atMost(PartStrength strength, Optional<AfterLoss> hardest) {
        if (strength.left().isEmpty() || hardest.isEmpty()) {
            return "";
        }
        double most =
                strength.left().get().inKilonewtons() / hardest.get().peak().orElseThrow();
        return "; it is " + Figures.times(most) + " at most";
    }
}
