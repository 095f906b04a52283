package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import thalweg.rig.PointLoss;
import thalweg.rig.RigAnswer;
import thalweg.rig.WithinStrength;
import thalweg.sheet.LossWords;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** What the calculator says about the loss of points, the cut of strands, and friction, as text to read. */
final class LossText {

    private LossText() {}

    /** All of it, under a heading that says what the peaks are not. */
    static List<Paragraph> of(RigAnswer answer, PeakText peaks, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(around.say("rig.losses"), Style.STRONG));
        answer.losses().forEach(loss -> text.addAll(lines(loss, peaks, around)));
        LossWords words = new LossWords(around.phrases(), around.units());
        answer.cuts().forEach(cut -> text.add(Paragraph.of(words.cut(cut))));
        answer.friction().ifPresent(friction -> text.add(Paragraph.of(words.friction(friction))));
        return text;
    }

    /** One loss: held, and never without whether that is within strength; where it goes; the peaks; why. */
    static List<Paragraph> lines(PointLoss loss, PeakText peaks, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(headline(loss, around), style(loss)));
        loss.aftermath().ifPresent(after -> {
            text.add(new Paragraph(
                    2,
                    around.say(
                            "rig.loss.moves",
                            after.drop().printFine(around.units()),
                            after.freeTravel().printFine(around.units()),
                            after.swing().printFine(around.units())),
                    Style.NORMAL));
            text.addAll(peaks.lines(loss.point(), after, around));
            text.add(new Paragraph(2, around.phrases().say(after.within().saying()), Style.NORMAL));
        });
        return text;
    }

    /** The loss on one line. What matters stands first, so that a narrow line cuts the name and not the verdict. */
    static String headline(PointLoss loss, Surroundings around) {
        return loss.aftermath()
                .map(after -> around.say("rig.loss", loss.point(), within(after.within(), around)))
                .orElseGet(() -> around.say("rig.loss.lost", loss.point()));
    }

    /** Nothing here is called good: a model peak within a strength is no promise. */
    static Style style(PointLoss loss) {
        boolean bad = loss.aftermath()
                .map(after -> after.within().verdict().filter(within -> !within).isPresent())
                .orElse(true);
        boolean known =
                loss.aftermath().flatMap(after -> after.within().verdict()).isPresent();
        return bad ? Style.BAD : known ? Style.STRONG : Style.MIND;
    }

    private static String within(WithinStrength within, Surroundings around) {
        return within.verdict()
                .map(yes -> around.say(yes ? "rig.within.yes" : "rig.within.no", within.times()))
                .orElseGet(() -> around.say("rig.within.unknown"));
    }
}
