package thalweg.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.rig.BoltStrength;
import thalweg.rig.PartSafety;
import thalweg.rig.PartStrength;
import thalweg.rig.RigAnswer;
import thalweg.text.Phrases;
import thalweg.units.Force;
import thalweg.units.UnitSystem;

/** What each part of a rig is taken to hold and why, in words, the same on sheets, on the screen and in the terminal. */
public final class StrengthWords {

    private final Phrases phrases;
    private final UnitSystem units;

    /**
     * Words in a language and a system of units.
     */
    public StrengthWords(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** A line for each strength from which something was taken, then a line for each thing that nobody allowed for. */
    public List<String> lines(RigAnswer answer) {
        List<String> lines = new ArrayList<>();
        Map<BoltStrength, List<String>> bolts = new LinkedHashMap<>();
        answer.input()
                .points()
                .forEach(point -> point.traits()
                        .bolt()
                        .ifPresent(bolt -> bolts.computeIfAbsent(bolt, like -> new ArrayList<>())
                                .add(point.name())));
        bolts.forEach((bolt, points) -> lines.add(bolt(String.join(", ", points), bolt)));
        Map<PartStrength, List<String>> alike = new LinkedHashMap<>();
        Map<String, List<String>> notes = new LinkedHashMap<>();
        for (PartSafety part : answer.safety()) {
            alike.computeIfAbsent(part.strength(), strength -> new ArrayList<>())
                    .add(phrases.say(part.called()));
            part.strength()
                    .notes()
                    .forEach(note -> notes.computeIfAbsent(phrases.say(note), text -> new ArrayList<>())
                            .add(phrases.say(part.called())));
        }
        alike.forEach(
                (strength, parts) -> chain(String.join(", ", parts), strength).ifPresent(lines::add));
        notes.forEach(
                (note, parts) -> lines.add(phrases.say("rig.strength.note", capital(note), String.join(", ", parts))));
        return lines;
    }

    private String bolt(String points, BoltStrength bolt) {
        return phrases.say(
                bolt.assumedAxis() ? "rig.strength.bolt.assumed" : "rig.strength.bolt",
                points,
                force(bolt.radial()),
                force(bolt.axial()),
                axis(bolt));
    }

    private static String axis(BoltStrength bolt) {
        return String.format(
                Locale.ROOT,
                "[%.2f, %.2f, %.2f]",
                bolt.axis().x(),
                bolt.axis().y(),
                bolt.axis().z());
    }

    /** Nothing where the strength is as stated, or where there is none. */
    private Optional<String> chain(String parts, PartStrength strength) {
        if (strength.base().isEmpty()
                || (strength.factors().isEmpty() && strength.missing().isEmpty())) {
            return Optional.empty();
        }
        String stated = force(strength.base().get());
        String factors = strength.factors().stream()
                .map(factor -> phrases.say(factor.said()))
                .collect(Collectors.joining("; "));
        if (strength.left().isEmpty()) {
            String most = force(strength.atMost().orElseThrow());
            return Optional.of(
                    most.equals(stated)
                            ? phrases.say("rig.strength.unknown", parts, stated, strength.saying())
                            : phrases.say("rig.strength.at_most", parts, stated, strength.saying(), most));
        }
        String left = strength.isRange()
                ? phrases.say(
                        "rig.strength.range",
                        force(strength.left().get()),
                        force(strength.low().orElseThrow()),
                        force(strength.high().orElseThrow()))
                : force(strength.left().get());
        return Optional.of(phrases.say("rig.strength.left", parts, stated, left, factors));
    }

    private String force(Force force) {
        return force.print(units);
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
