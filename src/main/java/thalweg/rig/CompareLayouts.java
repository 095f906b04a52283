package thalweg.rig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import thalweg.fault.Sentence;

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
        Sentence asked = Sentence.of("Are the points of equal strength, and would each hold the whole load alone?");
        if (basis.points().size() == 1) {
            return new RigQuestion(
                    asked, Optional.empty(), Sentence.of("There is one point, and nothing to choose between."));
        }
        List<String> doubted = named(basis.points().stream()
                .filter(point -> point.holdsAlone().equals(Optional.of(false)))
                .toList());
        if (!doubted.isEmpty()) {
            return new RigQuestion(
                    asked, Optional.of(false), Sentence.of("Not believed to hold it alone: {0}.", plain(doubted)));
        }
        List<String> unknown = basis.unknownStrengths();
        if (!unknown.isEmpty()) {
            return new RigQuestion(
                    asked, Optional.empty(), Sentence.of("Not known: the strength of {0}.", plain(unknown)));
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
                Sentence.of(
                        "{0}, and {1} holds the load {2} times alone; our own lines are {3} and {4}. No figure is a look at"
                                + " the rock.",
                        strongest.equals(weakest)
                                ? Sentence.of("All are {0} to be equally strong", Sentence.word(basis.believed()))
                                : Sentence.of(
                                        "By {0} strengths {1} holds {2} times what {3} does",
                                        Sentence.word(basis.believed()),
                                        strongest.name(),
                                        Figures.times(apart),
                                        weakest.name()),
                        weakest.name(),
                        Figures.times(alone),
                        Figures.times(LIKE),
                        Figures.fixed(ALONE, 0)));
    }

    private RigQuestion direction() {
        Sentence asked = Sentence.of("Does the load stay in one direction?");
        double sway = basis.load().sway().degrees();
        if (basis.redirect().isPresent()) {
            return new RigQuestion(
                    asked,
                    Optional.of(true),
                    Sentence.of(
                            "At the master it does, as long as the redirect holds: the rope leads to it, and the sway is"
                                    + " beyond it."));
        }
        if (basis.assumed().contains("sway_deg")) {
            return new RigQuestion(
                    asked, Optional.empty(), Sentence.of("Nobody stated how far the load sways; it is taken not to."));
        }
        return new RigQuestion(
                asked,
                Optional.of(sway <= ONE_DIRECTION_DEGREES),
                Sentence.of(
                        "It is stated to sway {0} to either side; our own line is {1}.",
                        Figures.degrees(sway), Figures.degrees(ONE_DIRECTION_DEGREES)));
    }

    private RigRecommendation recommended() {
        if (basis.points().size() == 1) {
            return new RigRecommendation(
                    Optional.empty(),
                    Sentence.of("One point leaves no choice of layout; what it needs is a second point."),
                    List.of(),
                    List.of());
        }
        List<LaidOut> left = passedOn();
        Optional<LaidOut> chosen = chosen(left, priority);
        if (chosen.isEmpty()) {
            return new RigRecommendation(
                    Optional.empty(),
                    Sentence.of("No layout on these points is known to hold the loss of one of them; other points are"
                            + " needed."),
                    List.of(),
                    List.of());
        }
        LaidOut choice = chosen.get();
        return new RigRecommendation(chosen, warned(speaksFor(choice)), restsOn(choice), wouldChange(choice, left));
    }

    /** What is not known of the points stands beside what is said, for nobody reads on who has an answer. */
    private Sentence warned(Sentence says) {
        List<String> unknown = basis.unknownStrengths();
        return unknown.isEmpty()
                ? says
                : Sentence.of(
                        "{0} But the strength of {1} is unknown, so nothing here says what holds.",
                        says, plain(unknown));
    }

    private Sentence speaksFor(LaidOut choice) {
        return switch (priority) {
            case UNSTATED -> Sentence.of("The figures speak for {0}.", choice.called());
            case EQUAL_SHARES ->
                Sentence.of("The figures speak for {0}, where equal shares matter most.", choice.called());
            case LITTLE_EXTENSION ->
                Sentence.of("The figures speak for {0}, where little extension matters most.", choice.called());
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

    private List<Sentence> restsOn(LaidOut choice) {
        List<Sentence> lines = new ArrayList<>();
        lines.add(LayoutFigures.of(choice));
        layouts.stream().filter(other -> !isSame(other, choice)).forEach(other -> lines.add(LayoutFigures.of(other)));
        if (choice.leastRatio().isEmpty()) {
            lines.add(Sentence.of(
                    "Strengths are not all known, so layouts are held against each other by the hardest pull alone."));
        }
        if (choice.answer()
                .orElseThrow()
                .friction()
                .filter(range -> !range.known())
                .isPresent()) {
            lines.add(Sentence.of(
                    "What friction does to the shares over more than two points is not known; it is left out."));
        }
        return lines;
    }

    private static boolean isSame(LaidOut one, LaidOut other) {
        return one.kind() == other.kind() && one.focusMoved() == other.focusMoved();
    }

    private List<Sentence> wouldChange(LaidOut choice, List<LaidOut> left) {
        List<Sentence> lines = new ArrayList<>();
        if (priority == RigPriority.UNSTATED) {
            turningSway(choice).ifPresent(lines::add);
        }
        for (RigPriority other : RigPriority.values()) {
            Optional<LaidOut> then = chosen(left, other).filter(one -> !isSame(one, choice));
            if (other != priority && other != RigPriority.UNSTATED && then.isPresent()) {
                Sentence instead = then.get().called();
                lines.add(
                        other == RigPriority.EQUAL_SHARES
                                ? Sentence.of("If equal shares matter most: {0}.", instead)
                                : Sentence.of("If little extension matters most: {0}.", instead));
            }
        }
        if (choice.leastRatio().isEmpty()) {
            lines.add(
                    Sentence.of("Strengths of the points, once known, may speak for another layout or another focus."));
        }
        if (basis.points().stream().anyMatch(point -> point.holdsAlone().isEmpty())) {
            lines.add(Sentence.of("A point that nobody would trust with the whole load may."));
        }
        return lines;
    }

    /** From which sway on another of focused and limited would come out ahead, other things being equal. */
    private Optional<Sentence> turningSway(LaidOut choice) {
        RigKind other = choice.kind() == RigKind.FOCUSED ? RigKind.LIMITED : RigKind.FOCUSED;
        boolean tellsApart = choice.kind() == RigKind.FOCUSED || choice.kind() == RigKind.LIMITED;
        if (!tellsApart || basis.points().size() != 2 || basis.redirect().isPresent()) {
            return Optional.empty();
        }
        double now = basis.load().sway().degrees();
        if (choice.kind() == RigKind.FOCUSED) {
            for (int sway = SWAY_STEP_DEGREES; sway <= MOST_SWAY_DEGREES; sway += SWAY_STEP_DEGREES) {
                if (sway > now && ahead(RigKind.LIMITED, choice, sway)) {
                    return Optional.of(Sentence.of(
                            "If the load swayed {0}° to either side or more: {1}.", sway, Sentence.word(other.word())));
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
                : Optional.of(Sentence.of(
                        "If the load swayed no more than {0}° to either side: {1}, which extends less.",
                        last, Sentence.word(other.word())));
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

    private static Sentence plain(List<String> names) {
        return Figures.said(names.stream().map(Sentence::plain).toList());
    }
}
