package thalweg.sheet.html;

import gg.jte.Content;
import java.util.List;
import java.util.Map;
import thalweg.sheet.Section;
import thalweg.sheet.Sheet;

/** Renders a sheet as one HTML file, which is well-formed XML as well. */
public final class HtmlSheet {

    private HtmlSheet() {}

    /** The whole file. */
    public static String render(Sheet sheet) {
        ColumnHeads heads = new ColumnHeads(sheet);
        return render(
                sheet,
                heads,
                Templates.text("style.jte", Map.of("footer", CssText.quoted(sheet.footer()), "heads", heads.rules())));
    }

    /** The same without a style, for an output that brings its own. */
    public static String unstyled(Sheet sheet) {
        return render(sheet, new ColumnHeads(sheet), "");
    }

    private static String render(Sheet sheet, ColumnHeads heads, String style) {
        HtmlBlocks blocks = new HtmlBlocks(heads);
        return Templates.text(
                "sheet.jte",
                Map.of(
                        "sheet", sheet,
                        "policy", ContentPolicy.allowing(style),
                        "style", Templates.asIs(style),
                        "head",
                                Templates.together(
                                        sheet.head().stream().map(blocks::of).toList()),
                        "sections", sections(sheet.sections(), 0, blocks)));
    }

    private static Content sections(List<Section> sections, int depth, HtmlBlocks blocks) {
        return Templates.together(sections.stream()
                .map(section -> section(section, depth, blocks))
                .toList());
    }

    private static Content section(Section section, int depth, HtmlBlocks blocks) {
        return Templates.of(
                "section.jte",
                Map.of(
                        "section",
                        section,
                        "depth",
                        depth,
                        "blocks",
                        Templates.together(
                                section.blocks().stream().map(blocks::of).toList()),
                        "inner",
                        sections(section.sections(), depth + 1, blocks)));
    }
}
