package thalweg.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import thalweg.logbook.Trip;
import thalweg.settings.TripFigure;
import thalweg.units.Length;

/** Until when to go on, worked by hand: no spread, so that late is what it takes. */
class TurnAroundTest {

    private static final Paces EXACT = new Paces(8, 3, 10, 4, 1.5, 20, 0);

    /** 100 m of walking, an escape, then a drop of 20 m: 5 min, then 8 + 5 + 4 = 17 min for one person. */
    private static final List<LineStep> LINE =
            List.of(new LineStep(1, "out", false, 0, 100, false, true), new LineStep(2, "", true, 20, 0, true, false));

    private static Way minutes(int minutes) {
        return new Way(Optional.empty(), 0, 0, Optional.of(minutes));
    }

    private static Plan plan(int start, Way exit, Optional<Integer> statedLine, Optional<Integer> sunset) {
        return plan(LINE, start, exit, statedLine, sunset);
    }

    private static Plan plan(
            List<LineStep> line, int start, Way exit, Optional<Integer> statedLine, Optional<Integer> sunset) {
        LocalDate day = LocalDate.of(2027, 7, 17);
        TripRequest request = new TripRequest(
                "Probe",
                day,
                Optional.empty(),
                Optional.of(start),
                List.of(new Trip.Person("Ana", Optional.empty(), Optional.empty())),
                List.of(),
                1,
                RopeMargin.STANDARD,
                Map.of(),
                Way.UNKNOWN,
                Way.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                0,
                "",
                Optional.empty());
        ZonedDateTime midnight = day.atStartOfDay(ZoneOffset.UTC);
        return new Plan(
                request,
                "Probe",
                true,
                ChooseRopes.of(List.of(), List.of(), RopeMargin.STANDARD),
                minutes(60),
                exit,
                Timetable.of(line, Party.of(1), 1, EXACT, Rests.NONE),
                statedLine,
                0,
                sunset.map(
                        at -> new Daylight(Optional.of(midnight.plusHours(6)), Optional.of(midnight.plusMinutes(at)))),
                OptionalDouble.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                new Bring(List.of(), new Length(0), new Length(0), 0, List.of(), List.of()),
                Map.of(TripFigure.LIGHT_RESERVE_MIN, 60.0),
                Optional.empty(),
                0,
                false,
                List.of());
    }

    /** Sunset 20:00, less 60 reserve and 30 back: 18:30; less 17 past the escape, 22 from the line, 82 from the car. */
    @Test
    void whatIsLeftIsTakenOffFromDark() {
        List<TurnAround> points = TurnAround.of(plan(8 * 60, minutes(30), Optional.empty(), Optional.of(20 * 60)));

        assertThat(points)
                .extracting(TurnAround::kind)
                .containsExactly(TurnAround.Kind.CAR, TurnAround.Kind.LINE, TurnAround.Kind.ESCAPE);
        assertThat(points)
                .extracting(TurnAround::latest)
                .containsExactly(18.5 * 60 - 82, 18.5 * 60 - 22, 18.5 * 60 - 17);
        assertThat(points).noneMatch(TurnAround::missed);
        assertThat(points.get(2).plannedLate().orElseThrow()).isCloseTo(8 * 60 + 60 + 5, within(1e-9));
    }

    /** The records state 220 min, ten times the 22 that were worked out: so is what is left. */
    @Test
    void whereTheRecordsStateMoreWhatIsLeftIsLongerToo() {
        List<TurnAround> points = TurnAround.of(plan(8 * 60, minutes(30), Optional.of(220), Optional.of(20 * 60)));

        assertThat(points.get(1).latest()).isCloseTo(18.5 * 60 - 220, within(1e-9));
        assertThat(points.get(2).latest()).isCloseTo(18.5 * 60 - 170, within(1e-9));
    }

    private static List<LineStep> withWayOut(int minutes) {
        LineStep out = new LineStep(1, "out", false, 0, 100, false, true, Optional.of(minutes));
        return List.of(out, LINE.get(1));
    }

    /** Sunset 20:00, less 60 reserve and 45 out: 18:15, wherever the line leads. */
    @Test
    void anEscapeIsLeftInTimeForItsWayOut() {
        List<TurnAround> points =
                TurnAround.of(plan(withWayOut(45), 8 * 60, minutes(30), Optional.empty(), Optional.of(20 * 60)));

        assertThat(points)
                .extracting(TurnAround::kind)
                .containsExactly(
                        TurnAround.Kind.CAR, TurnAround.Kind.LINE, TurnAround.Kind.ESCAPE, TurnAround.Kind.OUT);
        assertThat(points.get(3).latest()).isCloseTo(18.25 * 60, within(1e-9));
        assertThat(points.get(3).plannedLate().orElseThrow()).isCloseTo(8 * 60 + 60 + 5, within(1e-9));
    }

    @Test
    void aWayOutIsKnownWhereTheWayBackIsNot() {
        assertThat(TurnAround.of(plan(withWayOut(45), 8 * 60, Way.UNKNOWN, Optional.empty(), Optional.of(20 * 60))))
                .extracting(TurnAround::kind)
                .containsExactly(TurnAround.Kind.OUT);
    }

    @Test
    void whoStartsTooLateIsThereTooLateEverywhere() {
        assertThat(TurnAround.of(plan(18 * 60, minutes(30), Optional.empty(), Optional.of(20 * 60))))
                .hasSize(3)
                .allMatch(TurnAround::missed);
    }

    @Test
    void withoutSunsetOrTheWayBackNobodyCanSay() {
        assertThat(TurnAround.of(plan(8 * 60, Way.UNKNOWN, Optional.empty(), Optional.of(20 * 60))))
                .isEmpty();
        assertThat(TurnAround.of(plan(8 * 60, minutes(30), Optional.empty(), Optional.empty())))
                .isEmpty();
    }
}
