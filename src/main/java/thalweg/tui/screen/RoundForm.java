package thalweg.tui.screen;

import java.util.Optional;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.logbook.Entry;
import thalweg.logbook.Round;
import thalweg.logbook.WaterLevel;
import thalweg.route.PartialDate;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * A round to enter, or to correct.
 *
 * @param go in which canyon, and what was wrong
 */
record RoundForm(Go.EditRound go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return around.say(go.wrong().isPresent() ? "form.round.correct" : "form.round.new", go.canyonName());
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.ROUND, go.wrong().map(Entry::uid), go.canyon()));
    }

    @Override
    public Form form(Surroundings around) {
        Optional<Round> before = go.wrong().map(Entry::content);
        Build build = new Build(around)
                .day(
                        "on",
                        "form.visit.on",
                        before.map(round -> round.on().print())
                                .orElse(around.today().toString()))
                .signed("by", "form.visit.by", before.map(Round::by).orElse(around.keeper()))
                .maybe("water", "form.visit.water", "water", WaterLevel.class, before.flatMap(Round::water))
                .lines("note", "form.round.note", before.map(Round::note).orElse(""));
        return Form.of((before.isPresent() ? build.reason() : build).done());
    }

    @Override
    public Effect ask(Filled filled, Surroundings around) {
        Round round = new Round(
                go.canyon(),
                PartialDate.parse(filled.text("on")),
                filled.text("by"),
                filled.word("water", WaterLevel.class),
                filled.text("note"));
        return go.wrong()
                .<Effect>map(wrong -> new Amend.CorrectRound(wrong.uid(), round, filled.text(Build.REASON)))
                .orElseGet(() -> new Ask.AddRound(round));
    }
}
