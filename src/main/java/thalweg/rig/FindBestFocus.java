package thalweg.rig;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import thalweg.fault.Sentence;
import thalweg.units.Angle;

/**
 * Moves the focus across the aim and finds where the smallest strength over largest steady force is largest, while every
 * point carries a least share at the aim and the focus stays between the outermost points.
 *
 * <p>The line is looked at in equal steps, then the best step is narrowed down by golden section. The figures that are
 * reported are those of the whole analysis of the rig with that focus.
 *
 * @see "Press and others, Numerical Recipes, 3rd edition, 10.2 Golden Section Search"
 */
public final class FindBestFocus {

    /** What every point is to carry at the aim [-]; our choice, so that none is only for show. */
    public static final double LEAST_SHARE = 0.15;

    private static final int STEPS = 24;

    /** To which the place is narrowed down [m]. */
    private static final double FINE_METRES = 2e-4;

    /** How far the limits are looked for beyond the best place [m]. */
    private static final double NEXT_METRES = 2e-3;

    /** What is not worth moving the focus for, in parts of the ratio. */
    private static final double NO_GAIN = 1e-3;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final RigInput input;
    private final double leastShare;
    private final Vector3 across;

    /** What each point is taken to hold [kN]. */
    private final double[] strengths;

    private FindBestFocus(RigInput input, double leastShare) {
        this.input = input;
        this.leastShare = leastShare;
        this.strengths = input.strengths().orElseThrow();
        double aim = input.load().toward().inRadians();
        this.across = new Vector3(Math.cos(aim), Math.sin(aim), 0);
    }

    /**
     * The figures at one place of the line.
     *
     * @param at distance from the given focus [m]
     * @param ratio the smallest over the points [-]
     * @param weakest the point that has it
     * @param share the smallest at the aim [-]
     * @param least the point that has that
     */
    private record Place(double at, double ratio, int weakest, double share, int least) {}

    /** The best focus with {@link #LEAST_SHARE}. */
    public static BestFocus of(RigInput input) {
        return of(input, LEAST_SHARE);
    }

    /**
     * The best focus.
     *
     * @param leastShare what every point is to carry at the aim, 0 to 1 [-]
     */
    public static BestFocus of(RigInput input, double leastShare) {
        Optional<Sentence> senseless = senseless(input);
        if (senseless.isPresent()) {
            return BestFocus.none(senseless.get());
        }
        List<String> unknown = input.unknownStrengths();
        if (!unknown.isEmpty()) {
            return BestFocus.none(Sentence.of(
                    "Not known: the strength of {0}. Without it nobody can say towards which point to lean.",
                    Figures.said(unknown.stream().map(Sentence::plain).toList())));
        }
        return new FindBestFocus(input, leastShare).find();
    }

    private static Optional<Sentence> senseless(RigInput input) {
        if (input.points().size() == 1) {
            return Optional.of(Sentence.of("One point bears the whole load, wherever the focus is."));
        }
        for (int i = 0; i < input.points().size(); i++) {
            if (input.rig().slack().get(i).metres() > 0) {
                return Optional.of(Sentence.of(
                        "The leg of {0} has slack, so that the master does not hang at the focus: without slack there is"
                                + " a best one.",
                        input.points().get(i).name()));
            }
        }
        return switch (input.rig().kind()) {
            case SINGLE, FOCUSED -> Optional.empty();
            case SLIDING, LOOP ->
                Optional.of(Sentence.of(
                        "The master slides to a place of its own: the focus only says how long the loop is."));
            case LIMITED ->
                Optional.of(Sentence.of(
                        "The master slides between the limits and sets the shares itself: the focus only says how long"
                                + " the legs are."));
        };
    }

    private BestFocus find() {
        double[] places = input.points().stream()
                .mapToDouble(point -> point.at().minus(input.rig().focus()).dot(across))
                .toArray();
        double low = IntStream.range(0, places.length)
                .mapToDouble(i -> places[i])
                .min()
                .orElseThrow();
        double high = IntStream.range(0, places.length)
                .mapToDouble(i -> places[i])
                .max()
                .orElseThrow();
        if (high - low < RigInput.ONE_PLACE_METRES) {
            return BestFocus.none(
                    Sentence.of("Seen along the aim the points are in one place: there is no way to lean the focus."));
        }
        Place best = best(low, high);
        if (best.share() < leastShare) {
            return BestFocus.none(Sentence.of(
                    "Nowhere on the line does every point carry {0} at the aim, which is our own rule: at best {1}"
                            + " carries {2}.",
                    Figures.percent(leastShare), name(best.least()), Figures.percent(best.share())));
        }
        RigAnswer given = Analyze.of(input);
        Place asGiven = place(0);
        if (low <= 0 && high >= 0 && merit(asGiven) >= merit(best) * (1 - NO_GAIN)) {
            return new BestFocus(
                    Optional.of(found(given, given)),
                    Sentence.of(
                            "No other focus on the line is better: {0} is nearest to its strength.",
                            name(asGiven.weakest())));
        }
        RigAnswer there = Analyze.of(withFocus(best.at()).orElseThrow());
        return new BestFocus(Optional.of(found(there, given)), why(best, low, high));
    }

