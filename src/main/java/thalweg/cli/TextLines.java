package thalweg.cli;

import thalweg.text.Width;

/** Lines of text for a terminal, wrapped where they are long. */
final class TextLines {

    static final int WIDTH = 100;

    private final StringBuilder out = new StringBuilder();

    void line(String text) {
        out.append(text.stripTrailing()).append('\n');
    }

    /** A text of any length with a margin in front of every line; nothing where it is empty. */
    void wrapped(String text, String margin) {
        if (!text.isEmpty()) {
            Width.wrap(text, WIDTH - margin.length()).forEach(part -> line(margin + part));
        }
    }

    /** Lines that are laid out already. */
    void add(String lines) {
        out.append(lines);
    }

    String text() {
        return out.toString();
    }
}
