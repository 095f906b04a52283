package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Finds what a sheet says where. */
final class SheetTexts {

    private SheetTexts() {}

    /** Every section of the sheet, outer before inner. */
    static Stream<Section> sections(Sheet sheet) {
        return sheet.sections().stream().flatMap(SheetTexts::withInner);
    }

    private static Stream<Section> withInner(Section section) {
        return Stream.concat(Stream.of(section), section.sections().stream().flatMap(SheetTexts::withInner));
    }

    static Section section(Sheet sheet, String id) {
        return sections(sheet)
                .filter(section -> section.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** What the section itself says, one text a line, in order. */
    static List<String> of(List<Block> blocks) {
        List<String> texts = new ArrayList<>();
        blocks.forEach(block -> texts.addAll(of(block)));
        return texts;
    }

    private static List<String> of(Block block) {
        return block.match(
                paragraph -> List.of(paragraph.words().text()),
                notice -> Stream.concat(Stream.of(notice.heading()), texts(notice.lines()))
                        .toList(),
                facts -> facts.facts().stream()
                        .flatMap(fact -> texts(fact.lines()).map(text -> fact.label() + ": " + text))
                        .toList(),
                table -> Stream.concat(
                                Stream.of(table.caption()),
                                table.rows().stream().flatMap(List::stream).flatMap(cell -> texts(cell.lines())))
                        .toList(),
                picture -> List.of(picture.caption(), picture.drawing().description()),
                Block.Blanks::labels,
                code -> List.of(code.caption(), code.address()));
    }

    private static Stream<String> texts(List<Words> words) {
        return words.stream().map(line -> line.text().replace('\u00A0', ' '));
    }
}
