package thalweg.body;

import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.logbook.NoteText;
import thalweg.logbook.RiggingNote;

/** A rigging note as a body. The station it is about stands in the fact around it. */
public final class NoteBody {

    private NoteBody() {}

    /** Its fields. */
    public static Json.Fields write(RiggingNote note) {
        Json.Fields fields =
                Json.fields().put("on", note.on().print()).put("by", note.by()).done();
        return Fields.withProse(fields, note.prose());
    }

    /** The note; empty where a rule was broken. */
    public static Optional<RiggingNote> read(Uid station, FieldReader in) {
        var on = Fields.requiredDate(in, "on");
        String by = in.textOrEmpty("by", Limits.NAME);
        var prose = Fields.prose(in, NoteText.class);
        if (in.sound() && prose.texts().isEmpty()) {
            in.refuse("technique", Sentence.of("and every other heading is missing; a rigging note says something."));
        }
        return in.sound() ? Optional.of(new RiggingNote(station, on, by, prose)) : Optional.empty();
    }
}
