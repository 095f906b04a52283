package thalweg.sheet.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import thalweg.drawing.Drawing;
import thalweg.sheet.Block;
import thalweg.sheet.Cell;
import thalweg.sheet.Fact;
import thalweg.sheet.Inert;
import thalweg.sheet.Words;

/** Writes the elements of a section, each in a form that can still be read when the spaces of a line are lost. */
final class TextBlocks {

    private static final String BULLET = "• ";

    private static final String BETWEEN = " | ";

    private static final String BLANK = " ..............................";

    private final Lines lines;
    private final String colon;

    TextBlocks(Lines lines, String colon) {
        this.colon = colon;
        this.lines = lines;
    }

    void write(Block block) {
        Runnable writing = block.match(
                paragraph -> () -> lines.add(text(paragraph.words())),
                notice -> () -> write(notice),
                facts -> () -> facts.facts().forEach(this::write),
                table -> () -> write(table),
                picture -> () -> write(picture),
                blanks -> () -> blanks.labels().forEach(label -> lines.add(label + colon.stripTrailing() + BLANK)),
                code -> () -> lines.add(BULLET, code.caption() + colon + code.address()));
        writing.run();
    }

    private void write(Block.Notice notice) {
        lines.gap();
        lines.add("!! " + notice.heading() + " !!");
        notice.lines().forEach(line -> lines.add(BULLET, text(line)));
        lines.gap();
    }

    private void write(Fact fact) {
        lines.add(fact.label() + colon + joined(fact.lines()));
    }

    private void write(Block.Table table) {
        lines.gap();
        lines.add(table.caption() + colon.stripTrailing());
        for (List<Cell> row : table.rows()) {
            lines.add(BULLET, joined(row.get(0).lines()));
            List<String> fields = new ArrayList<>();
            for (int column = 1; column < row.size(); column++) {
                if (!row.get(column).equals(Cell.NONE)) {
                    fields.add(table.columns().get(column)
                            + colon
                            + joined(row.get(column).lines()));
                }
            }
            lines.pack(Lines.INDENT, BETWEEN, fields);
        }
    }

    private void write(Block.Picture picture) {
        lines.gap();
        Drawing drawing = picture.drawing();
        if (picture.plain().isEmpty()) {
            lines.add(picture.caption() + colon + Inert.of(drawing.description()));
        } else {
            lines.add(picture.caption() + colon.stripTrailing());
            picture.plain().forEach(lines::add);
        }
    }

    private static String joined(List<Words> words) {
        return words.stream().map(TextBlocks::text).collect(Collectors.joining("; "));
    }

    /** A place is worth its address, which phones open; within the text there is nowhere to lead. */
    private static String text(Words words) {
        return words.link().startsWith("geo:") ? words.text() + " (" + words.link() + ")" : words.text();
    }
}
