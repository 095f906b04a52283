package thalweg.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import thalweg.rig.LetterCheck;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigMaterial;
import thalweg.sheet.SlingWords;
import thalweg.why.Figure.Topic;
import thalweg.why.Ground.Kind;

/** Explains the letters of the checklist, and what the rig takes of material. */
final class ExplainChecks {

    private final RigAnswer answer;
    private final Grounds grounds;
    private final Words words;

    ExplainChecks(RigAnswer answer, Grounds grounds, Words words) {
        this.answer = answer;
        this.grounds = grounds;
        this.words = words;
    }

    List<Figure> letters() {
        return answer.checks().stream().map(this::letter).toList();
    }

    private Figure letter(LetterCheck check) {
        String key = check.letter().name().toLowerCase(Locale.ROOT);
        return new Figure(
                Topic.LETTERS,
                words.say("why.letter", check.letter().name(), check.letter().called()),
                words.say("rig.verdict." + check.verdict().word()),
                List.of(words.say(check.saying())),
                restsOn(check),
                words.say("why.letter_source." + key),
                words.say("why.letter_not." + key));
    }

    private List<Ground> restsOn(LetterCheck check) {
        return switch (check.letter()) {
            case E -> grounds.atRest(Kind.SWAY, Kind.FRICTION);
            case A -> grounds.atRest(Kind.SWAY);
            case R -> grounds.atRest(Kind.ROPE, Kind.CAPTURED, Kind.STRENGTHS, Kind.STRAND_STRENGTH, Kind.KNOT);
            case NE -> grounds.atRest(Kind.ROPE, Kind.CAPTURED);
            case S -> grounds.atRest(Kind.SWAY, Kind.FRICTION, Kind.STRENGTHS);
            case T -> grounds.laid();
        };
    }

    Figure material() {
        RigMaterial material = answer.material();
        List<String> pieces = material.pieces().stream()
                .map(piece -> words.say(
                        "rig.material.piece",
                        piece.count(),
                        RigMaterial.print(piece.length(), words.units()),
                        piece.what()))
                .toList();
        List<String> how = new ArrayList<>(List.of(words.say("why.material.pieces"), words.say("why.material.how")));
        how.addAll(new SlingWords(words.phrases(), words.units()).notes(material));
        return new Figure(
                Topic.MATERIAL,
                words.say("why.material"),
                words.say(
                        "why.material.value",
                        RigMaterial.print(material.total(), words.units()),
                        material.connectors(),
                        String.join("; ", pieces)),
                how,
                grounds.laid(),
                words.say("why.material.source"),
                words.say("why.material.not"));
    }
}
