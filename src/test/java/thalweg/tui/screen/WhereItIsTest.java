package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.place.PositionText;
import thalweg.route.Obstacle;
import thalweg.route.Station;
import thalweg.testing.SampleRecords;

/** Whose coordinates a row of the line gives. */
class WhereItIsTest {

    private static final CanyonRecord CANYON = SampleRecords.CANYONS.stream()
            .filter(one -> one.canyon().position().isPresent())
            .findFirst()
            .orElseThrow();
    private static final LineRecord PLACE = CANYON.line().stream()
            .filter(one -> !one.stations().isEmpty())
            .findFirst()
            .orElseThrow();
    private static final StationRecord STATION = PLACE.stations().get(0);

    private static String of(LineRecord place, Optional<StationRecord> station) {
        WhereItIs found = WhereItIs.of(CANYON, Optional.of(place), station, RigCascadeTest.AROUND)
                .orElseThrow();
        return found.name() + " " + found.position().printDecimal();
    }

    private static LineRecord known(String coordinates) {
        Obstacle old = PLACE.obstacle();
        return new LineRecord(
                PLACE.number(),
                new Obstacle(
                        old.uid(),
                        old.canyon(),
                        old.order(),
                        old.kind(),
                        "Boulder",
                        old.distance(),
                        old.height(),
                        Optional.of(PositionText.parse(coordinates)),
                        old.note()),
                PLACE.stations());
    }

    private static StationRecord knownStation(String coordinates) {
        Station old = STATION.station();
        return new StationRecord(
                new Station(
                        old.uid(),
                        old.obstacle(),
                        old.order(),
                        "Left ledge",
                        old.side(),
                        old.ropeNeeded(),
                        Optional.of(PositionText.parse(coordinates)),
                        old.exposure(),
                        old.prose()),
                STATION.anchors(),
                STATION.notes(),
                STATION.analyses());
    }

    @Test
    void aStationsOwnComeFirst() {
        assertThat(of(known("1.5, 2.5"), Optional.of(knownStation("1.25, 2.25"))))
                .isEqualTo("Left ledge 1.250000, 2.250000");
    }

    @Test
    void thoseOfThePlaceStandForAStationWithout() {
        assertThat(of(known("1.5, 2.5"), Optional.of(STATION)))
                .contains("Boulder")
                .endsWith("1.500000, 2.500000");
    }

    @Test
    void thoseOfTheCanyonAreSaidToBeItsOwn() {
        assertThat(of(PLACE, Optional.of(STATION)))
                .isEqualTo(CANYON.canyon().name() + " "
                        + CANYON.canyon().position().orElseThrow().printDecimal());
    }

    @Test
    void nothingIsMadeUpWhereNobodyKnows() {
        CanyonRecord unknown = SampleRecords.CANYONS.stream()
                .filter(one -> one.canyon().position().isEmpty())
                .findFirst()
                .orElseThrow();

        assertThat(WhereItIs.of(unknown, Optional.empty(), Optional.empty(), RigCascadeTest.AROUND))
                .isEmpty();
    }
}
