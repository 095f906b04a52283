package thalweg.body;

import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Hash;
import thalweg.ledger.LedgerPlace;
import thalweg.ledger.Uid;
import thalweg.logbook.SheetGiven;

/** A sheet that was given out as a body. The canyon it is about stands in the fact around it. */
public final class SheetGivenBody {

    private static final long MOST_SHEETS = 1_000_000_000;
    private static final long MOST_ENTRIES = 1_000_000_000_000L;

    private SheetGivenBody() {}

    /** Its fields. */
    public static Json.Fields write(SheetGiven given) {
        return Json.fields()
                .put("on", given.on().print())
                .put("to", given.to())
                .put("number", given.number())
                .put("file", given.file())
                .put("records", given.records().hex())
                .putKnown("ledger_revisions", given.ledger().map(place -> Json.of(place.revisions())))
                .putKnown("ledger_facts", given.ledger().map(place -> Json.of(place.facts())))
                .done();
    }

    /** What was written; empty where a rule was broken. */
    public static Optional<SheetGiven> read(Uid canyon, FieldReader in) {
        var on = Fields.requiredDate(in, "on");
        String to = in.optionalText("to", Limits.NAME).orElse("");
        var number = in.whole("number", 1, MOST_SHEETS);
        String file = in.text("file", Limits.FILE);
        Optional<Hash> records = Hash.parse(in.text("records", 64));
        Optional<LedgerPlace> ledger = ledger(in);
        if (in.sound() && number.isEmpty()) {
            in.refuse("number", Sentence.of("is missing; it should be the number of the sheet."));
        }
        if (in.sound() && records.isEmpty()) {
            in.refuse("records", Sentence.of("is no SHA-256; it should be 64 hexadecimal digits."));
        }
        return in.sound()
                ? Optional.of(new SheetGiven(canyon, on, to, number.getAsLong(), file, records.orElseThrow(), ledger))
                : Optional.empty();
    }

    /** Neither or both: one alone leads nowhere. */
    private static Optional<LedgerPlace> ledger(FieldReader in) {
        var revisions = in.whole("ledger_revisions", 0, MOST_ENTRIES);
        var facts = in.whole("ledger_facts", 0, MOST_ENTRIES);
        return revisions.isPresent() && facts.isPresent()
                ? Optional.of(new LedgerPlace(revisions.getAsLong(), facts.getAsLong()))
                : Optional.empty();
    }
}
