package thalweg.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.drawing.Drawing;
import thalweg.drawing.Shape;
import thalweg.logbook.CanyonRecord;
import thalweg.place.CoordinatesInText;
import thalweg.text.Phrases;

/**
 * Goes over everything that a sheet says, to take out what people wrote into their texts although it is not to be shown:
 * coordinates as far as they are recognised, and the names that the records know.
 */
final class Reword {

    private final UnaryOperator<String> text;

    private Reword(UnaryOperator<String> text) {
        this.text = text;
    }

    /**
     * The sheet as it may be handed out.
     *
     * @param canyon whose people are known; with all that was left out already
     */
    static Sheet of(Sheet sheet, CanyonRecord canyon, SheetContents contents, Phrases phrases) {
        if (contents.places() && contents.names()) {
            return sheet;
        }
        UnaryOperator<String> unplaced = contents.places()
                ? UnaryOperator.identity()
                : said -> CoordinatesInText.replaced(said, phrases.say("sheet.left_out.place"));
        Optional<Pattern> names = contents.names() ? Optional.empty() : KnownNames.pattern(canyon);
        String nobody = Matcher.quoteReplacement(phrases.say("sheet.left_out.name"));
        UnaryOperator<String> unnamed =
                said -> names.map(any -> any.matcher(said).replaceAll(nobody)).orElse(said);
        return new Reword(said -> unnamed.apply(unplaced.apply(said))).sheet(sheet);
    }

    private Sheet sheet(Sheet sheet) {
        return new Sheet(
                sheet.language(),
                text.apply(sheet.title()),
                blocks(sheet.head()),
                sheet.sections().stream().map(this::section).toList(),
                sheet.colon(),
                text.apply(sheet.footer()));
    }

    private Section section(Section section) {
        return new Section(
                section.id(),
                text.apply(section.heading()),
                blocks(section.blocks()),
                section.sections().stream().map(this::section).toList());
    }

    private List<Block> blocks(List<Block> blocks) {
        return blocks.stream().map(this::block).toList();
    }

    private Block block(Block block) {
        return block.<Block>match(
                paragraph -> new Block.Paragraph(words(paragraph.words())),
                notice -> new Block.Notice(text.apply(notice.heading()), lines(notice.lines())),
                facts -> new Block.Facts(facts.facts().stream()
                        .map(fact -> new Fact(text.apply(fact.label()), lines(fact.lines())))
                        .toList()),
                table -> new Block.Table(
                        text.apply(table.caption()),
                        table.columns(),
                        table.rows().stream()
                                .map(row -> row.stream()
                                        .map(cell -> new Cell(lines(cell.lines())))
                                        .toList())
                                .toList()),
                picture -> new Block.Picture(
                        picture.id(),
                        text.apply(picture.caption()),
                        drawing(picture.drawing()),
                        picture.wide().map(this::drawing),
                        picture.plain().stream().map(text).toList(),
                        picture.legend()),
                blanks -> new Block.Blanks(blanks.labels().stream().map(text).toList()),
                code -> new Block.Code(code.id(), text.apply(code.caption()), code.address()));
    }

    private List<Words> lines(List<Words> lines) {
        return lines.stream().map(this::words).toList();
    }

    private Words words(Words words) {
        return new Words(text.apply(words.text()), words.tone(), words.link());
    }

    private Drawing drawing(Drawing drawing) {
        return new Drawing(
                drawing.shapes().stream()
                        .map(shape -> shape.<Shape>match(
                                line -> line,
                                polygon -> polygon,
                                label -> new Shape.Label(
                                        label.at(), text.apply(label.text()), label.ink(), label.side())))
                        .toList(),
                text.apply(drawing.description()),
                drawing.letter());
    }
}
