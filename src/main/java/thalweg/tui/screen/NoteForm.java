package thalweg.tui.screen;

import java.util.Optional;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.ledger.Uid;
import thalweg.logbook.Entry;
import thalweg.logbook.NoteText;
import thalweg.logbook.RiggingNote;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * A rigging note to write, or to correct.
 *
 * @param station it is about
 * @param stationName how people call that
 * @param wrong what was wrong; empty for a new one
 */
record NoteForm(Uid station, String stationName, Optional<Entry<RiggingNote>> wrong) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return around.say(wrong.isPresent() ? "form.note.correct" : "form.note.new", stationName);
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.NOTE, wrong.map(Entry::uid), station));
    }

    @Override
    public Form form(Surroundings around) {
        Optional<RiggingNote> before = wrong.map(Entry::content);
        Build build = new Build(around)
                .day(
                        "on",
                        "form.note.on",
                        before.map(note -> note.on().print())
                                .orElse(around.today().toString()))
                .signed("by", "form.note.by", before.map(RiggingNote::by).orElse(around.keeper()))
                .prose(
                        "note_text",
                        NoteText.class,
                        before.map(RiggingNote::prose).orElse(Prose.none()));
        return Form.of((before.isPresent() ? build.reason() : build).done());
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        return filled.prose(NoteText.class).texts().isEmpty() ? around.say("form.note.empty") : "";
    }

    @Override
    public Effect ask(Filled filled, Surroundings around) {
        RiggingNote note = new RiggingNote(
                station, PartialDate.parse(filled.text("on")), filled.text("by"), filled.prose(NoteText.class));
        return wrong.<Effect>map(entry -> new Amend.CorrectNote(entry.uid(), note, filled.text(Build.REASON)))
                .orElseGet(() -> new Ask.AddNote(note));
    }
}