    private static BestFocus.Found found(RigAnswer there, RigAnswer given) {
        return new BestFocus.Found(there.input().rig().focus(), there.steady().points(), least(there), least(given));
    }

    private static double least(RigAnswer answer) {
        return answer.safety().stream()
                .filter(part -> part.kind() == PartSafety.Kind.POINT)
                .map(part -> part.steady().ratio())
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private Place best(double low, double high) {
        double step = (high - low) / STEPS;
        Place best = IntStream.rangeClosed(0, STEPS)
                .mapToObj(i -> place(low + i * step))
                .max(Comparator.comparingDouble(this::merit))
                .orElseThrow();
        double left = Math.max(low, best.at() - step);
        double right = Math.min(high, best.at() + step);
        Place one = place(right - GOLDEN * (right - left));
        Place two = place(left + GOLDEN * (right - left));
        while (right - left > FINE_METRES) {
            best = better(best, better(one, two));
            if (merit(one) >= merit(two)) {
                right = two.at();
                two = one;
                one = place(right - GOLDEN * (right - left));
            } else {
                left = one.at();
                one = two;
                two = place(left + GOLDEN * (right - left));
            }
        }
        return better(best, better(one, two));
    }

    private Place better(Place one, Place other) {
        return merit(other) > merit(one) ? other : one;
    }

    /** Below 0 as long as a point carries too little, and then the nearer to 0 the less is missing. */
    private double merit(Place place) {
        return place.share() < leastShare ? place.share() - leastShare : place.ratio();
    }

    /** The figures over the 21 directions of the sector; a focus on a point carries nothing. */
    private Place place(double at) {
        Optional<RigInput> moved = withFocus(at);
        if (moved.isEmpty()) {
            return new Place(at, 0, 0, -1, 0);
        }
        RestState rest = new RestState(moved.get());
        double ratio = Double.POSITIVE_INFINITY;
        int weakest = 0;
        double share = Double.POSITIVE_INFINITY;
        int least = 0;
        for (Angle direction : directions()) {
            RigState state = rest.under(direction);
            boolean aim = direction.equals(input.load().toward());
            for (int i = 0; i < input.points().size(); i++) {
                PointForce force = state.points().get(i);
                double here = strengths[i] / input.points().get(i).counted(force.pull());
                if (here < ratio) {
                    ratio = here;
                    weakest = i;
                }
                if (aim && force.share() < share) {
                    share = force.share();
                    least = i;
                }
            }
        }
        return new Place(at, ratio, weakest, share, least);
    }

    private List<Angle> directions() {
        double toward = input.load().toward().degrees();
        double sway = input.load().sway().degrees();
        int half = sway > 0 ? RigSector.DIRECTIONS / 2 : 0;
        return IntStream.rangeClosed(-half, half)
                .mapToObj(step -> new Angle(step == 0 ? toward : toward + sway * step / half))
                .toList();
    }

    /** The rig with its focus so far along the line; empty where that is the place of a point. */
    private Optional<RigInput> withFocus(double at) {
        Vector3 focus = input.rig().focus().plus(across.times(at));
        boolean onPoint =
                input.points().stream().anyMatch(point -> point.at().distance(focus) < RigInput.ONE_PLACE_METRES);
        if (onPoint) {
            return Optional.empty();
        }
        return RigDraft.of(input)
                .withRig(RigDraft.of(input).rig().withFocus(focus))
                .check()
                .input();
    }

    private Sentence why(Place best, double low, double high) {
        for (double step : new double[] {-NEXT_METRES, NEXT_METRES}) {
            Place next = place(best.at() + step);
            if (next.ratio() > best.ratio() && next.share() < leastShare) {
                return Sentence.of(
                        "Held back by our own rule that every point carries at least {0} at the aim: {1} would carry"
                                + " less.",
                        Figures.percent(leastShare), name(next.least()));
            }
        }
        if (best.at() - low < NEXT_METRES || high - best.at() < NEXT_METRES) {
            return Sentence.of(
                    "Held back by the outermost point, beyond which the focus is not moved; {0} is nearest to its"
                            + " strength.",
                    name(best.weakest()));
        }
        int left = place(best.at() - NEXT_METRES).weakest();
        int right = place(best.at() + NEXT_METRES).weakest();
        return left == right
                ? Sentence.of(
                        "{0} is nearest to its strength, and leaning further to either side takes it nearer.",
                        name(left))
                : Sentence.of(
                        "{0} and {1} are equally near to their strength there; leaning further takes one of them nearer.",
                        name(left), name(right));
    }

    private String name(int point) {
        return input.points().get(point).name();
    }
}
