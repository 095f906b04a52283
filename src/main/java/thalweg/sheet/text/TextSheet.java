package thalweg.sheet.text;

import java.util.List;
import thalweg.sheet.Section;
import thalweg.sheet.Sheet;

/** Renders a sheet as plain text, 72 cells wide, lines ending in a line feed. */
public final class TextSheet {

    /** Cells in a line. Source: the customary width of plain text in mail, which leaves room for quoting. */
    public static final int WIDTH = 72;

    private TextSheet() {}

    /** The whole sheet. */
    public static String render(Sheet sheet) {
        Lines lines = new Lines(WIDTH);
        TextBlocks blocks = new TextBlocks(lines, sheet.colon());
        lines.add("=== " + sheet.title() + " ===");
        sheet.head().forEach(blocks::write);
        sheet.sections().forEach(section -> section(section, 0, lines, blocks));
        lines.gap();
        lines.add(sheet.footer());
        return lines.text();
    }

    private static void section(Section section, int depth, Lines lines, TextBlocks blocks) {
        List<String> frame =
                depth == 0 ? List.of("== ", " ==") : depth == 1 ? List.of("-- ", " --") : List.of("[", "]");
        lines.gap();
        lines.add(frame.get(0) + section.heading() + frame.get(1));
        section.blocks().forEach(blocks::write);
        section.sections().forEach(inner -> section(inner, depth + 1, lines, blocks));
    }
}
