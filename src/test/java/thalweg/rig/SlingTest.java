package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is slung round a point: its sides in the network, and every layout that is laid to its end. */
class SlingTest {

    private static final double PARTS_OF_LOAD = 1e-6;

    private static RigDraft tree(SlingTie tie, double width, double reach) {
        PointDraft tree = PointDraft.of("T", 0, 1, 0)
                .slungWith(PointKind.TREE, SlingDraft.of(tie, width).withReach(reach));
        return Rigs.focused(List.of(tree), Vector3.ZERO, 1, 0, 0);
    }

    private static List<StrandPull> sides(RigState state) {
        return state.strands().stream()
                .filter(strand -> strand.label().equals("T sling"))
                .toList();
    }

    /** A V by the closed form {@code 1 / (2 cos(a/2))} for each side; the angle is the one reached under load. */
    @ParameterizedTest
    @CsvSource({"BASKET,2", "WRAP_THREE_PULL_TWO,2", "TIED_ROUND,1"})
    void theSidesOfASlingBearAsAVDoes(SlingTie tie, int strands) {
        RigState steady = Rigs.answer(tree(tie, 0.4, 0.5)).steady();

        List<StrandPull> sides = sides(steady);
        Vector3 end = sides.get(0).path().get(1);
        double half = Math.atan(0.2 / (1 - end.y()));
        assertThat(sides).extracting(StrandPull::count).containsExactly(strands, strands);
        assertThat(sides.get(0).path().get(0)).isEqualTo(new Vector3(-0.2, 1, 0));
        assertThat(sides.get(1).path().get(0)).isEqualTo(new Vector3(0.2, 1, 0));
        for (StrandPull side : sides) {
            assertThat(side.tension().inKilonewtons() * strands).isCloseTo(1 / (2 * Math.cos(half)), within(1e-9));
        }
        assertThat(steady.at("T").force().inKilonewtons()).isCloseTo(1, within(1e-9));
        assertThat(steady.at("T").share()).isCloseTo(1, within(1e-12));
    }

    @Test
    void aChokedSlingHangsByTwoStrandsFromOnePlace() {
        RigState steady = Rigs.answer(tree(SlingTie.CHOKE, 0.4, 0.5)).steady();

        assertThat(sides(steady)).singleElement().satisfies(side -> {
            assertThat(side.count()).isEqualTo(2);
            assertThat(side.path().get(0)).isEqualTo(new Vector3(0, 1, 0));
            assertThat(side.tension().inKilonewtons()).isCloseTo(0.5, within(1e-12));
        });
    }

    @Test
    void aLoadFromTheSidePutsMoreOnTheSideThatItPullsAwayFrom() {
        RigDraft swayed = tree(SlingTie.BASKET, 0.4, 0.5).withLoad(LoadDraft.ofForce(1, 20, 0));
        List<StrandPull> sides = sides(Rigs.answer(swayed).steady());

        assertThat(sides.get(0).tension().inKilonewtons())
                .isGreaterThan(1.5 * sides.get(1).tension().inKilonewtons());
    }

    @Test
    void aSlingThatReachesToTheMasterIsTheLeg() {
        PointDraft tree = PointDraft.of("T", 0, 1, 0).slungWith(PointKind.TREE, SlingDraft.of(SlingTie.BASKET, 0.4));
        RigAnswer answer = Rigs.answer(Rigs.focused(List.of(tree), Vector3.ZERO, 1, 0, 0));

        assertThat(answer.steady().strands()).extracting(StrandPull::label).containsExactly("T sling", "T sling");
        assertThat(answer.steady().strands())
                .allSatisfy(side ->
                        assertThat(side.path().get(1)).isEqualTo(answer.steady().master()));
        assertThat(answer.cuts()).containsExactly(new StrandCut("T sling", false, java.util.Optional.of("T")));
    }

    /** The same energy written apart and minimised by Hipparchus; where a loop is drawn to an end, it has a kink there. */
    @ParameterizedTest
    @EnumSource(
            value = RigKind.class,
            names = {"SINGLE", "FOCUSED", "SLIDING", "LOOP"})
    void rigsWithSlingsAgreeWithAnotherOptimiser(RigKind kind) {
        int met = 0;
        int given = 0;
        for (RigInput input : RandomRigs.slung(kind, 20_264, 60).toList()) {
            RigState steady = Rigs.steady(input);
            EnergyByHand energy = RigByHand.energy(input);
            double load = input.load().weight().inKilonewtons();
            double[] start = RigByHand.places(input, steady);
            SplittableRandom random = new SplittableRandom(1);
            for (int i = 0; i < start.length; i++) {
                start[i] += random.nextDouble(-0.02, 0.02);
            }
            double[] rest = energy.minimum(start);

            assertThat(energy.value(RigByHand.places(input, steady)))
                    .as("%s", input)
                    .isLessThanOrEqualTo(energy.value(rest) + 1e-9 * load);
            if (RigByHand.hasMet(input, steady)) {
                met++;
                continue;
            }
            assertThat(energy.slope(RigByHand.places(input, steady)))
                    .as("%s", input)
                    .isLessThan(PARTS_OF_LOAD * load);
            if (energy.slope(rest) > 1e-7 * load) {
                given++;
                continue;
            }
            for (RigPoint point : input.points()) {
                assertThat(steady.at(point.name()).force().inKilonewtons())
                        .as("%s, %s", input, point.name())
                        .isCloseTo(pull(input, energy, point, rest), within(10 * PARTS_OF_LOAD * load));
            }
        }
        assertThat(List.of(met, given)).as("a kink; an optimiser that gave up").allMatch(count -> count < 15);
    }

