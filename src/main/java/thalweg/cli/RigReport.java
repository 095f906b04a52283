package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import thalweg.rig.LetterCheck;
import thalweg.rig.PointForce;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigAssumption;
import thalweg.rig.RigCaution;
import thalweg.rig.RigInput;
import thalweg.rig.RigMaterial;
import thalweg.rig.RigPoint;
import thalweg.rig.RigStudy;
import thalweg.rig.WorstForce;
import thalweg.settings.Settings;
import thalweg.sheet.LaidWords;
import thalweg.sheet.LoadWords;
import thalweg.sheet.RedirectWords;
import thalweg.sheet.SlingWords;
import thalweg.text.Phrases;
import thalweg.text.Width;
import thalweg.units.UnitSystem;

/** What the calculator says about a rig, as text for a terminal. */
final class RigReport {

    private static final int WIDTH = 90;

    private final Phrases phrases;
    private final UnitSystem units;
    private final Settings settings;

    RigReport(Phrases phrases, UnitSystem units, Settings settings) {
        this.phrases = phrases;
        this.units = units;
        this.settings = settings;
    }

    String of(RigStudy study) {
        RigAnswer answer = study.answer();
        StringBuilder out = new StringBuilder();
        RigInput input = answer.input();
        out.append(input.name().isEmpty() ? "Rig" : input.name()).append('\n');
        LoadWords load = new LoadWords(phrases, units, settings.loads());
        indented(out, "", phrases.say("rig.load", load.withAim(input.statedLoad())));
        LaidWords laid = new LaidWords(phrases, units);
        indented(out, "", laid.sentence(input));
        new SlingWords(phrases, units).sentences(answer).forEach(line -> indented(out, "", line));
        new RedirectWords(phrases, units).sentences(answer).forEach(line -> indented(out, "", line));
        out.append('\n');
        out.append(Columns.of(points(answer))).append('\n');
        out.append(answer.steady()
                        .angle()
                        .map(angle -> phrases.say("rig.angle", angle.printFine()))
                        .orElse(phrases.say("rig.no_angle")))
                .append('\n');
        answer.sector()
                .widest()
                .ifPresent(widest -> out.append(phrases.say(
                                "rig.widest",
                                widest.angle().printFine(),
                                widest.direction().print()))
                        .append('\n'));
        laid.freedom(answer).ifPresent(sentence -> indented(out, "", sentence));
        out.append('\n');
        LossReport losses = new LossReport(phrases, units);
        indented(out, "", phrases.say("rig.losses"));
        out.append(Columns.of(losses.table(answer)));
        losses.remarks(answer).forEach(line -> indented(out, "- ", line));
        StudyReport studies = new StudyReport(phrases, units);
        study.peakRange().ifPresent(range -> studies.peaks(range).forEach(line -> indented(out, "", line)));
        out.append('\n');
        SafetyReport safety = new SafetyReport(phrases, units);
        indented(out, "", phrases.say("rig.safety"));
        out.append(Columns.of(safety.table(answer)));
        safety.remarks(answer).forEach(line -> indented(out, "- ", line));
        out.append('\n');
        material(out, answer.material());
        out.append('\n');
        studies.lines(study).forEach(line -> indented(out, "", line));
        out.append('\n');
        for (LetterCheck check : answer.checks()) {
            out.append(check.letter().name())
                    .append("  ")
                    .append(phrases.labelled(
                            phrases.say(check.letter().called()),
                            phrases.say("rig.verdict." + check.verdict().word())))
                    .append('\n');
            indented(out, "   ", phrases.say(check.saying()));
        }
        out.append('\n').append(phrases.say("rig.assumes")).append('\n');
        String factor = LoadWords.factor(input.load().factor());
        RigAssumption.of(answer)
                .forEach(one ->
                        indented(out, "- ", phrases.say(one.key(), String.join(", ", answer.assumed()), factor)));
        out.append(phrases.say("rig.cautions")).append('\n');
        RigCaution.of(answer).forEach(one -> indented(out, "- ", phrases.caution(one.key())));
        return out.toString();
    }

    private void material(StringBuilder out, RigMaterial material) {
        indented(
                out,
                "",
                phrases.say("rig.material", RigMaterial.print(material.total(), units), material.connectors()));
        for (RigMaterial.Piece piece : material.pieces()) {
            indented(
                    out,
                    "- ",
                    phrases.say(
                            "rig.material.piece",
                            piece.count(),
                            RigMaterial.print(piece.length(), units),
                            piece.what()));
        }
        new SlingWords(phrases, units).notes(material).forEach(note -> indented(out, "- ", note));
    }

    private List<List<String>> points(RigAnswer answer) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("POINT", "AT THE AIM", "SHARE", "WORST OF THE SWAY", "LOAD TOWARD", "STRENGTH AS STATED"));
        for (RigPoint point : answer.input().points()) {
            PointForce force = answer.steady().at(point.name());
            WorstForce worst = answer.sector().worstOf(point.name());
            rows.add(List.of(
                    point.name(),
                    force.force().print(units),
                    String.format(Locale.ROOT, "%.0f %%", force.share() * 100),
                    answer.hardest(point.name()).print(units)
                            + (answer.frictionAdds(point.name()) ? " " + phrases.say("rig.with_friction") : ""),
                    worst.direction().print(),
                    point.strength().map(strength -> strength.print(units)).orElse(phrases.say("unknown"))));
        }
        return rows;
    }

    /** The first line with the margin, the others under its text. */
    private static void indented(StringBuilder out, String margin, String text) {
        String hanging = " ".repeat(margin.length());
        List<String> lines = Width.wrap(text, WIDTH - margin.length());
        for (int i = 0; i < lines.size(); i++) {
            out.append(i == 0 ? margin : hanging).append(lines.get(i)).append('\n');
        }
    }
}
