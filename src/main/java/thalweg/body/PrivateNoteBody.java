package thalweg.body;

import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.logbook.PrivateNote;

/** A private note as a body. */
public final class PrivateNoteBody {

    /** The key of what it is about. */
    public static final String PARENT = "about";

    private PrivateNoteBody() {}

    /** Its fields. */
    public static Json.Fields write(PrivateNote note) {
        return Json.fields()
                .put(PARENT, note.about().text())
                .put("text", note.text())
                .done();
    }

    /** The note; empty where a rule was broken. */
    public static Optional<PrivateNote> read(Uid uid, Uid about, FieldReader in) {
        String text = in.linesOrEmpty("text", Limits.PROSE);
        if (in.sound() && text.isBlank()) {
            in.refuse("text", Sentence.of("is missing; a private note says something."));
        }
        return in.sound() ? Optional.of(new PrivateNote(uid, about, text)) : Optional.empty();
    }
}
