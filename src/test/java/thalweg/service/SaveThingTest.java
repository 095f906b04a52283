package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import thalweg.body.ThingBody;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.json.Json;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Revision;
import thalweg.place.Position;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.route.Station;
import thalweg.storage.Batch;
import thalweg.units.Length;

final class SaveThingTest {

    private final Desk desk = new Desk();
    private final SaveThing save = new SaveThing(desk.session());

    @AfterEach
    void close() {
        desk.close();
    }

    private static Station renamed(Station station, String name) {
        return new Station(
                station.uid(),
                station.obstacle(),
                station.order(),
                name,
                station.side(),
                station.ropeNeeded(),
                station.position(),
                Optional.empty(),
                station.prose());
    }

    private static Station at(Station station, Position position) {
        return new Station(
                station.uid(),
                station.obstacle(),
                station.order(),
                station.name(),
                station.side(),
                station.ropeNeeded(),
                Optional.of(position),
                Optional.empty(),
                station.prose());
    }

    @Test
    void aChangeIsARevisionOnTopOfTheLast() {
        Station before = desk.station().station();

        save.changed(ThingBody.of(before), ThingBody.of(renamed(before, "top")));

        Revision head = desk.session().ledger().head(before.uid()).orElseThrow();
        assertThat(head.gen()).isEqualTo(2);
        assertThat(head.author()).isEqualTo("ada");
        assertThat(desk.station().station().name()).isEqualTo("top");
    }

    @Test
    void nothingIsWrittenWhereNothingDiffers() {
        Station station = desk.station().station();

        save.changed(ThingBody.of(station), ThingBody.of(station));

        assertThat(desk.session().ledger().head(station.uid()).orElseThrow().gen())
                .isEqualTo(1);
    }

    @Test
    void aChangeFromAnOldStateIsRefusedAndNothingIsLost() {
        Station before = desk.station().station();
        save.changed(ThingBody.of(before), ThingBody.of(renamed(before, "theirs")));

        assertThatThrownBy(() -> save.changed(ThingBody.of(before), ThingBody.of(renamed(before, "mine"))))
                .isInstanceOf(ChangedMeanwhileException.class)
                .hasMessageContaining("\"first\" was changed from elsewhere");
        assertThat(desk.station().station().name()).isEqualTo("theirs");
    }

    @Test
    void whatSomebodyFilledInMeanwhileIsNotWrittenOver() {
        Station before = desk.station().station();
        Station theirs = at(before, new Position(1, 1, Optional.empty()));
        save.changed(ThingBody.of(before), ThingBody.of(theirs));

        Station mine = at(before, new Position(2, 2, Optional.empty()));
        assertThatThrownBy(() -> save.changed(ThingBody.of(before), ThingBody.of(mine)))
                .isInstanceOf(ChangedMeanwhileException.class);
        assertThat(desk.station().station()).isEqualTo(theirs);
    }

    @Test
    void fieldsOfANewerVersionAreKept() {
        Station before = desk.station().station();
        Revision head = desk.session().ledger().head(before.uid()).orElseThrow();
        Json.Fields newer = head.body().with("echo", Json.of("loud"));
        desk.session()
                .ledger()
                .append(new Batch(
                        List.of(head.next(newer, false, "bo", "2027-01-01T00:00:00Z")),
                        List.of(),
                        "Ana",
                        "2026-11-25T10:00:00Z"));

        save.changed(ThingBody.of(before), ThingBody.of(renamed(before, "top")));

        Json.Fields body =
                desk.session().ledger().head(before.uid()).orElseThrow().body();
        assertThat(body.field("echo")).contains(Json.of("loud"));
        assertThat(body.field("name")).contains(Json.of("top"));
    }

    @Test
    void aNewPlaceStandsWhereItsOrderSays() {
        Obstacle first = desk.canyon().line().get(0).obstacle();
        Obstacle before = new Obstacle(
                desk.session().mint(),
                first.canyon(),
                OrderKey.between("", first.order()),
                ObstacleKind.SWIM,
                "",
                Optional.empty(),
                Optional.of(new Length(12)),
                Optional.empty(),
                "");

        save.anew(ThingBody.of(before));

        assertThat(desk.canyon().line())
                .extracting(place -> place.obstacle().kind())
                .containsExactly(ObstacleKind.SWIM, ObstacleKind.DROP);
        assertThat(new CheckDatabase(desk.session()).findings()).isEmpty();
    }
}
