package thalweg.rig;

import java.util.Optional;
import java.util.SplittableRandom;
import thalweg.fault.Sentence;

/**
 * Lets points fail by chance, and what that puts on the others make them fail in turn.
 *
 * <p>Each trial draws a strength for each point (lognormal, its median what is left of what is stated), a factor for the
 * load (lognormal, median 1) and a direction (uniform over the sector). Points over their strength at rest fail together; then the peaks
 * that this puts on the others, from rest, are held against theirs; then the rest that follows; and so on. Forces are
 * those of the nominal load times the factor: where strands are slack or stretch much, they are not quite in proportion.
 * Strands do not fail here.
 *
 * <p>Trials come in blocks, each with a generator of its own that follows from the seed, so that the same trials are
 * done whether all at once or block by block. Two layouts on the same points with the same seed meet the same strengths,
 * loads and directions. What it solves on the way is kept, so that it must not be used by two threads at once.
 *
 * @see "Box and Muller, A Note on the Generation of Random Normal Deviates, 1958"
 */
public final class Cascade {

    /** Trials between two looks at the watch. */
    public static final int BLOCK = 2_000;

    private final RigInput input;
    private final Responses responses;
    private final Optional<double[]> strengths;
    private final double[] forces;
    private final double[] drawn;

    /** How often some point failed, and everything was lost, in the block that is being done. */
    private int anyFails;

    private int allLost;
    private boolean unknownPeak;

    /** From which the generators of the blocks are split, for which seed, and how many have been. */
    private SplittableRandom root = new SplittableRandom(0);

    private long rootSeed;
    private int split;

    /** A cascade of a rig, of which nothing has been solved. */
    public Cascade(RigInput input) {
        this.input = input;
        this.responses = new Responses(input);
        this.strengths = input.strengths();
        this.forces = new double[input.points().size()];
        this.drawn = new double[input.points().size()];
    }

    /** The rig that it is about. */
    public RigInput input() {
        return input;
    }

    /** All trials, or as many as the watch lets pass. */
    public static CascadeOdds of(RigInput input, int trials, long seed, CascadeWatch watch) {
        Cascade cascade = new Cascade(input);
        CascadeOdds odds = CascadeOdds.begin(trials, seed);
        while (!odds.finished() && watch.goOn(odds.trials(), trials)) {
            odds = cascade.next(odds);
        }
        return odds;
    }

    /**
     * One more block of trials.
     *
     * @param before what the blocks so far came to; not finished
     */
    public CascadeOdds next(CascadeOdds before) {
        if (strengths.isEmpty()) {
            return before.because(Sentence.of(
                    "Not known: the strength of {0}. Without a belief in it there are no odds.",
                    Figures.said(input.unknownStrengths().stream()
                            .map(Sentence::plain)
                            .toList())));
        }
        SplittableRandom random = block(before.seed(), before.trials() / BLOCK);
        int count = Math.min(BLOCK, before.planned() - before.trials());
        anyFails = 0;
        allLost = 0;
        for (int i = 0; i < count && !unknownPeak; i++) {
            trial(random, strengths.get());
        }
        if (unknownPeak) {
            return before.because(Sentence.of(
                    "A load moves so fast on the strands that are left that a peak is unknown, and with it whether the"
                            + " other points hold."));
        }
        return new CascadeOdds(
                before.seed(),
                before.planned(),
                before.trials() + count,
                before.anyFails() + anyFails,
                before.allLost() + allLost,
                responses.error(),
                responses.rising(),
                Optional.empty());
    }

    /** The generator of a block. Each is split off the one of the seed, in turn; whoever goes on with the next only splits. */
    private SplittableRandom block(long seed, int number) {
        if (seed != rootSeed || number < split) {
            root = new SplittableRandom(seed);
            rootSeed = seed;
            split = 0;
        }
        while (split < number) {
            root.split();
            split++;
        }
        split++;
        return root.split();
    }

    private void trial(SplittableRandom random, double[] medians) {
        double place = random.nextDouble() * DirectionTable.CELLS;
        double factor = StrictMath.exp(input.load().spread() * normal(random));
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = medians[i] * StrictMath.exp(input.points().get(i).spread() * normal(random));
        }
        double where = input.load().sway().degrees() > 0 ? place : 0;
        int failed = 0;
        responses.rest(failed, where, forces);
        int now = over(failed, factor);
        if (now != 0) {
            anyFails++;
        }
        while (now != 0) {
            int after = failed | now;
            if (!responses.holds(after)) {
                allLost++;
                return;
            }
            if (!responses.peaks(failed, now, where, forces)) {
                unknownPeak = true;
                return;
            }
            failed = after;
            now = over(failed, factor);
            if (now == 0) {
                responses.rest(failed, where, forces);
                now = over(failed, factor);
            }
        }
    }

    /** A bit for each point whose force exceeds its strength, of those that are left. */
    private int over(int failed, double factor) {
        int over = 0;
        for (int i = 0; i < drawn.length; i++) {
            boolean left = (failed >> i & 1) == 0;
            if (left && forces[i] * factor > drawn[i]) {
                over |= 1 << i;
            }
        }
        return over;
    }

    /** A standard normal deviate, the same on every machine. */
    private static double normal(SplittableRandom random) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()));
        return radius * StrictMath.cos(2 * Math.PI * random.nextDouble());
    }
}
