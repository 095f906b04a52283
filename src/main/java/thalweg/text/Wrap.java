package thalweg.text;

import java.util.ArrayList;
import java.util.List;

/** Breaks one paragraph into lines. */
final class Wrap {

    private final int room;
    private final List<String> lines = new ArrayList<>();
    private final StringBuilder line = new StringBuilder();
    private int taken;

    private Wrap(int room) {
        this.room = room;
    }

    /**
     * The paragraph in lines; spaces at its beginning stay where there is room, as they indent.
     *
     * @param paragraph without line feeds
     * @param room of a line [cells], 1 or more
     * @return one line or more
     */
    static List<String> paragraph(String paragraph, int room) {
        Wrap wrap = new Wrap(room);
        int at = 0;
        while (at < paragraph.length()) {
            int word = at;
            while (word < paragraph.length() && paragraph.charAt(word) == ' ') {
                word++;
            }
            int end = paragraph.indexOf(' ', word);
            end = end < 0 ? paragraph.length() : end;
            if (word < end) {
                wrap.add(paragraph.substring(at, word), paragraph.substring(word, end));
            }
            at = end;
        }
        wrap.lines.add(wrap.line.toString());
        return wrap.lines;
    }

    private void add(String gap, String word) {
        int width = Width.of(word);
        if (taken + gap.length() + width <= room) {
            append(gap, gap.length());
            append(word, width);
            return;
        }
        // Not by the cells taken: a word of nothing but signs without width is a word, too.
        if (line.length() > 0) {
            breakLine();
        }
        if (width <= room) {
            append(word, width);
        } else {
            addInPieces(word);
        }
    }

    private void addInPieces(String word) {
        for (String cluster : Width.clusters(word)) {
            int width = Width.ofCluster(cluster);
            if (taken > 0 && taken + width > room) {
                breakLine();
            }
            append(cluster, width);
        }
    }

    private void append(String text, int width) {
        line.append(text);
        taken += width;
    }

    private void breakLine() {
        lines.add(line.toString());
        line.setLength(0);
        taken = 0;
    }
}
