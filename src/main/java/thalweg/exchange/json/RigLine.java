package thalweg.exchange.json;

import java.util.List;
import java.util.function.UnaryOperator;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.rig.Analyze;
import thalweg.rig.CheckedRig;
import thalweg.rig.RigFinding;
import thalweg.rig.RigInput;

/**
 * The answer to one line of a file that holds a rig a line.
 *
 * @param text one line of JSON with its line end: what the calculator says, or what is wrong with the line
 * @param refused whether it is the latter
 */
public record RigLine(String text, boolean refused) {

    /**
     * Computes the rig on a line.
     *
     * @param file what the file is called
     * @param number of the line in it, from 1
     * @param bytes of the line, without its end
     * @param adjust what is made of a rig before it is computed
     */
    public static RigLine of(String file, long number, byte[] bytes, UnaryOperator<RigInput> adjust) {
        CheckedRig checked = RigFile.line(file, number, bytes);
        return checked.input()
                .map(input -> new RigLine(RigAnswerText.lineWithChains(Analyze.of(adjust.apply(input))), false))
                .orElseGet(() -> refusal(file, number, checked.findings()));
    }

    /**
     * Refuses a line that was not read to its end.
     *
     * @param longest that a line may be [bytes]
     */
    public static RigLine tooLong(String file, long number, int longest) {
        Sentence why = Sentence.of("is longer than {0} bytes; that is no rig.", longest);
        return refusal(file, number, List.of(new RigFinding("", why)));
    }

    /** What is wrong with the line as a whole has no key. */
    private static RigLine refusal(String file, long number, List<RigFinding> findings) {
        List<Json> errors = findings.stream()
                .map(one -> (Json) Json.fields()
                        .put("key", one.key().isEmpty() ? Json.NOTHING : Json.of(one.key()))
                        .put("why", one.sentence())
                        .done())
                .toList();
        Json line = Json.fields()
                .put("file", file)
                .put("line", Json.of(number))
                .put("errors", new Json.Items(errors))
                .done();
        return new RigLine(JsonText.line(line) + "\n", true);
    }
}
