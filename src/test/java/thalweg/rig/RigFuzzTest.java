package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Many rigs by chance, each held against the balance of forces and against the slope of an energy written apart, which is
 * 0 at the one minimum of a convex function. It counts which layouts and which contacts were met.
 *
 * <p>{@code -Drig.fuzz=1000000} tries that many in place of a few thousand, and {@code -Drig.fuzz.seed=7} others.
 */
class RigFuzzTest {

    private static final int RIGS = Integer.getInteger("rig.fuzz", 4_000);
    private static final long SEED = Long.getLong("rig.fuzz.seed", 2_026);

    /** Of all rigs that are tried, each state must be met in at least this part. */
    private static final double LEAST_PART = 1.0 / 200;

    private static final double PARTS_OF_LOAD = 1e-6;

    private final Map<String, Integer> met = new TreeMap<>();

    @Test
    void everyRigComesToRestWhereItShould(TestReporter reporter) {
        List<RandomRigs> rigs = new ArrayList<>();
        for (RigKind kind : RigKind.values()) {
            rigs.add(new RandomRigs(kind, SEED + rigs.size()));
            expected(kind);
        }
        RandomRigs limited = new RandomRigs(RigKind.LIMITED, SEED + rigs.size());
        for (int i = 0; i < RIGS; i++) {
            // Every second one is limited, for it has the most states.
            RigInput input =
                    i % 2 == 0 ? limited.next() : rigs.get(i / 2 % rigs.size()).next();
            RigState steady = Rigs.steady(input);
            met.merge(state(input, steady), 1, Integer::sum);
            assertBalanced(input, steady);
            assertAtTheMinimum(input, steady);
            assertLosses(input, steady);
        }
        Map<String, String> counts = new TreeMap<>();
        met.forEach((state, count) -> counts.put(state, Integer.toString(count)));
        reporter.publishEntry(counts);
        assertThat(met)
                .allSatisfy((state, count) -> assertThat(count)
                        .as("times that this was met: " + state)
                        .isGreaterThanOrEqualTo((int) (LEAST_PART * RIGS)));
    }

    /** The same with slings, whose ends are nodes of the energy as well; limited ones are held against it in SlingTest. */
    @Test
    void rigsWithSlingsComeToRestWhereTheyShould() {
        List<RandomRigs> rigs = new ArrayList<>();
        for (RigKind kind : RigKind.values()) {
            rigs.add(new RandomRigs(kind, SEED + 100 + rigs.size()));
        }
        int kinks = 0;
        for (int i = 0; i < RIGS / 2; i++) {
            RigInput input = rigs.get(i % rigs.size()).nextSlung();
            RigState steady = Rigs.steady(input);
            assertBalanced(input, steady);
            assertLosses(input, steady);
            if (input.rig().kind() != RigKind.LIMITED) {
                boolean met = RigByHand.hasMet(input, steady);
                kinks += met ? 1 : 0;
                if (met) {
                    assertNothingNearIsLower(input, steady);
                }
                double slope = met ? 0 : RigByHand.energy(input).slope(RigByHand.places(input, steady));
                if (!(slope < PARTS_OF_LOAD * input.load().weight().inKilonewtons())) {
                    throw new AssertionError("not at the minimum, by " + slope + " kN: " + input);
                }
            }
        }
        assertThat(kinks).as("masters that were drawn to an end").isLessThan(RIGS / 10);
    }

    /** On a kink there is no slope, but still no place near by at which less is stored. */
    private static void assertNothingNearIsLower(RigInput input, RigState steady) {
        EnergyByHand energy = RigByHand.energy(input);
        double[] rest = RigByHand.places(input, steady);
        double least = energy.value(rest);
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 200; i++) {
            double step = Math.pow(10, random.nextDouble(-7, -2));
            double[] near = rest.clone();
            for (int axis = 0; axis < near.length; axis++) {
                near[axis] += random.nextDouble(-step, step);
            }
            if (!(energy.value(near) >= least - 1e-9 * input.load().weight().inKilonewtons())) {
                throw new AssertionError("less is stored " + step + " m away: " + input);
            }
        }
    }

    /** So that a state that is never met is one that was met 0 times. */
    private void expected(RigKind kind) {
        switch (kind) {
            case SINGLE, LOOP -> met.put(word(kind), 0);
            case FOCUSED -> {
                met.put(word(kind) + ", all legs loaded", 0);
                met.put(word(kind) + ", a leg slack", 0);
            }
            case SLIDING -> {
                met.put(word(kind) + " over two", 0);
                met.put(word(kind) + " over one or many", 0);
            }
            case LIMITED -> {
                met.put(word(kind) + ", off both knots", 0);
                for (int knot = 1; knot <= 2; knot++) {
                    met.put(word(kind) + ", against knot " + knot + ", its leg loaded", 0);
                    met.put(word(kind) + ", against knot " + knot + ", its leg slack", 0);
                }
            }
        }
    }

    private static String word(RigKind kind) {
        return kind.word();
    }

    private static String state(RigInput input, RigState steady) {
        RigKind kind = input.rig().kind();
        boolean slack = steady.strands().stream().anyMatch(strand -> !strand.loaded());
        return switch (kind) {
            case SINGLE, LOOP -> word(kind);
            case FOCUSED -> word(kind) + (slack ? ", a leg slack" : ", all legs loaded");
            case SLIDING -> word(kind) + (input.points().size() == 2 ? " over two" : " over one or many");
            case LIMITED -> {
                boolean first = steady.knots().get(0).againstMaster();
                boolean second = steady.knots().get(1).againstMaster();
                assertThat(first && second)
                        .as("a slider that bears has a length: %s", input)
                        .isFalse();
                yield first || second
                        ? word(kind) + ", against knot " + (first ? 1 : 2) + ", its leg " + (slack ? "slack" : "loaded")
                        : word(kind) + ", off both knots";
            }
        };
    }

    private static void assertBalanced(RigInput input, RigState state) {
        double weight = input.load().weight().inKilonewtons();
        Vector3 load = input.load().direction(state.direction()).times(weight);
        Vector3 sum = state.points().stream().map(PointForce::pull).reduce(Vector3.ZERO, Vector3::plus);
        if (!(sum.minus(load).length() < PARTS_OF_LOAD * weight)) {
            throw new AssertionError("out of balance: " + input);
        }
        state.angle().ifPresent(angle -> assertThat(angle.degrees()).isBetween(0.0, 180.0));
    }

    private static void assertAtTheMinimum(RigInput input, RigState steady) {
        double weight = input.load().weight().inKilonewtons();
        double[] master = RigByHand.place(steady.master());
        double slope;
        if (input.rig().kind() == RigKind.LIMITED) {
            double[] slopes = new LimitedByHand(input, RigByHand.load(input)).slope(master);
            slope = new Vector3(slopes[0], slopes[1], slopes[2]).length();
        } else if (input.points().stream().anyMatch(point -> point.at().distance(steady.master()) < 1e-4)) {
            // A master that has slid into a point is on a kink of the energy, which has no slope there.
            return;
        } else {
            slope = RigByHand.energy(input).slope(master);
        }
        if (!(slope < PARTS_OF_LOAD * weight)) {
            throw new AssertionError("not at the minimum, by " + slope + " kN: " + input);
        }
    }

    private static void assertLosses(RigInput input, RigState steady) {
        for (int lost = 0; lost < input.points().size(); lost++) {
            LayStrands.left(input, lost, steady.master()).ifPresent(left -> {
                RigState rest = new RestState(input, left).under(input.load().toward());
                assertBalanced(input, rest);
            });
        }
    }
}
