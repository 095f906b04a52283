package thalweg.tui.screen;

import java.util.Optional;
import thalweg.body.ThingBody;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.place.Position;
import thalweg.place.PositionText;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * A place on the line to enter or edit.
 *
 * @param go which, and where a new one stands
 */
record ObstacleForm(Go.EditObstacle go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return around.say(go.obstacle().isPresent() ? "form.place.edit" : "form.place.new");
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.OBSTACLE, go.obstacle().map(Obstacle::uid), go.canyon()));
    }

    @Override
    public Form form(Surroundings around) {
        Optional<Obstacle> before = go.obstacle();
        return Form.of(new Build(around)
                .word(
                        "kind",
                        "form.place.kind",
                        "obstacle",
                        ObstacleKind.class,
                        before.map(Obstacle::kind).orElse(ObstacleKind.DROP))
                .value(
                        "height",
                        "form.place.height",
                        before.flatMap(Obstacle::height)
                                .map(one -> one.print(around.units()))
                                .orElse(""),
                        Quantities::height)
                .value(
                        "distance",
                        "form.place.distance",
                        before.flatMap(Obstacle::distance)
                                .map(one -> one.print(around.units()))
                                .orElse(""),
                        Quantities::distance)
                .text("name", "form.place.name", before.map(Obstacle::name).orElse(""))
                .value(
                        "position",
                        "form.place.position",
                        before.flatMap(Obstacle::position).map(Position::print).orElse(""),
                        PositionText::parse)
                .value(
                        "way_out",
                        "form.place.way_out",
                        before.flatMap(Obstacle::wayOut).map(String::valueOf).orElse(""),
                        Quantities::minutes)
                .lines("note", "form.place.note", before.map(Obstacle::note).orElse(""))
                .done());
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        boolean misplaced = !filled.text("way_out").isBlank() && kind(filled) != ObstacleKind.ESCAPE;
        return misplaced ? around.say("form.place.way_out.misplaced") : "";
    }

    private static ObstacleKind kind(Filled filled) {
        return filled.word("kind", ObstacleKind.class).orElseThrow();
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        Obstacle after = new Obstacle(
                go.uid(),
                go.canyon(),
                go.order(),
                kind(filled),
                filled.text("name"),
                filled.value("distance", go.obstacle().flatMap(Obstacle::distance), Quantities::distance),
                filled.value("height", go.obstacle().flatMap(Obstacle::height), Quantities::height),
                filled.value("position", go.obstacle().flatMap(Obstacle::position), PositionText::parse),
                filled.text("note"),
                kind(filled) == ObstacleKind.ESCAPE
                        ? filled.value("way_out", go.obstacle().flatMap(Obstacle::wayOut), Quantities::minutes)
                        : Optional.empty());
        return Save.of(go.obstacle().map(ThingBody::of), ThingBody.of(after));
    }
}
