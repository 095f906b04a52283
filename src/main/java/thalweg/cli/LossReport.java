package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import thalweg.rig.Aftermath;
import thalweg.rig.PeakForces;
import thalweg.rig.PointLoss;
import thalweg.rig.RigAnswer;
import thalweg.rig.WithinStrength;
import thalweg.sheet.LossWords;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** What the calculator says about the loss of points, the cut of strands, and friction, as text for a terminal. */
final class LossReport {

    private final Phrases phrases;
    private final UnitSystem units;

    LossReport(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** The table of losses, a row a point. */
    List<List<String>> table(RigAnswer answer) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "POINT LOST",
                "HELD",
                "WITHIN STRENGTH",
                "DROP",
                "FREE FALL",
                "SWING",
                "MODEL PEAK, AT REST, DRY, UNDAMPED"));
        answer.losses().forEach(loss -> rows.add(row(loss)));
        return rows;
    }

    private List<String> row(PointLoss loss) {
        if (loss.aftermath().isEmpty()) {
            return List.of(loss.point(), "NO", "-", "-", "-", "-", "-");
        }
        Aftermath after = loss.aftermath().get();
        return List.of(
                loss.point(),
                "yes",
                within(after.within()),
                after.drop().printFine(units),
                after.freeTravel().printFine(units),
                after.swing().printFine(units),
                after.peaks().map(this::peaks).orElse(phrases.say("unknown")));
    }

    private String within(WithinStrength within) {
        return within.verdict()
                .map(yes -> yes ? phrases.say("rig.within.times", within.times()) : "NO")
                .orElse(phrases.say("unknown"));
    }

    private String peaks(PeakForces peaks) {
        String list = peaks.points().stream()
                .map(peak -> peak.point() + " " + peak.force().print(units))
                .collect(Collectors.joining(", "));
        return peaks.rising() ? phrases.say("rig.loss.rising", list) : list;
    }

    /** Why each loss is within the strength of what is left, or not, or unknown; then cuts and friction. */
    List<String> remarks(RigAnswer answer) {
        List<String> lines = new ArrayList<>();
        for (PointLoss loss : answer.losses()) {
            lines.add(loss.aftermath()
                    .map(after -> phrases.say(
                            "rig.loss.why", loss.point(), after.within().saying()))
                    .orElseGet(() -> phrases.say("rig.loss.lost", loss.point())));
        }
        LossWords words = new LossWords(phrases, units);
        answer.cuts().forEach(cut -> lines.add(words.cut(cut)));
        answer.friction().ifPresent(friction -> lines.add(words.friction(friction)));
        return lines;
    }
}
