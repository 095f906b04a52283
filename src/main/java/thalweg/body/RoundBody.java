package thalweg.body;

import java.util.Optional;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.logbook.Round;
import thalweg.logbook.WaterLevel;

/** A round as a body. The canyon it is about stands in the fact around it. */
public final class RoundBody {

    private RoundBody() {}

    /** Its fields, what is unknown left out. */
    public static Json.Fields write(Round round) {
        return Json.fields()
                .put("on", round.on().print())
                .put("by", round.by())
                .putWord("water", round.water())
                .put("note", round.note())
                .done();
    }

    /** The round; empty where a rule was broken. */
    public static Optional<Round> read(Uid canyon, FieldReader in) {
        var on = Fields.requiredDate(in, "on");
        String by = in.textOrEmpty("by", Limits.NAME);
        var water = in.word("water", WaterLevel.class);
        String note = in.linesOrEmpty("note", Limits.PROSE);
        return in.sound() ? Optional.of(new Round(canyon, on, by, water, note)) : Optional.empty();
    }
}
