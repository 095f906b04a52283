package thalweg.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import thalweg.rig.PartSafety;
import thalweg.rig.RigAnswer;
import thalweg.sheet.StrengthWords;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** How many times each part would hold the largest forces on it, as text for a terminal. */
final class SafetyReport {

    private final Phrases phrases;
    private final UnitSystem units;

    SafetyReport(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** A row for each point, then for each strand. */
    List<List<String>> table(RigAnswer answer) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("PART", "LARGEST AT REST", "STRENGTH OVER IT", "MODEL PEAK AFTER A LOSS", "STRENGTH OVER IT"));
        for (PartSafety part : answer.safety()) {
            rows.add(List.of(
                    phrases.say(part.called()),
                    force(part.steady()),
                    ratio(part, part.steady()),
                    force(part.afterLoss()),
                    ratio(part, part.afterLoss())));
        }
        return rows;
    }

    private String force(PartSafety.Times times) {
        return times.force()
                .map(force -> force.print(units) + ", " + phrases.say(times.saying()))
                .filter(text -> times.ratio().isPresent())
                .orElseGet(() -> times.force().map(force -> force.print(units)).orElse("-"));
    }

    private String ratio(PartSafety part, PartSafety.Times times) {
        if (times.ratio().isEmpty()) {
            return times.idle() ? "-" : phrases.say("unknown");
        }
        String range = part.range(times).map(phrases::say).orElse("");
        return phrases.say("rig.safety.times", times.print()) + (range.isEmpty() ? "" : " (" + range + ")");
    }

    /** Each reason why a figure is missing, once, with the parts that it concerns; then what the strengths rest on. */
    List<String> remarks(RigAnswer answer) {
        Map<String, Set<String>> unknown = new LinkedHashMap<>();
        Map<String, Set<String>> idle = new LinkedHashMap<>();
        for (PartSafety part : answer.safety()) {
            for (PartSafety.Times times : List.of(part.steady(), part.afterLoss())) {
                if (times.ratio().isEmpty()) {
                    (times.idle() ? idle : unknown)
                            .computeIfAbsent(phrases.say(times.saying()), why -> new LinkedHashSet<>())
                            .add(phrases.say(part.called()));
                }
            }
        }
        List<String> lines = new ArrayList<>();
        unknown.forEach(
                (why, parts) -> lines.add(phrases.say("rig.safety.unknown.for", String.join(", ", parts), why)));
        idle.forEach((why, parts) -> lines.add(phrases.say("rig.safety.none.for", String.join(", ", parts), why)));
        lines.addAll(new StrengthWords(phrases, units).lines(answer));
        return lines;
    }
}
