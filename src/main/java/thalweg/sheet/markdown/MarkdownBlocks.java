package thalweg.sheet.markdown;

import java.util.List;
import java.util.stream.Collectors;
import thalweg.sheet.Block;
import thalweg.sheet.Cell;
import thalweg.sheet.Fact;
import thalweg.sheet.Inert;
import thalweg.sheet.Words;

/** Writes the elements of a section, each followed by an empty line. */
final class MarkdownBlocks {

    private static final String BLANK = " ……………………………………";

    private final StringBuilder out;

    MarkdownBlocks(StringBuilder out) {
        this.out = out;
    }

    void write(Block block) {
        Runnable writing = block.match(
                paragraph -> () -> out.append(lines(paragraph.words(), "")).append('\n'),
                notice -> () -> write(notice),
                facts -> () -> facts.facts().forEach(this::write),
                table -> () -> write(table),
                picture -> () -> write(picture),
                blanks -> () -> blanks.labels().forEach(label -> item(Escaped.inline(label) + ":" + BLANK)),
                code -> () -> item(Escaped.inline(code.caption()) + ": <" + code.address() + ">"));
        writing.run();
        out.append('\n');
    }

    private void item(String text) {
        out.append("- ").append(text).append('\n');
    }

    private void write(Block.Notice notice) {
        out.append("> **").append(Escaped.inline(notice.heading())).append("**\n>\n");
        notice.lines().forEach(line -> out.append("> - ").append(inline(line)).append('\n'));
    }

    private void write(Fact fact) {
        item("**" + Escaped.inline(fact.label()) + ":** " + joined(fact.lines()));
    }

    private void write(Block.Table table) {
        out.append("**").append(Escaped.inline(table.caption())).append("**\n\n");
        row(table.columns().stream().map(Escaped::inline).toList());
        row(table.columns().stream().map(column -> "---").toList());
        table.rows()
                .forEach(cells -> row(cells.stream().map(MarkdownBlocks::cell).toList()));
    }

    private void row(List<String> cells) {
        out.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }

    private static String cell(Cell cell) {
        return cell.equals(Cell.NONE) ? "" : joined(cell.lines());
    }

    private void write(Block.Picture picture) {
        out.append("**").append(Escaped.inline(picture.caption())).append("**\n\n");
        if (picture.plain().isEmpty()) {
            out.append(Escaped.start(Inert.line(picture.drawing().description())))
                    .append('\n');
        } else {
            picture.plain().stream().filter(line -> !line.isBlank()).forEach(line -> item(Escaped.start(line)));
        }
    }

    private static String joined(List<Words> words) {
        return words.stream().map(MarkdownBlocks::inline).collect(Collectors.joining("; "));
    }

    private static String inline(Words words) {
        return linked(words, Escaped.inline(words.text()));
    }

    /** Line by line as somebody wrote them, each broken hard. */
    private static String lines(Words words, String indent) {
        String text = words.text()
                .lines()
                .filter(line -> !line.isBlank())
                .map(Escaped::start)
                .collect(Collectors.joining("\\\n" + indent));
        return linked(words, text);
    }

    /** A place is worth its address, which phones open; within the text there is nowhere to lead. */
    private static String linked(Words words, String text) {
        return words.link().startsWith("geo:") ? "[" + text + "](<" + words.link() + ">)" : text;
    }
}
