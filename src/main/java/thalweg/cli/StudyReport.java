package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import thalweg.rig.CascadeOdds;
import thalweg.rig.PeakRange;
import thalweg.rig.RigComparison;
import thalweg.rig.RigInput;
import thalweg.rig.RigStudy;
import thalweg.sheet.ComparisonWords;
import thalweg.sheet.LossWords;
import thalweg.sheet.StudyWords;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** What of a study goes beyond the answer, as text for a terminal. */
final class StudyReport {

    private final Phrases phrases;
    private final UnitSystem units;

    StudyReport(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** As far as it was asked for. */
    List<String> lines(RigStudy study) {
        List<String> lines = new ArrayList<>();
        study.bestFocus().ifPresent(best -> lines.add(new StudyWords(phrases, units).best(best)));
        study.cascade()
                .ifPresent(odds -> lines.addAll(cascade(odds, study.answer().input())));
        study.comparison().ifPresent(comparison -> lines.addAll(comparison(comparison)));
        return lines;
    }

    private List<String> comparison(RigComparison comparison) {
        ComparisonWords words = new ComparisonWords(phrases, units);
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(phrases.say("compare.title") + ". " + words.priority(comparison));
        lines.addAll(Columns.of(words.table(comparison)).lines().toList());
        lines.add(phrases.say("compare.legend"));
        comparison.questions().forEach(question -> lines.add(words.question(question)));
        lines.add(words.says(comparison));
        listed(lines, words.restsOn(), words.grounds(comparison));
        listed(lines, words.wouldChange(), words.otherwise(comparison));
        lines.add(words.caution());
        return lines;
    }

    private static void listed(List<String> lines, String heading, List<String> items) {
        if (!items.isEmpty()) {
            lines.add(heading + ":");
            items.forEach(item -> lines.add("- " + item));
        }
    }

    /** Between what the peaks lie; nothing where no loss leaves anything that could peak. */
    List<String> peaks(PeakRange range) {
        if (range.losses().isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>(List.of(phrases.say("rig.peaks")));
        for (PeakRange.Loss loss : range.losses()) {
            lines.add(phrases.say("rig.peaks.loss", loss.lost(), new LossWords(phrases, units).ranges(loss)));
            if (loss.mayLieOutside()) {
                lines.add(phrases.say("rig.peaks.outside"));
            }
        }
        return lines;
    }

    private List<String> cascade(CascadeOdds odds, RigInput input) {
        if (odds.unknown().isPresent()) {
            return List.of("", phrases.say("rig.cascade.none", odds.unknown().get()));
        }
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(phrases.say("rig.cascade", odds.trials(), odds.seed()));
        odds.anyPointFails().ifPresent(share -> lines.add(phrases.say("rig.cascade.any", share.saying())));
        odds.everythingLost().ifPresent(share -> lines.add(phrases.say("rig.cascade.all", share.saying())));
        lines.add(new StudyWords(phrases, units).beliefs(input));
        lines.add(phrases.say("rig.cascade.error", odds.printError()));
        if (odds.rising()) {
            lines.add(phrases.say("rig.cascade.rising"));
        }
        return lines;
    }
}
