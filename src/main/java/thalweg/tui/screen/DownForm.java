package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Round;
import thalweg.logbook.WaterLevel;
import thalweg.route.PartialDate;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.Paragraph;

/**
 * A round down a canyon: who, when and the water once, then every part of every station in the order of the line. It is
 * saved as one change; left before, it waits as a draft.
 *
 * @param canyon down which it goes
 */
record DownForm(CanyonRecord canyon) implements FormTask {

    private List<VisitFields.Inspected> parts() {
        return canyon.stations().stream()
                .flatMap(station -> station.parts().stream()
                        .map(part -> new VisitFields.Inspected(
                                part,
                                station.station().name() + ", " + part.part().label())))
                .toList();
    }

    @Override
    public String title(Surroundings around) {
        return around.say("form.down.title", canyon.canyon().name());
    }

    @Override
    public List<Paragraph> intro(Surroundings around) {
        return List.of(Paragraph.of(around.say(parts().isEmpty() ? "form.down.no_parts" : "form.down.intro")));
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.anew(DraftKind.DOWN, canyon.canyon().uid()));
    }

    @Override
    public Form form(Surroundings around) {
        Build build = new Build(around)
                .day("on", "form.visit.on", around.today().toString())
                .text("by", "form.visit.by", around.keeper())
                .maybe("water", "form.visit.water", "water", WaterLevel.class, Optional.empty())
                .text("round_note", "form.round.note", "");
        VisitFields.add(build, parts(), around);
        return hiding(Form.of(build.done()));
    }

    private Form hiding(Form form) {
        return form.hiding(VisitFields.withoutEntry(parts(), form));
    }

    @Override
    public Form adapted(Form before, Form after) {
        return hiding(after);
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        return VisitFields.refusal(parts(), filled, around);
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        Round round = new Round(
                canyon.canyon().uid(),
                PartialDate.parse(filled.text("on")),
                filled.text("by"),
                filled.word("water", WaterLevel.class),
                filled.text("round_note"));
        return new Ask.AddRoundDown(round, VisitFields.found(parts(), filled, Optional.empty()));
    }
}
