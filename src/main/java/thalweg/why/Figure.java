package thalweg.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import thalweg.text.Phrases;

/**
 * A figure and why it is what it is.
 *
 * @param topic under which it is told
 * @param label what it is
 * @param value as it is shown elsewhere, with its unit; "unknown" where it is that
 * @param how it comes about, sentence by sentence, with this rig's own numbers where that is short; not empty
 * @param grounds what was put in and bears on it
 * @param source where the method and its constants are from, or that they are our choice or from memory
 * @param isNot what it must not be taken for
 */
public record Figure(
        Topic topic, String label, String value, List<String> how, List<Ground> grounds, String source, String isNot) {

    public Figure {
        how = List.copyOf(how);
        grounds = List.copyOf(grounds);
        if (label.isBlank() || value.isBlank() || how.isEmpty() || source.isBlank() || isNot.isBlank()) {
            throw new IllegalArgumentException("a figure is explained in full");
        }
    }

    /** What figures are told together. */
    public enum Topic {
        LOAD,
        REST,
        LOSS,
        STRENGTH,
        LETTERS,
        MATERIAL,
        STUDIES;

        /** Its heading. */
        public String title(Phrases phrases) {
            return phrases.say("why.topic." + name().toLowerCase(Locale.ROOT));
        }
    }

    /** What a line of an explanation is about. */
    public enum Part {
        HOW,
        RESTS_ON,
        NOT_STATED,
        SOURCE,
        IS_NOT
    }

    /**
     * A line of an explanation.
     *
     * @param part what it is about
     * @param text a sentence or more
     */
    public record Line(Part part, String text) {}

    /** The explanation, line by line. */
    public List<Line> lines(Phrases phrases) {
        List<Line> lines = new ArrayList<>();
        how.forEach(sentence -> lines.add(new Line(Part.HOW, sentence)));
        if (!grounds.isEmpty()) {
            lines.add(new Line(Part.RESTS_ON, phrases.say("why.rests_on", told(grounds, phrases))));
        }
        List<Ground> open = grounds.stream()
                .filter(ground -> ground.standing() != Ground.Standing.STATED)
                .toList();
        if (!open.isEmpty()) {
            lines.add(new Line(
                    Part.NOT_STATED,
                    phrases.say(
                            "why.not_stated",
                            open.stream().map(ground -> ground.print(phrases)).collect(Collectors.joining("; ")))));
        }
        lines.add(new Line(Part.SOURCE, phrases.say("why.source", source)));
        lines.add(new Line(Part.IS_NOT, phrases.say("why.is_not", isNot)));
        return lines;
    }

    private static String told(List<Ground> grounds, Phrases phrases) {
        return grounds.stream().map(ground -> phrases.say(ground.kind().key())).collect(Collectors.joining(", "));
    }
}
