package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.rig.Knot;
import thalweg.rig.PartSafety;
import thalweg.rig.RigAnswer;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** How many times each part would hold the largest forces on it, as text to read. */
final class SafetyText {

    private final Optional<Knot> knot;
    private final Surroundings around;

    private SafetyText(Optional<Knot> knot, Surroundings around) {
        this.knot = knot;
        this.around = around;
    }

    /**
     * All of it, under a heading that says what it is not.
     *
     * @param knot whose nominal share was taken for what knots leave; empty where a number was stated
     */
    static List<Paragraph> of(RigAnswer answer, Optional<Knot> knot, Surroundings around) {
        SafetyText words = new SafetyText(knot, around);
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(around.say("rig.safety"), Style.STRONG));
        answer.safety().forEach(part -> text.add(words.line(part)));
        words.knots(answer).ifPresent(line -> text.add(Paragraph.of(line)));
        return text;
    }

    private Paragraph line(PartSafety part) {
        boolean none =
                part.steady().ratio().isEmpty() && part.afterLoss().ratio().isEmpty();
        boolean same = part.steady().why().equals(part.afterLoss().why());
        String words = none && same
                ? around.say("rig.safety.part.unknown", part.part(), times(part, part.steady()))
                : around.say("rig.safety.part", part.part(), times(part, part.steady()), times(part, part.afterLoss()));
        return new Paragraph(1, words, style(part));
    }

    private String times(PartSafety part, PartSafety.Times times) {
        if (times.ratio().isEmpty()) {
            return around.say(times.idle() ? "rig.safety.none" : "rig.safety.unknown", times.why());
        }
        return knot.filter(known -> part.strand())
                .map(known -> around.say("rig.safety.times.range", times.print(), times.printRange(known)))
                .orElseGet(() -> around.say("rig.safety.times", times.print()));
    }

    /** Nothing here is called good: a ratio of stated strength is no promise. The least that a knot may leave counts. */
    private Style style(PartSafety part) {
        double least = knot.filter(known -> part.strand())
                .map(known -> known.low().left() / known.nominal().left())
                .orElse(1.0);
        boolean over = List.of(part.steady(), part.afterLoss()).stream()
                .anyMatch(times -> times.ratio().isPresent() && times.ratio().getAsDouble() * least < 1);
        boolean unknown = List.of(part.steady(), part.afterLoss()).stream()
                .anyMatch(times -> times.ratio().isEmpty() && !times.idle());
        return over ? Style.BAD : unknown ? Style.MIND : Style.NORMAL;
    }

    private Optional<String> knots(RigAnswer answer) {
        if (answer.input().rig().knotEfficiency().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(knot.map(known -> around.say(
                        "rig.safety.knot",
                        around.say(known.key()),
                        percent(known.nominal().left()),
                        around.say(known.nominal().source().key()),
                        percent(known.low().left()),
                        around.say(known.low().source().key()),
                        percent(known.high().left()),
                        around.say(known.high().source().key())))
                .orElseGet(() -> around.say(
                        "rig.safety.knots_stated",
                        percent(answer.input().rig().knotEfficiency().getAsDouble()))));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f", share * 100);
    }
}
