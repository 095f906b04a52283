package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import thalweg.rig.LetterCheck;
import thalweg.rig.PointForce;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigAssumption;
import thalweg.rig.RigCaution;
import thalweg.rig.RigInput;
import thalweg.rig.RigMaterial;
import thalweg.rig.RigState;
import thalweg.rig.RigVerdict;
import thalweg.rig.WorstForce;
import thalweg.sheet.LaidWords;
import thalweg.sheet.LoadWords;
import thalweg.sheet.RedirectWords;
import thalweg.sheet.SlingWords;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** What the calculator says, as text to read: figures, checks, assumptions, cautions. */
final class RigText {

    private RigText() {}

    /** Everything, the figures first and the cautions last. */
    static List<Paragraph> of(RigAnswer answer, PeakText peaks, Surroundings around) {
        List<Paragraph> text = new ArrayList<>(figures(answer, around));
        text.add(Paragraph.gap());
        text.addAll(LossText.of(answer, peaks, around));
        text.add(Paragraph.gap());
        answer.checks().forEach(check -> text.addAll(check(check, around)));
        text.add(Paragraph.gap());
        text.addAll(SafetyText.of(answer, around));
        text.add(Paragraph.gap());
        text.addAll(material(answer.material(), around));
        text.add(Paragraph.gap());
        text.add(Paragraph.of(around.say("rig.assumes"), Style.STRONG));
        RigAssumption.of(answer)
                .forEach(one -> text.add(new Paragraph(
                        1,
                        "- "
                                + around.say(
                                        one.key(),
                                        String.join(", ", answer.assumed()),
                                        LoadWords.factor(answer.input().load().factor())),
                        Style.NORMAL)));
        text.add(Paragraph.of(around.say("rig.cautions"), Style.CAUTION));
        RigCaution.of(answer)
                .forEach(one -> text.add(new Paragraph(1, "- " + around.caution(one.key()), Style.NORMAL)));
        return text;
    }

    private static List<Paragraph> figures(RigAnswer answer, Surroundings around) {
        RigInput input = answer.input();
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(around.say(
                "rig.load",
                new LoadWords(
                                around.phrases(),
                                around.units(),
                                around.settings().loads())
                        .withAim(input.statedLoad()))));
        LaidWords laid = new LaidWords(around.phrases(), around.units());
        text.add(Paragraph.of(laid.sentence(input)));
        new SlingWords(around.phrases(), around.units())
                .sentences(answer)
                .forEach(sentence -> text.add(Paragraph.of(sentence)));
        new RedirectWords(around.phrases(), around.units())
                .sentences(answer)
                .forEach(sentence -> text.add(Paragraph.of(sentence)));
        laid.freedom(answer).ifPresent(sentence -> text.add(Paragraph.of(sentence)));
        text.add(Paragraph.of(
                answer.steady()
                        .angle()
                        .map(angle -> around.say("rig.angle", angle.printFine()))
                        .orElse(around.say("rig.no_angle")),
                Style.STRONG));
        for (PointForce force : answer.steady().points()) {
            WorstForce worst = answer.sector().worstOf(force.point());
            text.add(Paragraph.of(
                    around.say(
                            "rig.point",
                            force.point(),
                            force.force().print(around.units()),
                            String.format(Locale.ROOT, "%.0f", force.share() * 100),
                            answer.hardest(force.point()).print(around.units())
                                    + (answer.frictionAdds(force.point()) ? " " + around.say("rig.with_friction") : ""),
                            worst.direction().print()),
                    Style.STRONG));
        }
        return text;
    }

    private static List<Paragraph> material(RigMaterial material, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(
                around.say("rig.material", RigMaterial.print(material.total(), around.units()), material.connectors()),
                Style.STRONG));
        for (RigMaterial.Piece piece : material.pieces()) {
            String length = RigMaterial.print(piece.length(), around.units());
            text.add(new Paragraph(
                    1, around.say("rig.material.piece", piece.count(), length, piece.what()), Style.NORMAL));
        }
        new SlingWords(around.phrases(), around.units())
                .notes(material)
                .forEach(note -> text.add(new Paragraph(1, note, Style.NORMAL)));
        return text;
    }

    private static List<Paragraph> check(LetterCheck check, Surroundings around) {
        String verdict = around.say("rig.verdict." + check.verdict().word());
        Style style = check.verdict() == RigVerdict.GOOD
                ? Style.GOOD
                : check.verdict() == RigVerdict.POOR ? Style.BAD : Style.MIND;
        return List.of(
                Paragraph.of(
                        around.labelled(
                                check.letter().name() + " "
                                        + around.phrases().say(check.letter().called()),
                                verdict),
                        style),
                new Paragraph(2, around.phrases().say(check.saying()), Style.NORMAL));
    }

    /** What each point bears where the load is swung to, in one line. */
    static String swung(RigState state, Surroundings around) {
        return around.say(
                "rig.swung",
                state.direction().printFine(),
                state.points().stream()
                        .map(point -> around.say(
                                "rig.swung.point",
                                point.point(),
                                point.force().print(around.units()),
                                String.format(Locale.ROOT, "%.0f", point.share() * 100)))
                        .collect(Collectors.joining(", ")));
    }
}
