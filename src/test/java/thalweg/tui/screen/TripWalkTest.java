package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.route.PartialDate;
import thalweg.service.FindRecord;
import thalweg.service.KeepLocal;
import thalweg.service.ListTrips;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.units.Length;
import thalweg.units.Mass;

final class TripWalkTest {

    private static final Key SAVE = Key.ctrl('s');

    private static Walk atTrips(int rows, int columns) {
        Walk walk = Walk.sample(rows, columns);
        return walk.type("/éclus").press(Key.Named.ENTER).type("t");
    }

    @TempDir
    private Path folder = Path.of("");

    private static List<Trip> trips(Walk walk) {
        return new ListTrips(walk.session())
                .of(Optional.empty()).stream().map(TripInCanyon::trip).toList();
    }

    private static Walk enterOne(Walk walk) {
        walk.type("n")
                .press(Key.Named.TAB)
                .type("2026-12-05")
                .press(Key.Named.TAB)
                .type("club course");
        walk.press(Key.Named.TAB).tell(new Message.Pasted("Ana, lead, 62 kg\nBo\nCy, 180 lb\n滝 子, beginner, 55,5 kg"));
        walk.press(Key.Named.TAB).tell(new Message.Pasted("60 m, 9.5 mm low-stretch"));
        return walk.press(Key.Named.TAB).type("8:30").press(SAVE);
    }

    @ParameterizedTest
    @CsvSource({"12,40", "24,80", "40,120"})
    void aTripIsEnteredAndReadAtEverySize(int rows, int columns) {
        try (Walk walk = atTrips(rows, columns)) {
            assertThat(walk.screen().replaceAll("\\s+", " ")).contains("No trips to this canyon yet.");

            enterOne(walk);

            assertThat(walk.screen()).contains("2026-12-05  planned     club course");
            Trip trip = trips(walk).get(0);
            assertThat(trip.people())
                    .extracting(person -> person.weight().map(Mass::kilograms).orElse(0.0))
                    .containsExactly(62.0, 0.0, 81.647, 55.5);
            assertThat(trip.ropes()).containsExactly(new Trip.Rope(new Length(60), "9.5 mm low-stretch"));
            assertThat(trip.start()).contains(510);

            walk.press(Key.Named.ENTER).type("v");
            StringBuilder read = new StringBuilder(walk.screen());
            for (int page = 0; page < 4; page++) {
                read.append(walk.press(Key.Named.PAGE_DOWN).screen());
            }
            assertThat(read.toString().replaceAll("[█│\\s]+", " "))
                    .contains("club course", "Private, stays here", "2026-12-05, 10 days ahead", "Sets out: 8:30")
                    .contains("Back: unknown", "Water: unknown", "People: 4", "Bo, role unknown, weight unknown")
                    .contains("Weight of 3 of 4 people known, together 199 kg; the rest is unknown.")
                    .contains("60 m, 9.5 mm low-stretch");
        }
    }

    @Test
    void whatNobodyTouchedStaysAsItWas() {
        try (Walk walk = enterOne(atTrips(24, 80))) {
            Trip before = trips(walk).get(0);

            walk.type("ue").press(Key.Named.TAB, 3);
            assertThat(walk.screen()).contains("Ana, lead, 137 lb", "滝 子, beginner, 122 lb");
            walk.press(Key.Named.UP, 2).press(Key.Named.END).type(", able").press(SAVE);

            Trip after = trips(walk).get(0);
            assertThat(after.people().get(1))
                    .isEqualTo(new Trip.Person("Bo", Optional.of(Trip.Role.ABLE), Optional.empty()));
            assertThat(after.people().get(0)).isEqualTo(before.people().get(0));
            assertThat(after.people().subList(2, 4)).isEqualTo(before.people().subList(2, 4));
            assertThat(after.ropes()).isEqualTo(before.ropes());
        }
    }

    @Test
    void theLineAtFaultIsNamedAndNothingIsSaved() {
        try (Walk walk = atTrips(24, 80)) {
            walk.type("n")
                    .press(Key.Named.TAB, 3)
                    .tell(new Message.Pasted("Ana, lead\nBo, 5 g"))
                    .press(SAVE);
            assertThat(walk.screen()).contains("Line 2: The weight \"5 g\" is not between 10 and 300 kg.");

            walk.press(Key.ctrl('u')).press(Key.Named.TAB).type("0 m").press(SAVE);
            assertThat(walk.screen()).contains("Line 1: The rope \"0 m\" is not between 1 and 1000 m long.");

            walk.press(Key.ctrl('u')).press(Key.Named.TAB).type("25:00").press(SAVE);
            assertThat(walk.screen()).contains("The time \"25:00\" does not exist");
            assertThat(trips(walk)).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'', 3000, The day 3000 lies more than 5 years ahead; today is 2026-11-25.",
        "'', 1850, The day 1850 lies before 1900.",
        "d, 2026-12, 'The day 2026-12 has not come yet, so the trip is not done; today is 2026-11-25.'"
    })
    void aDayThatIsNotBelievedIsRefused(String state, String day, String sentence) {
        try (Walk walk = atTrips(24, 120)) {
            walk.type("n").type(state).press(Key.Named.TAB).type(day).press(SAVE);

            assertThat(walk.screen()).contains(sentence);
            assertThat(trips(walk)).isEmpty();
        }
    }

