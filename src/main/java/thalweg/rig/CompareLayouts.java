package thalweg.rig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Sets the layouts side by side on the same points, asks the two questions that decide between them, and says which one
 * the figures speak for.
 *
 * <p>A layout that does not hold the loss of every point, or is known to be too weak for it, is passed over where there is
 * another; then one that a single cut lets go; then one that drops farther than {@link CheckExtension#DESIGN_LIMIT_METRES}.
 * Of the rest, what matters most decides; where nobody said, the layout that spares the weakest point most, unless one
 * that extends less comes within {@link #AS_GOOD} of it. That order and the lines are our choice; no standard has one.
 */
public final class CompareLayouts {

    /** Ratios that are this near to each other decide nothing [-]; our choice, smaller than what a knot is off by. */
    static final double AS_GOOD = 0.85;

    /** Points whose strengths are within this ratio of each other count as equal [-]; our choice. */
    static final double LIKE = 1.25;

    /** A point that is stated to hold the load so many times would hold it alone [-]; our choice, as for the letter S. */
    static final double ALONE = CheckSolid.POOR;

    /** A load that sways no farther to either side stays in one direction [°]; our choice. */
    static final double ONE_DIRECTION_DEGREES = 5;

    /** Drops that are this near to each other are the same [m]. */
    private static final double SAME_DROP_METRES = 0.01;

    /** The sways that are tried to see when another layout would come out ahead [°]. */
    private static final int SWAY_STEP_DEGREES = 5;

    private static final int MOST_SWAY_DEGREES = 60;

    private final RigInput basis;
    private final RigPriority priority;
    private final LayOutAll lay;
    private final List<LaidOut> layouts;

    private CompareLayouts(RigInput basis, RigPriority priority) {
        this.basis = basis;
        this.priority = priority;
        this.lay = new LayOutAll(basis);
        this.layouts = lay.all();
    }

    /**
     * The comparison.
     *
     * @param basis a rig of any layout; points, load, focus and material are taken from it
     * @param priority what matters most
     */
    public static RigComparison of(RigInput basis, RigPriority priority) {
        CompareLayouts compare = new CompareLayouts(basis, priority);
        List<RigQuestion> questions = List.of(compare.points(), compare.direction());
        return new RigComparison(basis, priority, compare.layouts, questions, compare.recommended());
    }

    private RigQuestion points() {
        String asked = "Are the points of equal strength, and would each hold the whole load alone?";
        if (basis.points().size() == 1) {
            return new RigQuestion(asked, Optional.empty(), "There is one point, and nothing to choose between.");
        }
        List<String> doubted = named(basis.points().stream()
                .filter(point -> point.holdsAlone().equals(Optional.of(false)))
                .toList());
        if (!doubted.isEmpty()) {
            return new RigQuestion(
                    asked, Optional.of(false), "Not believed to hold it alone: " + Figures.listed(doubted) + ".");
        }
        List<String> unknown = basis.unknownStrengths();
        if (!unknown.isEmpty()) {
            return new RigQuestion(
                    asked, Optional.empty(), "Not known: the strength of " + Figures.listed(unknown) + ".");
        }
        RigPoint weakest = basis.points().stream()
                .min(Comparator.comparingDouble(this::strength))
                .orElseThrow();
        RigPoint strongest = basis.points().stream()
                .filter(point -> strength(point) > strength(weakest))
                .max(Comparator.comparingDouble(this::strength))
                .orElse(weakest);
        double apart = strength(strongest) / strength(weakest);
        double alone = strength(weakest) / basis.load().weight().inKilonewtons();
        boolean yes = apart <= LIKE && alone >= ALONE;
        return new RigQuestion(
                asked,
                Optional.of(yes),
                (strongest.equals(weakest)
                                ? "All are " + basis.believed() + " to be equally strong"
                                : "By " + basis.believed() + " strengths " + strongest.name() + " holds "
                                        + Figures.times(apart) + " times what " + weakest.name() + " does")
                        + ", and " + weakest.name() + " holds the load " + Figures.times(alone)
                        + " times alone; our own lines are " + Figures.times(LIKE) + " and " + Figures.fixed(ALONE, 0)
                        + ". No figure is a look at the rock.");
    }

    private RigQuestion direction() {
        String asked = "Does the load stay in one direction?";
        double sway = basis.load().sway().degrees();
        if (basis.redirect().isPresent()) {
            return new RigQuestion(
                    asked,
                    Optional.of(true),
                    "At the master it does, as long as the redirect holds: the rope leads to it, and the sway is beyond it.");
        }
        if (basis.assumed().contains("sway_deg")) {
            return new RigQuestion(
                    asked, Optional.empty(), "Nobody stated how far the load sways; it is taken not to.");
        }
        return new RigQuestion(
                asked,
                Optional.of(sway <= ONE_DIRECTION_DEGREES),
                "It is stated to sway " + Figures.degrees(sway) + " to either side; our own line is "
                        + Figures.degrees(ONE_DIRECTION_DEGREES) + ".");
    }

    private RigRecommendation recommended() {
        if (basis.points().size() == 1) {
            return new RigRecommendation(
                    Optional.empty(),
                    "One point leaves no choice of layout; what it needs is a second point.",
                    List.of(),
                    List.of());
        }
        List<LaidOut> left = passedOn();
        Optional<LaidOut> chosen = chosen(left, priority);
        if (chosen.isEmpty()) {
            return new RigRecommendation(
                    Optional.empty(),
                    "No layout on these points is known to hold the loss of one of them; other points are needed.",
                    List.of(),
                    List.of());
        }
        LaidOut choice = chosen.get();
        return new RigRecommendation(
                chosen,
                "The figures speak for " + choice.label() + reasonFor() + ".",
                restsOn(choice),
                wouldChange(choice, left));
    }

    private String reasonFor() {
        return switch (priority) {
            case UNSTATED -> "";
            case EQUAL_SHARES -> ", where equal shares matter most";
            case LITTLE_EXTENSION -> ", where little extension matters most";
        };
    }

    /** The layouts that are not passed over. */
    private List<LaidOut> passedOn() {
        List<LaidOut> held = layouts.stream()
                .filter(one -> one.answer().isPresent() && one.holdsEveryLoss() && !one.knownTooWeak())
                .filter(one -> !one.focusMoved() || isWorthMoving(one))
                .toList();
        List<LaidOut> uncut = orAll(held.stream().filter(LaidOut::holdsEveryCut).toList(), held);
        return orAll(
                uncut.stream()
                        .filter(one -> one.farthestDrop() <= CheckExtension.DESIGN_LIMIT_METRES)
                        .toList(),
                uncut);
    }

    /** Whether the weakest point gains clearly from the other focus; a little is within what is not known anyhow. */
    private boolean isWorthMoving(LaidOut moved) {
        return layouts.stream()
                .filter(one -> one.kind() == moved.kind() && !one.focusMoved())
                .filter(one -> one.answer().isPresent())
                .allMatch(given -> spared(given) < AS_GOOD * spared(moved));
    }

    private static List<LaidOut> orAll(List<LaidOut> some, List<LaidOut> all) {
        return some.isEmpty() ? all : some;
    }

    private static Optional<LaidOut> chosen(List<LaidOut> left, RigPriority priority) {
        return switch (priority) {
            case EQUAL_SHARES -> left.stream().min(Comparator.comparingDouble(LaidOut::largestShare));
            case LITTLE_EXTENSION ->
                left.stream()
                        .min(Comparator.comparingDouble(CompareLayouts::dropInSteps)
                                .thenComparingDouble(one -> -spared(one)));
            case UNSTATED -> {
                double best =
                        left.stream().mapToDouble(CompareLayouts::spared).max().orElse(0);
                yield left.stream()
                        .filter(one -> spared(one) >= AS_GOOD * best)
                        .min(Comparator.comparingDouble(CompareLayouts::dropInSteps)
                                .thenComparingDouble(one -> -spared(one)));
            }
        };
    }

    private static double dropInSteps(LaidOut layout) {
        return Math.rint(layout.farthestDrop() / SAME_DROP_METRES);
    }

    /** How well the weakest point is spared: its ratio where all strengths are known, else by the hardest pull. */
    private static double spared(LaidOut layout) {
        OptionalDouble ratio = layout.leastRatio();
        return ratio.isPresent() ? ratio.getAsDouble() : 1 / layout.hardestPull();
    }

    private List<String> restsOn(LaidOut choice) {
        List<String> lines = new ArrayList<>();
        lines.add(figures(choice));
        layouts.stream()
                .filter(other -> !isSame(other, choice))
                .forEach(other -> lines.add(other.answer().isPresent() ? figures(other) : absent(other)));
        if (choice.leastRatio().isEmpty()) {
            lines.add("Strengths are not all known, so layouts are held against each other by the hardest pull alone.");
        }
        if (choice.answer()
                .orElseThrow()
                .friction()
                .filter(range -> !range.known())
                .isPresent()) {
            lines.add("What friction does to the shares over more than two points is not known; it is left out.");
        }
        return lines;
    }

    private static boolean isSame(LaidOut one, LaidOut other) {
        return one.kind() == other.kind() && one.focusMoved() == other.focusMoved();
    }

    private static String absent(LaidOut layout) {
        return sentence(layout.label()) + ": not possible here. " + layout.why();
    }

    private static String figures(LaidOut layout) {
        StringBuilder out = new StringBuilder(sentence(layout.label())).append(": ");
        OptionalDouble ratio = layout.leastRatio();
        if (ratio.isPresent()) {
            out.append("the weakest point is ")
                    .append(layout.believed())
                    .append(" to hold ")
                    .append(Figures.times(ratio.getAsDouble()))
                    .append(" times its hardest steady pull; ");
        }
        out.append("hardest pull on a point ")
                .append(Figures.fixed(layout.hardestPull(), 2))
                .append(" kN, friction allowed for; ");
        if (!layout.holdsEveryLoss()) {
            return out.append("the loss of a point loses everything.").toString();
        }
        out.append("drop when a point goes up to ").append(Figures.metres(layout.farthestDrop()));
        if (layout.farthestFall() > CheckExtension.FALL_METRES) {
            out.append(", ").append(Figures.metres(layout.farthestFall())).append(" of it in free fall");
        }
        if (!layout.holdsEveryCut()) {
            out.append("; one cut of a strand loses everything");
        }
        if (layout.knownTooWeak()) {
            out.append("; too weak for the model peak after a loss");
        }
        return out.append('.').toString();
    }

    private List<String> wouldChange(LaidOut choice, List<LaidOut> left) {
        List<String> lines = new ArrayList<>();
        if (priority == RigPriority.UNSTATED) {
            turningSway(choice).ifPresent(lines::add);
        }
        for (RigPriority other : RigPriority.values()) {
            Optional<LaidOut> then = chosen(left, other).filter(one -> !isSame(one, choice));
            if (other != priority && other != RigPriority.UNSTATED && then.isPresent()) {
                String matters = other == RigPriority.EQUAL_SHARES ? "equal shares" : "little extension";
                lines.add("If " + matters + " matter" + (other == RigPriority.EQUAL_SHARES ? "" : "s") + " most: "
                        + then.get().label() + ".");
            }
        }
        if (choice.leastRatio().isEmpty()) {
            lines.add("Strengths of the points, once known, may speak for another layout or another focus.");
        }
        if (basis.points().stream().anyMatch(point -> point.holdsAlone().isEmpty())) {
            lines.add("A point that nobody would trust with the whole load may.");
        }
        return lines;
    }

    /** From which sway on another of focused and limited would come out ahead, other things being equal. */
    private Optional<String> turningSway(LaidOut choice) {
        RigKind other = choice.kind() == RigKind.FOCUSED ? RigKind.LIMITED : RigKind.FOCUSED;
        boolean tellsApart = choice.kind() == RigKind.FOCUSED || choice.kind() == RigKind.LIMITED;
        if (!tellsApart || basis.points().size() != 2 || basis.redirect().isPresent()) {
            return Optional.empty();
        }
        double now = basis.load().sway().degrees();
        if (choice.kind() == RigKind.FOCUSED) {
            for (int sway = SWAY_STEP_DEGREES; sway <= MOST_SWAY_DEGREES; sway += SWAY_STEP_DEGREES) {
                if (sway > now && ahead(RigKind.LIMITED, choice, sway)) {
                    return Optional.of(
                            "If the load swayed " + sway + "° to either side or more: " + other.word() + ".");
                }
            }
            return Optional.empty();
        }
        int last = -1;
        for (int sway = 0; sway < now; sway += SWAY_STEP_DEGREES) {
            if (!ahead(RigKind.LIMITED, choice, sway)) {
                last = sway;
            }
        }
        return last < 0
                ? Optional.empty()
                : Optional.of("If the load swayed no more than " + last + "° to either side: " + other.word()
                        + ", which extends less.");
    }

    /** Whether a limited rig would spare the weakest point clearly better than a focused one at that sway [°]. */
    private boolean ahead(RigKind limited, LaidOut choice, int sway) {
        double focused = lay.rig(RigKind.FOCUSED, sway)
                .input()
                .map(input -> choice.kind() == RigKind.FOCUSED ? refocused(input, choice) : input)
                .map(CompareLayouts::sparedAtRest)
                .orElse(0.0);
        return lay.rig(limited, sway)
                .input()
                .map(CompareLayouts::sparedWithFriction)
                .filter(spared -> focused < AS_GOOD * spared)
                .isPresent();
    }

    private static RigInput refocused(RigInput input, LaidOut choice) {
        Vector3 focus = choice.answer().orElseThrow().input().rig().focus();
        return RigDraft.of(input)
                .withRig(SetupDraft.of(input).withFocus(focus))
                .check()
                .input()
                .orElse(input);
    }

    private static double sparedAtRest(RigInput input) {
        return spared(input, 1);
    }

    private static double sparedWithFriction(RigInput input) {
        RigState steady = new RestState(input).under(input.load().toward());
        return spared(input, new FrictionAllowance(steady, Optional.of(FindSideFriction.of(input))).most());
    }

    private static double spared(RigInput input, double more) {
        boolean known = input.unknownStrengths().isEmpty();
        return Analyze.counted(input).stream()
                .mapToDouble(worst -> {
                    double pull = worst.counted().inKilonewtons() * more;
                    return known ? strength(input, point(input, worst.point())) / pull : 1 / pull;
                })
                .min()
                .orElseThrow();
    }

    private static RigPoint point(RigInput input, String name) {
        return input.points().stream()
                .filter(point -> point.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private double strength(RigPoint point) {
        return strength(basis, point);
    }

    private static double strength(RigInput input, RigPoint point) {
        return input.strengthOf(point).left().orElseThrow().inKilonewtons();
    }

    private static List<String> named(List<RigPoint> points) {
        return points.stream().map(RigPoint::name).collect(Collectors.toList());
    }

    private static String sentence(String label) {
        return Character.toUpperCase(label.charAt(0)) + label.substring(1);
    }
}
