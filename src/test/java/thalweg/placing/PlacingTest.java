package thalweg.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thalweg.exchange.gpx.Waypoint;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.place.Position;
import thalweg.route.ObstacleKind;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

class PlacingTest {

    private static final Spot FIRST = new Spot.Made(0);

    private static CanyonRecord canyon(int places) {
        RandomRecords random = new RandomRecords(1, Fill.NOTHING);
        Uid uid = random.uid();
        List<LineRecord> line = IntStream.rangeClosed(1, places)
                .mapToObj(number ->
                        new LineRecord(number, random.things().obstacle(random.uid(), uid, "V" + number), List.of()))
                .toList();
        return new CanyonRecord(random.things().canyon(uid), line);
    }

    private static Placing start(int places, int waypoints) {
        List<Waypoint> all = IntStream.range(0, waypoints)
                .mapToObj(i -> new Waypoint(
                        1,
                        Waypoint.Origin.WAYPOINT,
                        "same",
                        new Position(i, i, Optional.empty()),
                        Optional.empty(),
                        "",
                        "",
                        "",
                        "",
                        ""))
                .toList();
        return Placing.start(canyon(places), false, all);
    }

    private static Spot known(Placing placing, int place) {
        return new Spot.Known(placing.canyon().line().get(place).obstacle().uid());
    }

    @Test
    void nothingIsDecidedUntilAPersonDecides() {
        Placing placing = start(2, 3);

        assertThat(placing.undecided()).isEqualTo(3);
        assertThat(placing.taken()).isZero();
        assertThat(placing.line()).hasSize(2);
    }

    @Test
    void aNewPlaceMovesWhereItIsPutAgain() {
        Placing placing = start(2, 1).newPlace(0, ObstacleKind.DROP, 0).newPlace(0, ObstacleKind.SWIM, 3);

        assertThat(placing.line()).containsExactly(known(placing, 0), known(placing, 1), FIRST);
        assertThat(placing.decisions()).containsExactly(new Decision.NewPlace(ObstacleKind.SWIM));

        Placing between = placing.newPlace(0, ObstacleKind.SWIM, 1);
        assertThat(between.line()).containsExactly(known(placing, 0), FIRST, known(placing, 1));
        assertThat(between.newPlace(0, ObstacleKind.SWIM, 1)).isEqualTo(between);
    }

    @Test
    void anotherDecisionTakesThePlaceOffTheLine() {
        Placing placing = start(1, 1).newPlace(0, ObstacleKind.DROP, 1).decided(0, new Decision.LeftOut());

        assertThat(placing.line()).hasSize(1);
        assertThat(placing.undecided()).isZero();
        assertThat(placing.taken()).isZero();
    }

    @Test
    void aPlaceThatCarriesAStationStaysAPlace() {
        Placing placing =
                start(0, 2).newPlace(0, ObstacleKind.DROP, 0).decided(1, new Decision.NewStation(FIRST, "top"));

        assertThat(placing.refusal(0, new Decision.LeftOut())).contains(Refusal.CARRIES_A_STATION);
        assertThat(placing.refusal(0, new Decision.NewPlace(ObstacleKind.JUMP))).isEmpty();
        assertThat(placing.stationsAt(FIRST)).containsExactly(1);
        assertThatIllegalArgumentException().isThrownBy(() -> placing.decided(0, new Decision.LeftOut()));
    }

    @Test
    void aWaypointIsNoStationAtThePlaceThatItIs() {
        Placing placing = start(0, 1).newPlace(0, ObstacleKind.DROP, 0);

        assertThat(placing.refusal(0, new Decision.NewStation(FIRST, "top"))).contains(Refusal.IS_THE_PLACE);
    }

    @Test
    void onlyOneWaypointSaysWhereSomethingIs() {
        Decision start = new Decision.CanyonStart();
        Placing placing = start(1, 2).decided(0, start);

        assertThat(placing.refusal(1, start)).contains(Refusal.TAKEN_BY_ANOTHER);
        assertThat(placing.refusal(0, start)).isEmpty();
        Decision place = new Decision.PlacePosition(
                placing.canyon().line().get(0).obstacle().uid());
        assertThat(placing.decided(0, place).refusal(1, place)).contains(Refusal.TAKEN_BY_ANOTHER);
        assertThat(placing.decided(0, place).refusal(1, start)).isEmpty();
        Decision station = new Decision.StationPosition(Uid.minted(1, new UUID(1, 1)));
        assertThat(placing.decided(0, station).refusal(1, station)).contains(Refusal.TAKEN_BY_ANOTHER);
    }

    @Test
    void theRestBecomesPlacesInTheOrderOfTheFile() {
        Placing placing = start(2, 4).decided(1, new Decision.LeftOut()).restAsPlaces(ObstacleKind.DROP, 1);

        assertThat(placing.line())
                .containsExactly(known(placing, 0), FIRST, new Spot.Made(2), new Spot.Made(3), known(placing, 1));
        assertThat(placing.decisions().get(1)).isEqualTo(new Decision.LeftOut());
        assertThat(placing.undecided()).isZero();
    }

    @Test
    void theNextUndecidedIsLookedForRoundTheEnd() {
        Placing placing = start(0, 3).decided(2, new Decision.LeftOut());

        assertThat(placing.nextUndecided(1)).isEqualTo(1);
        assertThat(placing.nextUndecided(2)).isZero();
        assertThat(start(0, 1).decided(0, new Decision.LeftOut()).nextUndecided(0))
                .isZero();
    }

    /** However people decide and decide again, the line and the decisions say the same. */
    @Test
    void lineAndDecisionsNeverPart() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            Placing placing = start(random.nextInt(4), 1 + random.nextInt(6));
            for (int step = 0; step < 30; step++) {
                placing = after(placing, random);

                Placing now = placing;
                assertThat(now.line()).doesNotHaveDuplicates();
                assertThat(now.line().stream().filter(Spot.Known.class::isInstance))
                        .containsExactlyElementsOf(
                                Placing.start(now.canyon(), false, List.of()).line());
                for (int i = 0; i < now.waypoints().size(); i++) {
                    boolean onLine = now.line().contains(new Spot.Made(i));
                    assertThat(now.decisions().get(i) instanceof Decision.NewPlace)
                            .isEqualTo(onLine);
                    if (now.decisions().get(i) instanceof Decision.NewStation station) {
                        assertThat(now.line()).contains(station.at());
                    }
                }
            }
        }
    }

    private static Placing after(Placing placing, Random random) {
        int waypoint = random.nextInt(placing.waypoints().size());
        ObstacleKind kind = List.of(ObstacleKind.values()).get(random.nextInt(ObstacleKind.values().length));
        int at = random.nextInt(placing.line().size() + 1);
        switch (random.nextInt(6)) {
            case 0 -> {
                return placing.newPlace(waypoint, kind, at);
            }
            case 1 -> {
                return random.nextInt(5) == 0 ? placing.restAsPlaces(kind, at) : placing;
            }
            default -> {
                Decision decision = decision(placing, random);
                return placing.refusal(waypoint, decision).isEmpty() ? placing.decided(waypoint, decision) : placing;
            }
        }
    }

    private static Decision decision(Placing placing, Random random) {
        if (placing.line().isEmpty() || random.nextBoolean()) {
            return random.nextBoolean() ? new Decision.CanyonStart() : new Decision.LeftOut();
        }
        Spot spot = placing.line().get(random.nextInt(placing.line().size()));
        return spot instanceof Spot.Known known && random.nextBoolean()
                ? new Decision.PlacePosition(known.obstacle())
                : new Decision.NewStation(spot, "s");
    }
}
