package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.body.Limits;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Round;
import thalweg.logbook.Trip;
import thalweg.logbook.WaterLevel;
import thalweg.route.PartialDate;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.Paragraph;

/**
 * A round down a canyon: who, when and the water once, then every part of every station in the order of the line. It is
 * saved as one change; left before, it waits as a draft.
 *
 * @param go down which canyon, and after which trip
 */
record DownForm(Go.GoDown go) implements FormTask {

    private CanyonRecord canyon() {
        return go.canyon();
    }

    private List<VisitFields.Inspected> parts() {
        return canyon().stations().stream()
                .flatMap(station -> station.parts().stream()
                        .map(part -> new VisitFields.Inspected(
                                part,
                                station.station().name() + ", " + part.part().label())))
                .toList();
    }

    @Override
    public String title(Surroundings around) {
        return around.say("form.down.title", canyon().canyon().name());
    }

    @Override
    public List<Paragraph> intro(Surroundings around) {
        Paragraph intro = Paragraph.of(around.say(parts().isEmpty() ? "form.down.no_parts" : "form.down.intro"));
        return go.trip().filter(trip -> !trip.people().isEmpty()).isPresent()
                ? List.of(intro, Paragraph.of(around.say("form.down.names"), Style.CAUTION))
                : List.of(intro);
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(
                DraftKind.DOWN, go.trip().map(Trip::uid), canyon().canyon().uid()));
    }

    @Override
    public Form form(Surroundings around) {
        Build build = new Build(around)
                .day("on", "form.visit.on", day(around))
                .text("by", "form.visit.by", by(around))
                .maybe(
                        "water",
                        "form.visit.water",
                        "water",
                        WaterLevel.class,
                        go.trip().flatMap(Trip::water))
                .text("round_note", "form.round.note", "");
        VisitFields.add(build, parts(), around);
        return hiding(Form.of(build.done()));
    }

    /** That of the trip where it is known and has come. */
    private String day(Surroundings around) {
        return go.trip()
                .flatMap(Trip::on)
                .filter(on -> on.hasBegunBy(around.today()))
                .map(PartialDate::print)
                .orElse(around.today().toString());
    }

    /** Those who went, as far as they fit. */
    private String by(Surroundings around) {
        String names = go.trip().stream()
                .flatMap(trip -> trip.people().stream())
                .map(Trip.Person::name)
                .collect(Collectors.joining(", "));
        return names.isEmpty() || names.length() > Limits.LINE ? around.keeper() : names;
    }

    private Form hiding(Form form) {
        return form.hiding(VisitFields.withoutEntry(parts(), form));
    }

    @Override
    public Form adapted(Form before, Form after, Surroundings around) {
        return hiding(after);
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        return VisitFields.refusal(parts(), filled, around);
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        Round round = new Round(
                canyon().canyon().uid(),
                PartialDate.parse(filled.text("on")),
                filled.text("by"),
                filled.word("water", WaterLevel.class),
                filled.text("round_note"));
        return new Ask.AddRoundDown(round, VisitFields.found(parts(), filled, Optional.empty()));
    }
}
