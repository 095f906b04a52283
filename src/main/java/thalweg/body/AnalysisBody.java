package thalweg.body;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.logbook.InventoryFingerprint;
import thalweg.logbook.RigAnalysis;

/** A rig analysis as a body. The station it is about stands in the fact around it. */
public final class AnalysisBody {

    private static final Pattern SHORT_HASH = Pattern.compile("[0-9a-f]{16}");

    private AnalysisBody() {}

    /** Its fields; input and result are texts, to the letter. */
    public static Json.Fields write(RigAnalysis analysis) {
        FieldWriter inventory = Json.fields();
        analysis.inventory().hashes().forEach((part, hash) -> inventory.put(part.text(), hash));
        return Json.fields()
                .put("on", analysis.on().print())
                .put("by", analysis.by())
                .put("program", analysis.program())
                .put("input", analysis.input())
                .put("result", analysis.result())
                .put("inventory", inventory.done())
                .done();
    }

    /** The analysis; empty where a rule was broken. */
    public static Optional<RigAnalysis> read(Uid station, FieldReader in) {
        var on = Fields.requiredDate(in, "on");
        String by = in.textOrEmpty("by", Limits.NAME);
        String program = in.text("program", Limits.NAME);
        String input = rigText(in, "input");
        String result = rigText(in, "result");
        Optional<InventoryFingerprint> inventory = in.object("inventory").flatMap(inner -> fingerprint(in, inner));
        if (!in.has("inventory")) {
            in.refuse(
                    "inventory",
                    Sentence.of("is missing; without it nobody can tell whether the analysis is still true."));
        }
        return in.sound() && inventory.isPresent()
                ? Optional.of(new RigAnalysis(station, on, by, program, input, result, inventory.get()))
                : Optional.empty();
    }

    /** Counted in UTF-16 units as well, because so does the parser that must read it back. */
    private static String rigText(FieldReader in, String key) {
        String text = in.exact(key, Limits.RIG_TEXT);
        if (text.length() > Limits.RIG_TEXT) {
            in.refuse(key, Sentence.of("is longer than {0} UTF-16 units.", Limits.RIG_TEXT));
        }
        return text;
    }

    private static Optional<InventoryFingerprint> fingerprint(FieldReader outer, FieldReader in) {
        Map<Uid, String> hashes = new TreeMap<>();
        for (String key : in.unasked()) {
            Optional<Uid> part = Uid.parse(key);
            String hash = in.textOrEmpty(key, 16);
            if (part.isEmpty() || !SHORT_HASH.matcher(hash).matches()) {
                outer.refuse("inventory", Sentence.of("should hold a short hash by part; \"{0}\" is none.", key));
                return Optional.empty();
            }
            hashes.put(part.get(), hash);
        }
        return in.sound() ? Optional.of(new InventoryFingerprint(hashes)) : Optional.empty();
    }
}
