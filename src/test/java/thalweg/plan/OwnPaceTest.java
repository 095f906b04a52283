package thalweg.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import thalweg.ledger.Uid;
import thalweg.logbook.Trip;
import thalweg.plan.PacedTrip.Moment;

/** What noted times teach, worked by hand, and what no set of times can change. */
class OwnPaceTest {

    private static final double USUAL = 0.25;

    private static final Paces FIGURES = new Paces(8, 3, 10, 4, 1.5, 20, USUAL);

    private static final Trip TRIP = new Trip(
            new Uid(new UUID(1, 1)),
            new Uid(new UUID(1, 2)),
            Trip.State.DONE,
            Optional.empty(),
            "course",
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "");

    private static PacedTrip paced(Double... ratios) {
        return new PacedTrip(TRIP, List.of(ratios), 0);
    }

    private static OwnPace pace(PacedTrip... trips) {
        return new OwnPace(List.of(trips));
    }

    /** Planned 30, 10 and 20 min; taken 36, 12 and 30. */
    @Test
    void eachLegIsTakenOverPlanned() {
        PacedTrip trip = PacedTrip.of(
                TRIP, List.of(new Moment(0, 600), new Moment(30, 636), new Moment(40, 648), new Moment(60, 678)));

        assertThat(trip.ratios()).containsExactly(1.2, 1.2, 1.5);
        assertThat(trip.factor().orElseThrow()).isCloseTo(1.2, within(1e-9));
        assertThat(trip.leftOut()).isZero();
    }

    /** A leg of 3 min is noted as 2, 3 or 4; with the 17 that follow it is one of 20, taken in 30. */
    @Test
    void aShortLegCountsWithTheNext() {
        PacedTrip trip = PacedTrip.of(TRIP, List.of(new Moment(0, 600), new Moment(3, 606), new Moment(20, 630)));

        assertThat(trip.ratios()).containsExactly(1.5);
    }

    @Test
    void midnightLiesBetween() {
        PacedTrip trip = PacedTrip.of(TRIP, List.of(new Moment(0, 1430), new Moment(20, 10)));

        assertThat(trip.ratios()).containsExactly(1.0);
    }

    @Test
    void aLegThatEndsBeforeItBeginsIsLeftOut() {
        PacedTrip trip = PacedTrip.of(
                TRIP, List.of(new Moment(0, 600), new Moment(20, 590), new Moment(40, 590), new Moment(60, 610)));

        assertThat(trip.ratios()).containsExactly(1.0);
        assertThat(trip.leftOut()).isEqualTo(2);
    }

    @Test
    void twoLegsAreTooFewToTell() {
        OwnPace pace = pace(paced(2.0, 2.0));

        assertThat(pace.factor()).isEmpty();
        assertThat(pace.spread(USUAL)).isEmpty();
        assertThat(pace.of(FIGURES)).isEqualTo(FIGURES);
    }

    /**
     * The middle of 0.8, 1, 1.25, 1.25 and 2 is 1.25. The logarithms are off by ln 1.5625, ln 1.25, 0, 0 and ln 1.6, in the
     * middle ln 1.25 = 0.22314: times 1.4826 that is 0.33083, wider by the root of 1 + 1.5708 / 5 it is 0.37922.
     */
    @Test
    void theMiddleOfAllLegsIsTheFactorAndTheirDistanceFromItTheSpread() {
        OwnPace pace = pace(paced(1.25, 2.0), paced(0.8, 1.25), paced(1.0));

        assertThat(pace.factor().orElseThrow()).isCloseTo(1.25, within(1e-9));
        assertThat(pace.spread(USUAL).orElseThrow()).isCloseTo(0.37922, within(1e-4));
        assertThat(pace.knowsDays()).isTrue();
    }

    /** All legs of one day that was even are no reason to believe that every day is like it. */
    @Test
    void legsOfTwoDaysAreNoNarrowerThanUsual() {
        assertThat(pace(paced(1.5, 1.5, 1.5), paced(1.5)).spread(USUAL)).contains(USUAL);
        assertThat(pace(paced(1.5), paced(1.5), paced(1.5)).spread(USUAL)).contains(0.0);
    }

    /** Twice as long: 16 min to rig, 5 m/min down, 10 m/min along the line. */
    @Test
    void thePacesOfTheNextTripAreSlowerByTheFactor() {
        Paces own = pace(paced(2.0, 2.0, 2.0)).of(FIGURES);

        assertThat(own).isEqualTo(new Paces(16, 6, 5, 8, 3, 10, USUAL));
    }

    /** One time that was noted an hour late leaves the middle where it was. */
    @Test
    void oneWrongTimeChangesLittle() {
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            moments.add(new Moment(20 * i, 600 + 24 * i));
        }
        moments.set(4, new Moment(80, 600 + 96 + 60));
        PacedTrip trip = PacedTrip.of(TRIP, moments);

        assertThat(trip.leftOut()).isEqualTo(1);
        assertThat(pace(trip).factor().orElseThrow()).isCloseTo(1.2, within(1e-9));
    }

    private static double[] randomRatios(Random random, int legs) {
        return random.doubles(legs, 0.3, 3).toArray();
    }

    private static PacedTrip scaled(double[] ratios, double by) {
        List<Double> all = new ArrayList<>();
        for (double ratio : ratios) {
            all.add(ratio * by);
        }
        return new PacedTrip(TRIP, all, 0);
    }

    @Test
    void timesThatAreLongerByAFactorMakeTheFactorLongerByIt() {
        Random random = new Random(3);
        for (int trial = 0; trial < 200; trial++) {
            double[] ratios = randomRatios(random, 3 + random.nextInt(9));
            double by = 0.5 + random.nextDouble() * 2;
            OwnPace once = pace(scaled(ratios, 1));
            OwnPace longer = pace(scaled(ratios, by));

            assertThat(longer.factor().orElseThrow())
                    .isCloseTo(by * once.factor().orElseThrow(), within(1e-9));
            assertThat(longer.spread(0).orElseThrow()).isCloseTo(once.spread(0).orElseThrow(), within(1e-9));
        }
    }

    @Test
    void neitherTheOrderOfLegsNorThatOfTripsMatters() {
        Random random = new Random(4);
        for (int trial = 0; trial < 200; trial++) {
            List<Double> legs = new ArrayList<>();
            for (double ratio : randomRatios(random, 6)) {
                legs.add(ratio);
            }
            List<PacedTrip> trips = new ArrayList<>(
                    List.of(new PacedTrip(TRIP, legs.subList(0, 2), 0), new PacedTrip(TRIP, legs.subList(2, 6), 0)));
            OwnPace before = new OwnPace(trips);
            Collections.shuffle(legs, random);
            Collections.shuffle(trips, random);
            OwnPace after = new OwnPace(
                    List.of(new PacedTrip(TRIP, legs.subList(0, 4), 0), new PacedTrip(TRIP, legs.subList(4, 6), 0)));

            assertThat(new OwnPace(trips).factor()).isEqualTo(before.factor());
            assertThat(after.factor()).isEqualTo(before.factor());
            assertThat(after.spread(USUAL)).isEqualTo(before.spread(USUAL));
        }
    }
}
