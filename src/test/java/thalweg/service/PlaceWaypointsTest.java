package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import thalweg.body.ThingBody;
import thalweg.exchange.gpx.Waypoint;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.place.Position;
import thalweg.placing.Decision;
import thalweg.placing.Placing;
import thalweg.placing.Spot;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.route.Prose;
import thalweg.route.StationText;
import thalweg.route.Times;
import thalweg.storage.Batch;
import thalweg.units.Length;

final class PlaceWaypointsTest {

    private final Desk desk = new Desk();
    private final PlaceWaypoints place = new PlaceWaypoints(desk.session());

    @AfterEach
    void close() {
        desk.close();
    }

    private static Waypoint waypoint(int number) {
        return new Waypoint(
                number + 1,
                Waypoint.Origin.WAYPOINT,
                "W" + number,
                position(number),
                Optional.of(new Length(700)),
                "",
                "note " + number,
                "",
                "",
                "");
    }

    private static Position position(int number) {
        return new Position(331_000_000 + number, -407_000_000 - number, Optional.empty());
    }

    private static List<Waypoint> waypoints(int count) {
        return IntStream.range(0, count).mapToObj(PlaceWaypointsTest::waypoint).toList();
    }

    private CanyonRecord fresh() {
        return new CanyonRecord(
                new Canyon(
                        desk.session().mint(),
                        "Fresh",
                        List.of(),
                        "",
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Times.UNKNOWN,
                        Optional.empty(),
                        Prose.none(),
                        false),
                List.of());
    }

    private CanyonRecord stored(CanyonRecord canyon) {
        return new FindRecord(desk.session()).byId(canyon.canyon().uid()).orElseThrow();
    }

    @Test
    void aNewCanyonComesWithItsLineAndItsStationsAtOnce() {
        CanyonRecord fresh = fresh();
        Placing placing = Placing.start(fresh, true, waypoints(5))
                .decided(0, new Decision.CanyonStart())
                .newPlace(1, ObstacleKind.DROP, 0)
                .newPlace(2, ObstacleKind.SWIM, 1)
                .decided(3, new Decision.NewStation(new Spot.Made(1), "top"))
                .decided(4, new Decision.LeftOut());

        place.write(placing);

        CanyonRecord canyon = stored(fresh);
        assertThat(canyon.canyon().position()).contains(position(0));
        assertThat(canyon.line())
                .extracting(at -> at.obstacle().kind())
                .containsExactly(ObstacleKind.DROP, ObstacleKind.SWIM);
        Obstacle drop = canyon.line().get(0).obstacle();
        assertThat(drop.name()).isEqualTo("W1");
        assertThat(drop.note()).isEqualTo("note 1");
        assertThat(drop.position()).contains(position(1));
        assertThat(canyon.stations()).hasSize(1);
        var station = canyon.line().get(0).stations().get(0).station();
        assertThat(station.name()).isEqualTo("top");
        assertThat(station.position()).contains(position(3));
        assertThat(station.prose().under(StationText.NOTES)).contains("note 3");
        assertThat(new CheckDatabase(desk.session()).findings()).isEmpty();
    }

    @Test
    void noHeightAndNoDistanceComesFromAWaypoint() {
        CanyonRecord fresh = fresh();

        place.write(Placing.start(fresh, true, waypoints(3)).restAsPlaces(ObstacleKind.DROP, 0));

        assertThat(stored(fresh).line()).hasSize(3).allSatisfy(at -> {
            assertThat(at.obstacle().height()).isEmpty();
            assertThat(at.obstacle().distance()).isEmpty();
        });
        assertThat(stored(fresh).longestDrop()).isEmpty();
    }

    @Test
    void placesStandWherePeoplePutThemAmongThoseThatWereThere() {
        Placing placing = Placing.start(desk.canyon(), false, waypoints(4))
                .newPlace(0, ObstacleKind.WALK, 0)
                .newPlace(1, ObstacleKind.SWIM, 2)
                .newPlace(2, ObstacleKind.SLIDE, 1)
                .newPlace(3, ObstacleKind.JUMP, 4);

        place.write(placing);

        assertThat(desk.canyon().line())
                .extracting(at -> at.obstacle().kind())
                .containsExactly(
                        ObstacleKind.WALK, ObstacleKind.SLIDE, ObstacleKind.DROP, ObstacleKind.SWIM, ObstacleKind.JUMP);
    }

