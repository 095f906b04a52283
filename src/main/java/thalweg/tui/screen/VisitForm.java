package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.logbook.StationRecord;
import thalweg.logbook.WaterLevel;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * One visit to a station: what was found on every part.
 *
 * @param go which station, and where to begin
 */
record VisitForm(Go.Inspect go) implements FormTask {

    private StationRecord station() {
        return go.station();
    }

    private List<VisitFields.Inspected> parts() {
        return station().parts().stream()
                .map(part -> new VisitFields.Inspected(part, part.part().label()))
                .toList();
    }

    @Override
    public String title(Surroundings around) {
        return around.say("form.visit.new", station().station().name());
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.anew(DraftKind.VISIT, station().station().uid()));
    }

    @Override
    public Form form(Surroundings around) {
        Build build = new Build(around);
        RoundChoice.add(build, go.rounds(), Optional.empty(), around);
        build.day("on", "form.visit.on", around.today().toString())
                .signed("by", "form.visit.by", around.keeper())
                .maybe("water", "form.visit.water", "water", WaterLevel.class, Optional.empty());
        List<VisitFields.Inspected> parts = parts();
        VisitFields.add(build, parts, around);
        Form form = Form.of(build.done());
        return parts.stream()
                .filter(part ->
                        go.first().filter(part.record().part().uid()::equals).isPresent())
                .findFirst()
                .or(() -> parts.stream().findFirst())
                .map(part -> form.focusedOn(VisitFields.found(part)))
                .orElse(form);
    }

    @Override
    public Form adapted(Form before, Form after, Surroundings around) {
        return RoundChoice.filled(before, after, go.rounds());
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        return VisitFields.refusal(parts(), filled, around);
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        return new Ask.AddInspections(VisitFields.found(parts(), filled, RoundChoice.chosen(filled)));
    }
}
