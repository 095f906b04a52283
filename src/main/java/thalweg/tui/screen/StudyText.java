package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.rig.CascadeOdds;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigInput;
import thalweg.sheet.StudyWords;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** What was studied about a rig, as text to read. */
final class StudyText {

    private StudyText() {}

    /** As far as it was asked for, each with an empty line behind. */
    static List<Paragraph> of(RigStudies studies, Optional<RigAnswer> answer, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        studies.best().ifPresent(best -> {
            text.add(Paragraph.of(new StudyWords(around.phrases(), around.units()).best(best), Style.STRONG));
            text.add(Paragraph.gap());
        });
        if (studies.odds().isPresent() && answer.isPresent()) {
            boolean running = studies.running().isPresent();
            text.addAll(cascade(studies.odds().get(), running, answer.get().input(), around));
            text.add(Paragraph.gap());
        }
        return text;
    }

    private static List<Paragraph> cascade(CascadeOdds odds, boolean running, RigInput input, Surroundings around) {
        if (odds.unknown().isPresent()) {
            return List.of(
                    Paragraph.of(around.say("rig.cascade.none", odds.unknown().get()), Style.MIND));
        }
        List<Paragraph> text = new ArrayList<>();
        if (running) {
            text.add(Paragraph.of(around.say("rig.cascade.running", odds.trials(), odds.planned()), Style.MIND));
        } else if (!odds.finished()) {
            text.add(Paragraph.of(around.say("rig.cascade.stopped", odds.trials(), odds.planned()), Style.MIND));
        }
        if (odds.trials() == 0) {
            return text;
        }
        text.add(Paragraph.of(around.say("rig.cascade", odds.trials(), odds.seed()), Style.STRONG));
        odds.anyPointFails()
                .ifPresent(share ->
                        text.add(new Paragraph(1, around.say("rig.cascade.any", share.saying()), Style.STRONG)));
        odds.everythingLost()
                .ifPresent(share ->
                        text.add(new Paragraph(1, around.say("rig.cascade.all", share.saying()), Style.STRONG)));
        text.add(new Paragraph(1, new StudyWords(around.phrases(), around.units()).beliefs(input), Style.NORMAL));
        text.add(new Paragraph(1, around.say("rig.cascade.error", odds.printError()), Style.NORMAL));
        if (odds.rising()) {
            text.add(new Paragraph(1, around.say("rig.cascade.rising"), Style.CAUTION));
        }
        return text;
    }
}
