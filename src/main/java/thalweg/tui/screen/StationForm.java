package thalweg.tui.screen;

import java.util.Optional;
import thalweg.body.ThingBody;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.place.Position;
import thalweg.place.PositionText;
import thalweg.route.Exposure;
import thalweg.route.Prose;
import thalweg.route.Side;
import thalweg.route.Station;
import thalweg.route.StationText;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * A station to enter or edit.
 *
 * @param go which, and where a new one stands
 */
record StationForm(Go.EditStation go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return go.station()
                .map(station -> around.say("form.station.edit", station.name()))
                .orElseGet(() -> around.say("form.station.new"));
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.STATION, go.station().map(Station::uid), go.obstacle()));
    }

    @Override
    public Form form(Surroundings around) {
        Optional<Station> before = go.station();
        return Form.of(new Build(around)
                .name("name", "form.station.name", before.map(Station::name).orElse(""))
                .maybe("side", "form.station.side", "side", Side.class, before.flatMap(Station::side))
                .value(
                        "rope",
                        "form.station.rope",
                        before.flatMap(Station::ropeNeeded)
                                .map(one -> one.print(around.units()))
                                .orElse(""),
                        Quantities::rope)
                .value(
                        "position",
                        "form.station.position",
                        before.flatMap(Station::position).map(Position::print).orElse(""),
                        PositionText::parse)
                .maybe(
                        "exposure",
                        "form.station.exposure",
                        "exposure",
                        Exposure.class,
                        before.flatMap(Station::exposure))
                .prose(
                        "station_text",
                        StationText.class,
                        before.map(Station::prose).orElse(Prose.none()))
                .done());
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        Station after = new Station(
                go.uid(),
                go.obstacle(),
                go.order(),
                filled.text("name"),
                filled.word("side", Side.class),
                filled.value("rope", go.station().flatMap(Station::ropeNeeded), Quantities::rope),
                filled.value("position", go.station().flatMap(Station::position), PositionText::parse),
                filled.word("exposure", Exposure.class),
                filled.prose(StationText.class));
        return Save.of(go.station().map(ThingBody::of), ThingBody.of(after));
    }
}
