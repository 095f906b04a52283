package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.body.ThingBody;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.fault.InputException;
import thalweg.ledger.Uid;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.PrivateNote;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.route.PartialDate;
import thalweg.units.Mass;

final class KeepLocalTest {

    private final Desk desk = new Desk();
    private final KeepLocal keep = new KeepLocal(desk.session());
    private final Uid canyon = desk.canyon().canyon().uid();
    private final Uid station = desk.station().station().uid();

    private LocalRecord local() {
        return desk.session().records().local(canyon);
    }

    private Trip trip(Trip.State state, String on) {
        return new Trip(
                desk.session().mint(),
                canyon,
                state,
                Optional.of(PartialDate.parse(on)),
                "course",
                List.of(new Trip.Person("Ana", Optional.of(Trip.Role.LEAD), Optional.of(new Mass(62.5)))),
                List.of(),
                Optional.of(510),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    @Test
    void aTripIsEnteredChangedAndTakenOut() {
        Trip planned = trip(Trip.State.PLANNED, "2026-12-05");
        keep.trip(Optional.empty(), planned);
        assertThat(local().trips()).containsExactly(planned);

        Trip done = trip(Trip.State.DONE, "2026-11-21");
        Trip after = new Trip(
                planned.uid(),
                canyon,
                done.state(),
                done.on(),
                "",
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        keep.trip(Optional.of(planned), after);
        assertThat(new ListTrips(desk.session()).of(Optional.of(canyon)))
                .extracting(TripInCanyon::trip)
                .containsExactly(after);
        assertThat(new ListTrips(desk.session()).of(Optional.empty()))
                .extracting(one -> one.canyon().name())
                .containsExactly("Probe");
        assertThat(new ListTrips(desk.session()).of(Optional.of(station))).isEmpty();

        keep.remove(after, "entered twice");
        assertThat(local().trips()).isEmpty();
        assertThat(new ListTrips(desk.session()).byId(after.uid())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "DONE, 2026-11-26, The day 2026-11-26 has not come yet",
        "PLANNED, 3000, The day 3000 lies more than 5 years ahead",
        "PLANNED, 1850-06, The day 1850-06 lies before 1900."
    })
    void aDayThatIsNotBelievedIsRefused(Trip.State state, String on, String sentence) {
        assertThatThrownBy(() -> keep.trip(Optional.empty(), trip(state, on)))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(sentence);
        assertThat(local().trips()).isEmpty();
    }

    @Test
    void aTripThatWasChangedFromElsewhereIsNotOverwritten() {
        Trip planned = trip(Trip.State.PLANNED, "2026-12-05");
        keep.trip(Optional.empty(), planned);
        Trip other = trip(Trip.State.PLANNED, "2026-12-06");
        Trip moved = new Trip(
                planned.uid(),
                canyon,
                Trip.State.PLANNED,
                other.on(),
                "",
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        keep.trip(Optional.of(planned), moved);

        assertThatThrownBy(() -> keep.trip(Optional.of(planned), trip(Trip.State.PLANNED, "2026-12-07")))
                .isInstanceOf(ChangedMeanwhileException.class);
        assertThat(local().trips()).containsExactly(moved);
    }

    @Test
    void thereIsOnePrivateNoteAboutAThing() {
        keep.note(station, List.of(), "loose block on the left");
        assertThat(local().noteAbout(station)).contains("loose block on the left");

        keep.note(station, local().notesAbout(station), "loose block on the right");
        assertThat(local().notes()).extracting(PrivateNote::text).containsExactly("loose block on the right");

        keep.note(station, local().notesAbout(station), " \n");
        assertThat(local().notes()).isEmpty();
        keep.note(station, List.of(), "");
        assertThat(local().isEmpty()).isTrue();
    }

    @Test
    void aSecondNoteAboutTheSameThingGoesIntoTheFirst() {
        keep.note(station, List.of(), "one");
        keep.note(station, List.of(), "two");
        assertThat(local().noteAbout(station).orElseThrow().split("\n\n")).containsExactlyInAnyOrder("one", "two");

        keep.note(station, local().notesAbout(station), "both");

        assertThat(local().notes()).extracting(PrivateNote::text).containsExactly("both");
    }

    @Test
    void aNoteAboutWhatWasTakenOutStaysBehindWithIt() {
        keep.note(canyon, List.of(), "about the canyon");
        keep.note(station, List.of(), "about the station");

        new SaveThing(desk.session()).removed(ThingBody.of(desk.station().station()), "fell down");

        assertThat(local().notes()).extracting(PrivateNote::text).containsExactly("about the canyon");
    }
}
