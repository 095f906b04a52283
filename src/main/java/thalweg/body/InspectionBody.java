package thalweg.body;

import java.util.List;
import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.logbook.Photo;
import thalweg.logbook.WaterLevel;
import thalweg.logbook.Work;
import thalweg.route.PartialDate;

/** An inspection as a body. The part it is about stands in the fact around it. */
public final class InspectionBody {

    private static final String NOT_SEEN = "not_seen";

    private InspectionBody() {}

    /** Its fields, what is unknown left out; a part that was not seen says so. */
    public static Json.Fields write(Inspection inspection) {
        Json.Fields fields = Json.fields()
                .put("on", inspection.on().print())
                .put("by", inspection.by())
                .putIfTrue(NOT_SEEN, !inspection.wasSeen())
                .putWord("found", inspection.found())
                .putWord("left", inspection.left())
                .putWord("water", inspection.water())
                .done();
        if (!inspection.work().isEmpty()) {
            fields = fields.with("work", new Json.Items(Fields.words(inspection.work())));
        }
        if (!inspection.note().isBlank()) {
            fields = fields.with("note", Json.of(inspection.note()));
        }
        if (inspection.round().isPresent()) {
            fields = fields.with("round", Json.of(inspection.round().get().text()));
        }
        return PhotoBody.with(fields, inspection.photos());
    }

    /** The inspection; empty where a rule was broken. */
    public static Optional<Inspection> read(Uid part, FieldReader in) {
        PartialDate on = Fields.requiredDate(in, "on");
        String by = in.textOrEmpty("by", Limits.NAME);
        boolean notSeen = in.flag(NOT_SEEN).orElse(false);
        Optional<Condition> found = in.word("found", Condition.class);
        Optional<Condition> left = in.word("left", Condition.class);
        Optional<WaterLevel> water = in.word("water", WaterLevel.class);
        List<Work> work = in.words("work", Work.class);
        String note = in.linesOrEmpty("note", Limits.PROSE);
        Optional<Uid> round = Fields.uid(in, "round");
        List<Photo> photos = PhotoBody.read(in);
        boolean seen = found.isPresent() || left.isPresent();
        if (in.sound() && seen == notSeen) {
            in.refuse(
                    "found",
                    seen
                            ? Sentence.of("cannot stand beside not_seen: a part that was not seen has no condition.")
                            : Sentence.of(
                                    "is missing; give a condition, or not_seen where the part was looked for in vain."));
        }
        if (in.sound() && notSeen && !work.isEmpty()) {
            in.refuse("work", Sentence.of("cannot stand beside not_seen: a part that was worked on was seen."));
        }
        return in.sound()
                ? Optional.of(new Inspection(part, on, by, found, left, water, work, note, round, photos))
                : Optional.empty();
    }
}