    /** The vector sum over the sides of a sling, by the other optimiser. */
    private static double pull(RigInput input, EnergyByHand energy, RigPoint point, double[] rest) {
        double[] at = RigByHand.place(point.at());
        if (point.sling().isEmpty()) {
            return energy.pull(at, rest);
        }
        double[] sum = new double[3];
        for (double[] side : RigByHand.sides(
                point.sling().get(), at, RigByHand.place(input.rig().focus()))) {
            double[] pull = energy.pulls(side, rest);
            for (int axis = 0; axis < 3; axis++) {
                sum[axis] += pull[axis];
            }
        }
        return new Vector3(sum[0], sum[1], sum[2]).length();
    }

    /** No limit knot and no end of a sling can be moved a little so that less is stored: the energy is convex. */
    @Test
    void limitedRigsWithSlingsRestWhereTheyStoreLeast() {
        int[] states = new int[2];
        for (RigInput input : RandomRigs.slung(RigKind.LIMITED, 20_265, 200).toList()) {
            RigState steady = Rigs.steady(input);
            Network network = LayStrands.of(input);
            Vector3 load = input.load()
                    .direction(input.load().toward())
                    .times(input.load().weight().inKilonewtons());
            double weight = load.length();
            Vector3 sum = steady.points().stream().map(PointForce::pull).reduce(Vector3.ZERO, Vector3::plus);
            assertThat(sum.minus(load).length()).as("%s", input).isLessThan(PARTS_OF_LOAD * weight);
            Energy energy = new Energy(network, load);
            energy.roundOff(1e-12);
            double[] rest = Energy.flat(FindRest.of(network, load).network().free());
            double least = energy.slopeAt(rest, new double[rest.length]);
            SplittableRandom random = new SplittableRandom(2);
            for (int i = 0; i < 200; i++) {
                double step = Math.pow(10, random.nextDouble(-7, -2));
                double[] near = rest.clone();
                for (int axis = 0; axis < near.length; axis++) {
                    near[axis] += random.nextDouble(-step, step);
                }
                assertThat(energy.slopeAt(near, new double[rest.length]))
                        .as("%s", input)
                        .isGreaterThan(least - 1e-10 * weight);
            }
            states[steady.knots().stream().anyMatch(KnotPlace::againstMaster) ? 0 : 1]++;
        }
        assertThat(List.of(states[0], states[1]))
                .as("against a knot, and off both")
                .allMatch(count -> count > 20);
    }

    /** A sling of no width round a point in the line of its leg is the same as so much more leg. */
    @Test
    void aSlingOfNoWidthIsAPieceOfTheLeg() {
        List<PointDraft> plain = List.of(PointDraft.of("A", -0.4, 0.8, 0), PointDraft.of("B", 0.3, 0.9, 0.1));
        List<PointDraft> slung = new ArrayList<>();
        for (PointDraft point : plain) {
            slung.add(point.slungWith(
                    PointKind.THREAD, SlingDraft.of(SlingTie.TIED_ROUND, 0).withReach(0.3)));
        }
        RigDraft draft = Rigs.focused(plain, Vector3.ZERO, 2, 10, 0);
        RigAnswer without = Rigs.answer(draft);
        RigAnswer with = Rigs.answer(draft.withPoints(slung));

        assertThat(with.steady().master().distance(without.steady().master())).isLessThan(1e-9);
        for (int i = 0; i < 2; i++) {
            Aftermath plainly = without.losses().get(i).aftermath().orElseThrow();
            Aftermath slungly = with.losses().get(i).aftermath().orElseThrow();
            String left = without.losses().get(1 - i).point();
            assertThat(slungly.drop().metres()).isCloseTo(plainly.drop().metres(), within(1e-9));
            assertThat(peak(slungly, left)).isCloseTo(peak(plainly, left), within(2e-3));
        }
    }

    private static double peak(Aftermath after, String point) {
        return after.peaks().orElseThrow().on(point).orElseThrow().inKilonewtons();
    }
}
