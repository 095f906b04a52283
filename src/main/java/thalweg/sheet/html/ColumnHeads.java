package thalweg.sheet.html;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import thalweg.sheet.Block;
import thalweg.sheet.Section;
import thalweg.sheet.Sheet;

/**
 * The heads of a page's tables: on a phone each cell stands under another and says itself what it is about. The style says
 * that once for all tables with the same heads; beside each cell it would be a tenth of the page.
 */
final class ColumnHeads {

    private final Map<List<String>, String> classes = new LinkedHashMap<>();

    ColumnHeads(Sheet sheet) {
        Stream.concat(sheet.head().stream(), sheet.sections().stream().flatMap(ColumnHeads::blocks))
                .forEach(this::take);
    }

    private static Stream<Block> blocks(Section section) {
        return Stream.concat(
                section.blocks().stream(), section.sections().stream().flatMap(ColumnHeads::blocks));
    }

    private void take(Block block) {
        if (block instanceof Block.Table table) {
            classes.putIfAbsent(table.columns(), "heads-" + (classes.size() + 1));
        }
    }

    /** The class of a table with those heads. */
    String of(List<String> columns) {
        return classes.getOrDefault(columns, "");
    }

    /** Rules that put its head before each cell but the first of a row. */
    String rules() {
        StringBuilder rules = new StringBuilder();
        classes.forEach((columns, name) -> {
            for (int i = 1; i < columns.size(); i++) {
                rules.append(String.format(
                        Locale.ROOT,
                        "  .%s td:nth-child(%d)::before { content: %s; }\n",
                        name,
                        i + 1,
                        CssText.quoted(columns.get(i))));
            }
        });
        return rules.toString();
    }
}