    @Test
    void hundredsOfPlacesFitBetweenTwo() {
        place.write(Placing.start(desk.canyon(), false, waypoints(1)).newPlace(0, ObstacleKind.WALK, 1));
        CanyonRecord before = desk.canyon();

        place.write(Placing.start(before, false, waypoints(500)).restAsPlaces(ObstacleKind.DROP, 1));

        List<LineRecord> line = desk.canyon().line();
        assertThat(line).hasSize(502);
        assertThat(line.get(0).obstacle()).isEqualTo(before.line().get(0).obstacle());
        assertThat(line.get(501).obstacle()).isEqualTo(before.line().get(1).obstacle());
        assertThat(line.subList(1, 501))
                .extracting(at -> at.obstacle().name())
                .containsExactlyElementsOf(
                        waypoints(500).stream().map(Waypoint::name).toList());
    }

    @Test
    void whatWasThereKeepsEverythingButItsCoordinates() {
        CanyonRecord before = desk.canyon();
        Uid obstacle = before.line().get(0).obstacle().uid();
        Uid station = before.stations().get(0).station().uid();
        Placing placing = Placing.start(before, false, waypoints(3))
                .decided(0, new Decision.PlacePosition(obstacle))
                .decided(1, new Decision.StationPosition(station))
                .decided(2, new Decision.NewStation(new Spot.Known(obstacle), "second"));

        place.write(placing);

        LineRecord after = desk.canyon().line().get(0);
        assertThat(after.obstacle().position()).contains(position(0));
        assertThat(after.obstacle().height())
                .isEqualTo(before.line().get(0).obstacle().height());
        assertThat(after.stations()).extracting(one -> one.station().name()).containsExactly("first", "second");
        assertThat(after.stations().get(0).station().position()).contains(position(1));
        assertThat(after.stations().get(0).parts())
                .isEqualTo(before.stations().get(0).parts());
        Revision head = desk.session().ledger().head(obstacle).orElseThrow();
        assertThat(head.gen()).isEqualTo(2);
        assertThat(new CheckDatabase(desk.session()).findings()).isEmpty();
    }

    @Test
    void oneChangeFromElsewhereAndNothingIsWritten() {
        CanyonRecord before = desk.canyon();
        Obstacle old = before.line().get(0).obstacle();
        Placing placing = Placing.start(before, false, waypoints(2))
                .newPlace(0, ObstacleKind.SWIM, 1)
                .decided(1, new Decision.PlacePosition(old.uid()));
        Obstacle theirs = new Obstacle(
                old.uid(),
                old.canyon(),
                old.order(),
                old.kind(),
                "theirs",
                old.distance(),
                old.height(),
                old.position(),
                old.note());
        new SaveThing(desk.session()).changed(ThingBody.of(old), ThingBody.of(theirs));
        CanyonRecord now = desk.canyon();

        assertThatThrownBy(() -> place.write(placing)).isInstanceOf(ChangedMeanwhileException.class);

        assertThat(desk.canyon()).isEqualTo(now);
    }

    @Test
    void nothingIsHungOnACanyonThatWasTakenOutMeanwhile() {
        CanyonRecord before = desk.canyon();
        Revision head = desk.session().ledger().head(before.canyon().uid()).orElseThrow();
        desk.session()
                .ledger()
                .append(new Batch(
                        List.of(head.next(head.body(), true, "bo", "2027-01-01T00:00:00Z")),
                        List.of(),
                        "bo",
                        "2027-01-01T00:00:00Z"));
        Placing placing = Placing.start(before, false, waypoints(1)).newPlace(0, ObstacleKind.SWIM, 0);

        assertThatThrownBy(() -> place.write(placing))
                .isInstanceOf(ChangedMeanwhileException.class)
                .hasMessageContaining("nothing was saved");
    }

    @Test
    void nothingDecidedIsNothingWrittenOnACanyonThatWasThere() {
        CanyonRecord before = desk.canyon();

        place.write(Placing.start(before, false, waypoints(3)).decided(1, new Decision.LeftOut()));

        assertThat(desk.canyon()).isEqualTo(before);
    }
}
