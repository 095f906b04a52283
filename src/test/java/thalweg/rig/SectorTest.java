package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thalweg.units.Angle;

class SectorTest {

    private static final List<PointDraft> PAIR =
            List.of(PointDraft.of("A", -0.3, 0, 0), PointDraft.of("B", 0.3, 0.1, 0.05));

    private static RigAnswer answer(double toward, double sway) {
        return Rigs.answer(Rigs.focused(PAIR, new Vector3(0, -0.6, 0), 0.9, toward, sway));
    }

    @Test
    void itHasTwentyOneDirectionsWithBothEndsAndTheAim() {
        List<RigState> directions = answer(4, 15).sector().directions();

        assertThat(directions).hasSize(21);
        assertThat(directions.get(0).direction().degrees()).isEqualTo(-11);
        assertThat(directions.get(10).direction().degrees()).isEqualTo(4);
        assertThat(directions.get(20).direction().degrees()).isEqualTo(19);
    }

    @Test
    void aLoadThatDoesNotSwayHasOneStateInAllDirections() {
        RigAnswer answer = answer(5, 0);

        assertThat(answer.sector().directions()).hasSize(21).containsOnly(answer.steady());
    }

    @Test
    void theWorstIsNoLessThanAtAnyReportedDirection() {
        RigSector sector = answer(3, 40).sector();

        for (WorstForce worst : sector.worst()) {
            for (RigState state : sector.directions()) {
                assertThat(worst.force().newtons())
                        .isGreaterThanOrEqualTo(state.at(worst.point()).force().newtons() * (1 - 1e-8));
            }
        }
    }

    @Test
    void theMiddleOfThreeLegsIsPulledHardestInsideTheSector() {
        List<PointDraft> fan =
                List.of(PAIR.get(0), PointDraft.of("middle", 0.05, 0.2, 0), PointDraft.of("right", 0.4, 0, 0));
        RigInput input = Rigs.input(Rigs.focused(fan, new Vector3(0, -0.6, 0), 0.9, 0, 30));

        WorstForce worst = Analyze.of(input).sector().worstOf("middle");

        assertThat(Math.abs(worst.direction().degrees())).isLessThan(29);
        assertWorstOfEveryTenth(input);
    }

    @Test
    void amongEqualsTheDirectionNearestToTheAimIsNamed() {
        // B hangs slack from about 27 degrees on, and A bears the whole load in every direction beyond.
        WorstForce worst = answer(0, 80).sector().worstOf("A");

        assertThat(worst.force().inKilonewtons()).isCloseTo(0.9, within(1e-9));
        assertThat(worst.direction().degrees()).isBetween(26.0, 27.2);
    }

    @Test
    void theWorstOfRigsByChanceIsTheWorstOfEveryTenthOfADegree() {
        RandomRigs.some(31, 60).forEach(SectorTest::assertWorstOfEveryTenth);
        RandomRigs.some(RigKind.SLIDING, 32, 40).forEach(SectorTest::assertWorstOfEveryTenth);
        RandomRigs.some(RigKind.LOOP, 33, 40).forEach(SectorTest::assertWorstOfEveryTenth);
        RandomRigs.some(RigKind.LIMITED, 34, 200).forEach(SectorTest::assertWorstOfEveryTenth);
    }

    /** Where strands go slack and knots come up against the master, a force rises and falls more than once. */
    @Test
    void aWideSectorHidesNoSecondPeak() {
        Stream.of(RigKind.FOCUSED, RigKind.LIMITED)
                .flatMap(kind -> RandomRigs.some(kind, 5, 100))
                .map(input -> Rigs.input(
                        RigDraft.of(input).withLoad(RigDraft.of(input).load().withSway(90))))
                .forEach(input -> assertWorst(input, 0.4));
    }

    private static void assertWorstOfEveryTenth(RigInput input) {
        assertWorst(input, 0.1);
    }

    private static void assertWorst(RigInput input, double everyDegrees) {
        RigSector sector = Analyze.of(input).sector();
        RestState rest = new RestState(input);
        double aim = input.load().toward().degrees();
        double sway = input.load().sway().degrees();
        int count = input.points().size();
        double[] worst = new double[count];
        double widest = 0;
        int steps = (int) Math.ceil(sway / everyDegrees);
        for (int step = -steps; step <= steps; step++) {
            RigState state = rest.under(new Angle(aim + sway * step / Math.max(steps, 1)));
            for (int i = 0; i < count; i++) {
                worst[i] = Math.max(worst[i], state.points().get(i).force().inKilonewtons());
            }
            widest = Math.max(widest, state.angle().map(Angle::degrees).orElse(0.0));
        }
        double load = input.load().weight().inKilonewtons();
        for (int i = 0; i < count; i++) {
            assertThat(sector.worst().get(i).force().inKilonewtons())
                    .as("%s, point %s", input, i)
                    .isBetween(worst[i] - 3e-3 * load, worst[i] + everyDegrees * 0.1 * load);
        }
        assertThat(sector.widest().map(found -> found.angle().degrees()).orElse(0.0))
                .as("%s", input)
                .isBetween(widest - 0.2, widest + 2 * everyDegrees);
    }
}