    @Test
    void plannedTripsComeFirstAndOneWhoseDayHasPassedIsTold() {
        try (Walk walk = atTrips(24, 80)) {
            for (String trip :
                    List.of("done|2026-01-10", "planned|2026-12-24", "planned|2026-11-20", "called_off|2025")) {
                String[] parts = trip.split("\\|", -1);
                walk.type("n")
                        .type(parts[0].substring(0, 1))
                        .press(Key.Named.TAB)
                        .type(parts[1])
                        .press(SAVE);
            }

            assertThat(walk.screen())
                    .containsSubsequence(
                            "2026-11-20  day passed",
                            "2026-12-24  planned",
                            "2026-01-10  done",
                            "2025        called off");
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        p | 2026-11-25 | Day: 2026-11-25, today
        p | 2026-11-26 | Day: 2026-11-26, 1 day ahead
        p | 2026-11    | Day: 2026-11
        p | 2026-10    | Day: 2026-10, at least 25 days ago
        d | 2026-11-20 | Day: 2026-11-20, 5 days ago
        d | 2026       | Day: 2026
        """)
    void aDaySaysHowFarAheadOrAgoItIs(String state, String day, String shown) {
        try (Walk walk = atTrips(24, 80)) {
            walk.type("n")
                    .type(state)
                    .press(Key.Named.TAB)
                    .type(day)
                    .press(SAVE)
                    .press(Key.Named.ENTER)
                    .type("v");

            assertThat(walk.screen().lines().map(String::strip)).contains(shown);
        }
    }

    @Test
    void theTripThatWasJustEnteredIsChosen() {
        try (Walk walk = atTrips(24, 80)) {
            walk.type("n").press(Key.Named.TAB).type("2026-12-24").press(SAVE);
            walk.type("nd").press(Key.Named.TAB).type("2026-01-10").press(SAVE);
            assertThat(walk.screen()).contains("> 2026-01-10  done");

            walk.type("e")
                    .press(Key.Named.TAB)
                    .press(Key.ctrl('u'))
                    .type("2026-01-11")
                    .press(SAVE);
            assertThat(walk.screen()).contains("> 2026-01-11  done");
        }
    }

    @Test
    void allTripsAreListedWithTheirCanyon() {
        try (Walk walk = enterOne(atTrips(24, 80))) {
            walk.press(Key.Named.ESCAPE, 3).type("t");
            assertThat(walk.screen()).contains("Trips  1", "planned     Gorge de l'Éclusaune (inven");

            walk.type("n");
            assertThat(walk.screen()).contains("A trip goes to a canyon: open that, press t, then n.");
        }
    }

    @Test
    void aTripIsTakenOutWithAReason() {
        try (Walk walk = enterOne(atTrips(24, 80))) {
            walk.type("x").press(SAVE);
            assertThat(walk.screen()).contains("This must be filled in.");

            walk.type("entered twice").press(SAVE);
            assertThat(trips(walk)).isEmpty();
            assertThat(walk.screen()).contains("No trips to this canyon yet.");
        }
    }

    @Test
    void aTripWithALongListIsShownWhole() {
        try (Walk walk = Walk.sample(12, 40)) {
            Trip.Person person =
                    new Trip.Person("\"" + "n".repeat(119), Optional.of(Trip.Role.BEGINNER), Optional.empty());
            Trip trip = new Trip(
                    walk.session().mint(),
                    new FindRecord(walk.session()).canyon("éclusaune").canyon().uid(),
                    Trip.State.PLANNED,
                    Optional.of(PartialDate.parse("2027")),
                    "",
                    Collections.nCopies(60, person),
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    "");
            new KeepLocal(walk.session()).trip(Optional.empty(), trip);

            walk.type("/éclus")
                    .press(Key.Named.ENTER)
                    .type("te")
                    .press(Key.Named.TAB)
                    .type("-05")
                    .press(SAVE);

            assertThat(trips(walk).get(0).people()).isEqualTo(trip.people());
            assertThat(trips(walk).get(0).on()).contains(PartialDate.parse("2027-05"));
        }
    }

    @ParameterizedTest
    @CsvSource({"12,40", "24,80"})
    void theSheetOfATripIsWrittenFromItsScreen(int rows, int columns) throws IOException {
        try (Walk walk = enterOne(atTrips(rows, columns))) {
            walk.press(Key.Named.ENTER).type("w").field("For the trip");
            assertThat(walk.screen()).contains("< 2026-12-05");
            walk.fill("File", folder.resolve("trip").toString()).press(SAVE);
        }
        assertThat(Files.readString(folder.resolve("trip.html")))
                .contains("Plan of the trip on 2026-12-05: club course", "Passed at")
                .doesNotContain("62 kg", "199 kg");
    }
}
