package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import thalweg.rig.PartSafety;
import thalweg.rig.RigAnswer;
import thalweg.sheet.SafetyWords;
import thalweg.sheet.StrengthWords;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** How many times each part would hold the largest forces on it, as text to read. */
final class SafetyText {

    private final Surroundings around;

    private SafetyText(Surroundings around) {
        this.around = around;
    }

    /** All of it, under a heading that says what it is not, with what the strengths rest on. */
    static List<Paragraph> of(RigAnswer answer, Surroundings around) {
        SafetyText words = new SafetyText(around);
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(around.say("rig.safety"), Style.STRONG));
        answer.safety().forEach(part -> text.add(words.line(part)));
        new StrengthWords(around.phrases(), around.units())
                .lines(answer)
                .forEach(line -> text.add(new Paragraph(1, "- " + line, Style.NORMAL)));
        return text;
    }

    private Paragraph line(PartSafety part) {
        boolean none =
                part.steady().ratio().isEmpty() && part.afterLoss().ratio().isEmpty();
        boolean same = part.steady().why().equals(part.afterLoss().why());
        SafetyWords safety = new SafetyWords(around.phrases());
        String words = none && same
                ? around.say("rig.safety.part.unknown", part.called(), safety.ratio(part, part.steady()))
                : around.say(
                        "rig.safety.part",
                        part.called(),
                        safety.ratio(part, part.steady()),
                        safety.ratio(part, part.afterLoss()));
        return new Paragraph(1, words, style(part));
    }

    /** Nothing here is called good: a ratio of strengths is no promise. The least that a factor may leave counts. */
    private static Style style(PartSafety part) {
        boolean over = List.of(part.steady(), part.afterLoss()).stream()
                .anyMatch(times -> times.ratio().isPresent() && times.ratio().getAsDouble() * part.leastShare() < 1);
        boolean unknown = List.of(part.steady(), part.afterLoss()).stream()
                .anyMatch(times -> times.ratio().isEmpty() && !times.idle());
        return over ? Style.BAD : unknown ? Style.MIND : Style.NORMAL;
    }
}
