package thalweg.tui.screen;

import thalweg.logbook.NoteText;
import thalweg.logbook.RiggingNote;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * A rigging note to write.
 *
 * @param go which station it is about
 */
record NoteForm(Go.WriteNote go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return around.say("form.note.new", go.stationName());
    }

    @Override
    public Form form(Surroundings around) {
        return Form.of(new Build(around)
                .day("on", "form.note.on", around.today().toString())
                .text("by", "form.note.by", around.keeper())
                .prose("note_text", NoteText.class, Prose.none())
                .done());
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        return filled.prose(NoteText.class).texts().isEmpty() ? around.say("form.note.empty") : "";
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        return new Ask.AddNote(new RiggingNote(
                go.station(), PartialDate.parse(filled.text("on")), filled.text("by"), filled.prose(NoteText.class)));
    }
}
