package thalweg.sheet.text;

import java.util.ArrayList;
import java.util.List;
import thalweg.text.Width;

/** Collects lines that are never wider than asked for, however wide the letters are. */
final class Lines {

    static final String INDENT = "  ";

    private final int width;
    private final List<String> lines = new ArrayList<>();

    Lines(int width) {
        this.width = width;
    }

    /** Adds one empty line, unless the text begins here or one is there already. */
    void gap() {
        if (!lines.isEmpty() && !lines.get(lines.size() - 1).isEmpty()) {
            lines.add("");
        }
    }

    /**
     * Adds a text, broken where it must be. Only its first line begins at the margin, so that no text from outside can
     * look like a heading.
     */
    void add(String text) {
        add("", text);
    }

    /**
     * Adds a text behind a sign or a space.
     *
     * @param lead before its first line; the others are indented
     */
    void add(String lead, String text) {
        String indent = lead.isBlank() ? lead + INDENT : INDENT;
        int room = width - Math.max(Width.of(lead), Width.of(indent));
        String before = lead;
        for (String line : text.split("\n", -1)) {
            for (String piece : Width.wrap(line, room)) {
                lines.add((before + piece).stripTrailing());
                before = indent;
            }
        }
    }

    /** Adds texts, as many to a line as fit whole; one that does not fit stands alone. */
    void pack(String lead, String between, List<String> texts) {
        String line = "";
        for (String text : texts) {
            String longer = line.isEmpty() ? text : line + between + text;
            if (!longer.contains("\n") && Width.of(lead) + Width.of(longer) <= width) {
                line = longer;
            } else {
                flush(lead, line);
                line = text;
            }
        }
        flush(lead, line);
    }

    private void flush(String lead, String line) {
        if (!line.isEmpty()) {
            add(lead, line);
        }
    }

    String text() {
        return String.join("\n", lines) + "\n";
    }
}
