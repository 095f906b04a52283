package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;
import thalweg.units.Mass;

final class TripTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static Trip trip(Trip.State state, String on, Trip.Person... people) {
        return new Trip(
                new Uid(new UUID(1, 1)),
                new Uid(new UUID(1, 2)),
                state,
                Optional.of(on).filter(day -> !day.isEmpty()).map(PartialDate::parse),
                "",
                List.of(people),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    @Test
    void whatIsPlannedComesFirstThenWhatWasDoneNewestFirst() {
        List<Trip> inTurn = List.of(
                trip(Trip.State.PLANNED, "2026-12-01"),
                trip(Trip.State.PLANNED, "2027-05"),
                trip(Trip.State.PLANNED, ""),
                trip(Trip.State.DONE, "2026-10-01"),
                trip(Trip.State.DONE, "2024"),
                trip(Trip.State.DONE, ""),
                trip(Trip.State.CALLED_OFF, "2026-12-05"),
                trip(Trip.State.CALLED_OFF, "2026-11-05"));
        List<Trip> shuffled = new ArrayList<>(inTurn);
        for (int seed = 0; seed < 20; seed++) {
            Collections.shuffle(shuffled, new Random(seed));

            assertThat(shuffled.stream().sorted(Trip.IN_TURN).toList()).isEqualTo(inTurn);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "PLANNED, 2026-11-26, ''",
        "PLANNED, 2031-11-25, ''",
        "PLANNED, 2031, ''",
        "PLANNED, 2031-11-26, lies more than 5 years ahead",
        "PLANNED, 3000, lies more than 5 years ahead",
        "CALLED_OFF, 3000, lies more than 5 years ahead",
        "CALLED_OFF, 2026-12-24, ''",
        "DONE, 2026-11-25, ''",
        "DONE, 2026, ''",
        "DONE, 2026-11-26, has not come yet",
        "DONE, 3000, has not come yet",
        "DONE, 1900, ''",
        "DONE, 1899-12-31, lies before 1900",
        "PLANNED, 1850, lies before 1900"
    })
    void daysBeyondBeliefAreDoubted(Trip.State state, String on, String doubt) {
        Optional<String> found = Trip.doubt(state, PartialDate.parse(on), TODAY).map(Sentence::toString);

        assertThat(found.isPresent()).isEqualTo(!doubt.isEmpty());
        assertThat(found.orElse("")).startsWith(doubt);
    }

    @Test
    void aPlannedTripIsOverdueOnceItsDayIsOver() {
        assertThat(trip(Trip.State.PLANNED, "2026-11-24").isOverdue(TODAY)).isTrue();
        assertThat(Stream.of("2026-11-25", "2026-11", "2026", "")
                        .map(on -> trip(Trip.State.PLANNED, on).isOverdue(TODAY)))
                .containsOnly(false);
        assertThat(trip(Trip.State.DONE, "2026-11-24").isOverdue(TODAY)).isFalse();
    }

    @Test
    void onlyKnownWeightsAreAdded() {
        Trip trip = trip(
                Trip.State.PLANNED,
                "",
                new Trip.Person("Ana", Optional.empty(), Optional.of(new Mass(62.5))),
                new Trip.Person("Bo", Optional.empty(), Optional.empty()),
                new Trip.Person("Cy", Optional.empty(), Optional.of(new Mass(80))));

        assertThat(trip.weighed()).isEqualTo(2);
        assertThat(trip.weightKnown()).isEqualTo(new Mass(142.5));
    }
}
