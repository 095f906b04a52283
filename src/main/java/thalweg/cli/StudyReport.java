package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import thalweg.rig.BestFocus;
import thalweg.rig.CascadeOdds;
import thalweg.rig.PeakRange;
import thalweg.rig.RigComparison;
import thalweg.rig.RigInput;
import thalweg.rig.RigStudy;
import thalweg.rig.Vector3;
import thalweg.sheet.ComparisonWords;
import thalweg.text.Phrases;
import thalweg.units.Length;
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
        study.bestFocus().ifPresent(best -> lines.add(best(best)));
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
        lines.add(comparison.recommendation().says());
        listed(lines, words.restsOn(), comparison.recommendation().restsOn());
        listed(lines, words.wouldChange(), comparison.recommendation().wouldChange());
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
            String points = loss.points().stream()
                    .map(point -> phrases.say(
                            "rig.peaks.point",
                            point.point(),
                            point.nominal().map(force -> force.print(units)).orElse(phrases.say("unknown")),
                            point.low().print(units),
                            point.high().print(units)))
                    .collect(Collectors.joining(", "));
            lines.add(phrases.say("rig.peaks.loss", loss.lost(), points));
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
        odds.anyPointFails().ifPresent(share -> lines.add(phrases.say("rig.cascade.any", share.print())));
        odds.everythingLost().ifPresent(share -> lines.add(phrases.say("rig.cascade.all", share.print())));
        lines.add(phrases.say(
                "rig.cascade.beliefs",
                input.points().stream()
                        .map(point -> point.name() + " " + point.spread())
                        .collect(Collectors.joining(", ")),
                input.load().spread()));
        lines.add(phrases.say("rig.cascade.error", odds.printError()));
        if (odds.rising()) {
            lines.add(phrases.say("rig.cascade.rising"));
        }
        return lines;
    }

    private String best(BestFocus best) {
        return best.found()
                .map(found -> phrases.say(
                        "rig.best",
                        metres(found.focus(), 0),
                        metres(found.focus(), 1),
                        metres(found.focus(), 2),
                        found.shares().stream()
                                .map(force -> phrases.say(
                                        "rig.best.share",
                                        force.point(),
                                        String.format(Locale.ROOT, "%.0f", force.share() * 100)))
                                .collect(Collectors.joining(", ")),
                        found.times(),
                        found.timesAsGiven(),
                        best.why()))
                .orElseGet(() -> phrases.say("rig.best.none", best.why()));
    }

    private String metres(Vector3 place, int axis) {
        double along = axis == 0 ? place.x() : axis == 1 ? place.y() : place.z();
        return new Length(along).printFine(units);
    }
}
