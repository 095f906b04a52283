package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.fault.Sentence;

/** What is slung round a point: its sides in the network, and every layout that is laid to its end. */
class SlingTest {

    private static final double PARTS_OF_LOAD = 1e-6;
    private static final int MOST_COORDINATES = 9;

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
        assertThat(answer.cuts()).containsExactly(new StrandCut("T sling", false, Optional.of("T")));
    }

    /**
     * The same energy written apart and minimised by Hipparchus, where no more than three nodes are free and none of them
     * hangs slack, in no place of its own. Where a loop is drawn to an end, the energy has a kink. RigFuzzTest has the rest.
     */
    @ParameterizedTest
    @EnumSource(
            value = RigKind.class,
            names = {"SINGLE", "FOCUSED", "SLIDING", "LOOP"})
    void rigsWithSlingsAgreeWithAnotherOptimiser(RigKind kind) {
        int compared = 0;
        for (RigInput input : RandomRigs.slung(kind, 20_264, 250).toList()) {
            RigState steady = Rigs.steady(input);
            double[] ours = RigByHand.places(input, steady);
            boolean settled = steady.strands().stream().allMatch(StrandPull::loaded);
            if (ours.length > MOST_COORDINATES || !settled || RigByHand.hasMet(input, steady)) {
                continue;
            }
            EnergyByHand energy = RigByHand.energy(input);
            double load = input.load().weight().inKilonewtons();
            double[] start = ours.clone();
            SplittableRandom random = new SplittableRandom(1);
            for (int i = 0; i < start.length; i++) {
                start[i] += random.nextDouble(-0.02, 0.02);
            }
            double[] rest = energy.minimum(start);

            assertThat(energy.value(ours)).as("%s", input).isLessThanOrEqualTo(energy.value(rest) + 1e-9 * load);
            assertThat(energy.slope(ours)).as("%s", input).isLessThan(PARTS_OF_LOAD * load);
            if (energy.slope(rest) < 1e-7 * load) {
                compared++;
                for (RigPoint point : input.points()) {
                    assertThat(steady.at(point.name()).force().inKilonewtons())
                            .as("%s, %s", input, point.name())
                            .isCloseTo(pull(input, energy, point, rest), within(10 * PARTS_OF_LOAD * load));
                }
            }
        }
        assertThat(compared).isGreaterThan(30);
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

    private static PartSafety safetyOfSling(SlingTie tie, OptionalDouble knot) {
        return safetyOfSling(tie, knot, Textile.UNKNOWN);
    }

    private static PartSafety safetyOfSling(SlingTie tie, OptionalDouble knot, Textile textile) {
        SlingDraft sling = new SlingDraft(
                Optional.of(tie),
                OptionalDouble.of(0.4),
                OptionalDouble.empty(),
                OptionalDouble.of(0.5),
                OptionalDouble.empty(),
                OptionalDouble.of(20),
                knot,
                textile);
        PointDraft tree = PointDraft.of("T", 0, 1, 0).slungWith(PointKind.TREE, sling);
        return Rigs.answer(Rigs.focused(List.of(tree), Vector3.ZERO, 1, 0, 0)).safety().stream()
                .filter(part -> part.part().equals("T sling"))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Four strands of 20 kN from two sides, 0.2 m to each side over 0.5 m of reach, under 1 kN; choked, 0.8 is left: sling
     * trade tables after AS 1353.1.
     */
    @Test
    void aSlingHoldsByTheStrandsOfItsHarderSideLessTieAndKnot() {
        double perSide = 1 / (2 * Math.cos(Math.atan(0.4)));

        assertThat(ratio(SlingTie.BASKET, 1)).isCloseTo(2 * 20 / perSide, within(0.05 * 20));
        assertThat(ratio(SlingTie.BASKET, 0.7) / ratio(SlingTie.BASKET, 1)).isCloseTo(0.7, within(1e-9));
        assertThat(ratio(SlingTie.TIED_ROUND, 0.64)).isCloseTo(20 * 0.64 / perSide, within(0.05 * 20));
        assertThat(ratio(SlingTie.CHOKE, 1)).isCloseTo(2 * 20 * 0.8, within(1e-6));
    }

    /** Nylon that has hung outdoors for three years has lost 50 to 60 % of its strength: WSTDA, outdoor exposure test 1997 to 2004. */
    @Test
    void whatIsKnownOfASlingsTextileIsTakenOff() {
        Textile old = new Textile(
                Optional.of(PartCondition.SOUND),
                Optional.of(Fibre.NYLON),
                OptionalDouble.of(3),
                Optional.of(Kept.OUTDOORS));
        Textile older = new Textile(old.condition(), old.fibre(), OptionalDouble.of(4), old.kept());
        PartSafety aged = safetyOfSling(SlingTie.BASKET, OptionalDouble.of(1), old);

        assertThat(aged.steady().ratio().orElseThrow() / ratio(SlingTie.BASKET, 1))
                .isCloseTo(0.45, within(1e-9));
        assertThat(aged.strength().factors())
                .extracting(StrengthFactor::name)
                .containsExactly("tie", "knot", "condition", "age");
        assertThat(aged.strength().notes())
                .extracting(Sentence::toString)
                .doesNotContain("age not stated", "condition not stated");
        assertThat(safetyOfSling(SlingTie.BASKET, OptionalDouble.of(1), older)
                        .steady()
                        .ratio())
                .isEmpty();
    }

    private static double ratio(SlingTie tie, double knot) {
        return safetyOfSling(tie, OptionalDouble.of(knot)).steady().ratio().orElseThrow();
    }

    @Test
    void aKnotOfWhichNothingIsKnownLeavesTheSlingUnknownUnlessItLiesInTheWrapThatIsNotPulled() {
        assertThat(safetyOfSling(SlingTie.TIED_ROUND, OptionalDouble.empty()).steady())
                .matches(times -> times.ratio().isEmpty())
                .extracting(PartSafety.Times::why)
                .asString()
                .contains("the knot of the T sling");
        assertThat(safetyOfSling(SlingTie.WRAP_THREE_PULL_TWO, OptionalDouble.empty())
                        .steady()
                        .ratio())
                .isPresent();
    }

    @Test
    void aCutOfEitherSideOfASlingIsTheLossOfItsPoint() {
        PointDraft tree = PointDraft.of("T", -0.3, 1, 0)
                .slungWith(PointKind.TREE, SlingDraft.of(SlingTie.BASKET, 0.4).withReach(0.5));
        RigAnswer answer =
                Rigs.answer(Rigs.focused(List.of(tree, PointDraft.of("B", 0.3, 1, 0)), Vector3.ZERO, 1, 0, 0));

        assertThat(answer.cuts())
                .containsExactly(
                        new StrandCut("T leg", true, Optional.of("T")),
                        new StrandCut("B leg", true, Optional.of("B")),
                        new StrandCut("T sling", true, Optional.of("T")));
        assertThat(answer.losses().get(0).aftermath().orElseThrow().rest().strands())
                .extracting(StrandPull::label)
                .containsExactly("B leg");
    }

    /** Girth 1 m, width 0.3 m, 0.5 m of reach: sides of hypot(0.15, 0.5), and half, one or two girths round. */
    @ParameterizedTest
    @CsvSource({"TIED_ROUND,2,0.5", "BASKET,4,1", "WRAP_THREE_PULL_TWO,4,2"})
    void aSlingTakesItsSidesAndItsWayRound(SlingTie tie, int sides, double girths) {
        SlingDraft sling = SlingDraft.of(tie, 0.3).withReach(0.5);
        PointDraft tree = PointDraft.of("T", 0, 1, 0);
        RigDraft draft =
                Rigs.focused(List.of(tree.slungWith(PointKind.TREE, sling.withAround(1))), Vector3.ZERO, 1, 0, 0);
        RigMaterial known = Rigs.answer(draft).material();
        RigMaterial unknown = Rigs.answer(draft.withPoints(List.of(tree.slungWith(PointKind.TREE, sling))))
                .material();

        assertThat(known.pieces().get(1).length().metres())
                .isCloseTo(sides * Math.hypot(0.15, 0.5) + girths + TakeUp.ringBend(), within(1e-9));
        assertThat(known.unknown()).isEmpty();
        assertThat(unknown.unknown()).containsExactly("T");
        assertThat(unknown.pieces()).hasSize(1);
    }

    /** Friction by two tied sides in place of the closed form, which knows no slings, is the same where there are none. */
    @Test
    void frictionByTwoSidesIsTheClosedFormWhereNothingIsSlung() {
        int compared = 0;
        for (RigInput input : RandomRigs.some(RigKind.SLIDING, 31, 200).toList()) {
            if (input.points().size() == 2) {
                FrictionRange closed = FindFriction.of(input);
                FrictionRange sides = FindSideFriction.of(input);
                for (int i = 0; i < 2; i++) {
                    assertThat(sides.shares().get(i).most())
                            .as("%s", input)
                            .isCloseTo(closed.shares().get(i).most(), within(1e-6));
                }
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(20);
    }

    /** Every study of a rig with slings comes to an end, and what it says fits together. */
    @ParameterizedTest
    @EnumSource(RigKind.class)
    void everyStudyTakesSlings(RigKind kind) {
        for (RigInput drawn : RandomRigs.slung(kind, 41, 2).toList()) {
            RigDraft draft = RigDraft.of(drawn);
            double strength = 2 * drawn.load().weight().inKilonewtons();
            RigInput input = Rigs.input(draft.withPoints(draft.points().stream()
                    .map(point -> new PointDraft(
                                    point.name(),
                                    point.at(),
                                    OptionalDouble.of(strength),
                                    point.spread(),
                                    point.holdsAlone())
                            .withSling(point.is(), point.sling()))
                    .toList()));
            RigAnswer answer = Analyze.of(input);
            for (PeakRange.Loss loss : FindPeakRange.of(answer).losses()) {
                for (PeakRange.OnPoint point : loss.points()) {
                    point.nominal().ifPresent(nominal -> assertThat(nominal).isBetween(point.low(), point.high()));
                }
            }
            FindBestFocus.of(input)
                    .found()
                    .ifPresent(found -> assertThat(found.shares())
                            .allMatch(share -> share.share() > FindBestFocus.LEAST_SHARE - 1e-6));
            CascadeOdds odds = Cascade.of(input, 2_000, 1, (done, planned) -> true);
            assertThat(odds.trials() == 2_000 || odds.unknown().isPresent()).isTrue();
            assertThat(CompareLayouts.of(input, RigPriority.UNSTATED).layouts()).isNotEmpty();
            assertThat(answer.friction().isPresent()).isEqualTo(kind == RigKind.SLIDING || kind == RigKind.LIMITED);
        }
    }
}
