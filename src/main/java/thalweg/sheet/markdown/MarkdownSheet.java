package thalweg.sheet.markdown;

import thalweg.sheet.Section;
import thalweg.sheet.Sheet;

/** Renders a sheet as Markdown with tables. */
public final class MarkdownSheet {

    /** There are no headings below the sixth. Source: CommonMark Spec 0.31.2, 4.2 ATX headings. */
    private static final int DEEPEST = 6;

    private MarkdownSheet() {}

    /** The whole sheet, lines ending in a line feed. */
    public static String render(Sheet sheet) {
        StringBuilder out = new StringBuilder();
        MarkdownBlocks blocks = new MarkdownBlocks(out);
        out.append("# ").append(Escaped.start(sheet.title())).append("\n\n");
        sheet.head().forEach(blocks::write);
        sheet.sections().forEach(section -> section(section, 2, out, blocks));
        return out.append("***\n\n")
                .append(Escaped.start(sheet.footer()))
                .append('\n')
                .toString();
    }

    private static void section(Section section, int depth, StringBuilder out, MarkdownBlocks blocks) {
        out.append("#".repeat(Math.min(depth, DEEPEST)))
                .append(' ')
                .append(Escaped.start(section.heading()))
                .append("\n\n");
        section.blocks().forEach(blocks::write);
        section.sections().forEach(inner -> section(inner, depth + 1, out, blocks));
    }
}
