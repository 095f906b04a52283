package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a draft may hold, the solver comes to rest, and the pulls balance the load. */
class ExtremesTest {

    private static final List<RigKind> KINDS = List.of(RigKind.FOCUSED, RigKind.SLIDING, RigKind.LIMITED, RigKind.LOOP);

    private static void assertBalanced(RigDraft draft, double part) {
        RigInput input = Rigs.input(draft);
        RigState steady = Rigs.steady(input);
        double weight = input.load().weight().inKilonewtons();
        Vector3 load = input.load().direction(input.load().toward()).times(weight);
        Vector3 sum = steady.points().stream().map(PointForce::pull).reduce(Vector3.ZERO, Vector3::plus);
        assertThat(sum.minus(load).length()).as(draft.toString()).isLessThan(part * weight);
    }

    @ParameterizedTest
    @CsvSource({
        "1e-6, 100000, 1e-3",
        "1e-6, 0.1, 1e-6",
        "1000, 0.1, 1e-9",
        "1000, 100000, 1e-9",
        "1, 70, 1e-9",
    })
    void loadsAndStiffnessFromTheLeastToTheMost(double kilonewtons, double stiffness, double part) {
        for (RigKind kind : KINDS) {
            for (double degrees : new double[] {1, 60, 120, 170, 179.9, 180, 181, 240, 359}) {
                assertBalanced(
                        Rigs.pair(degrees)
                                .withLoad(LoadDraft.ofForce(kilonewtons, 0, 0))
                                .withRig(setup(kind, stiffness)),
                        part);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-180, -179.9, -90, 90, 135, 180})
    void loadsThatPullSidewaysAndUp(double toward) {
        for (RigKind kind : KINDS) {
            RigDraft pair = Rigs.pair(60).withRig(setup(kind, 70));
            assertBalanced(pair.withLoad(LoadDraft.ofForce(1, toward, 90)), 1e-9);
            assertBalanced(pair.withLoad(LoadDraft.ofForce(1, toward, 90).withLeanOut(90)), 1e-9);
        }
    }

    @Test
    void anythingByChanceFromTinyToHuge() {
        SplittableRandom random = new SplittableRandom(9);
        int rigs = 0;
        for (int i = 0; i < 3_000; i++) {
            RigKind kind = KINDS.get(random.nextInt(KINDS.size()));
            double size = Math.pow(10, random.nextDouble(-2, 1.9));
            List<PointDraft> points = random.ints(kind.mostPoints() == 2 ? 2 : 1 + random.nextInt(6), 0, 1 << 20)
                    .mapToObj(seed -> point(new SplittableRandom(seed), size))
                    .toList();
            SetupDraft setup = new SetupDraft(
                    Optional.of(kind),
                    List.of(random.nextDouble(-size, size), random.nextDouble(-size, size), 0.0),
                    OptionalDouble.of(Math.pow(10, random.nextDouble(-1, 5))),
                    kind.takes("strands") ? OptionalLong.of(1 + random.nextInt(24)) : OptionalLong.empty(),
                    random.nextBoolean() || kind != RigKind.FOCUSED
                            ? Map.of()
                            : Map.of(points.get(0).name(), size * random.nextDouble()),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    kind == RigKind.LIMITED ? limits(random, size) : LimitDraft.NONE,
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
            LoadDraft load = LoadDraft.ofForce(Math.pow(10, random.nextDouble(-2, 3)), random.nextDouble(-180, 180), 0);
            RigDraft draft = new RigDraft("", points, load, setup);
            if (draft.check().input().isPresent()) {
                rigs++;
                assertBalanced(draft, 1e-6);
            }
        }
        assertThat(rigs).isGreaterThan(2_000);
    }

    /** From a hair to as much as the legs may be; those that are too long for theirs are refused and not counted. */
    private static LimitDraft limits(SplittableRandom random, double size) {
        return LimitDraft.at(
                        size * Math.pow(10, random.nextDouble(-7, 0)), size * Math.pow(10, random.nextDouble(-7, 0)))
                .withStrands(1 + random.nextInt(2));
    }

    private static SetupDraft setup(RigKind kind, double stiffness) {
        SetupDraft setup = SetupDraft.of(kind, 0, 0, 0, stiffness);
        return kind == RigKind.LIMITED ? setup.withLimits(LimitDraft.at(0.05, 0.3), 0.2) : setup;
    }

    private static PointDraft point(SplittableRandom random, double size) {
        return PointDraft.of(
                "P" + random.nextInt(1_000_000),
                random.nextDouble(-size, size),
                random.nextDouble(-size, size),
                random.nextDouble(-size / 3, size / 3));
    }

    /** With legs of 1 m and of half a metre in one line, the shorter, stiffer leg bears twice as much. */
    @Test
    void aPullUpwardsOnAStackIsSharedAsOneDownwards() {
        RigDraft stack = Rigs.focused(
                List.of(PointDraft.of("low", 0, 0, 0), PointDraft.of("high", 0, 0.5, 0)),
                new Vector3(0, 1, 0),
                1,
                180,
                0);

        RigState steady = Rigs.answer(stack).steady();

        assertThat(steady.at("high").share()).isCloseTo(2.0 / 3, within(1e-9));
        assertThat(steady.at("low").share()).isCloseTo(1.0 / 3, within(1e-9));
    }
}
