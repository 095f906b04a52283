package thalweg.sheet.html;

import gg.jte.Content;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import thalweg.drawing.Drawing;
import thalweg.sheet.Block;
import thalweg.sheet.Inert;
import thalweg.sheet.Tone;
import thalweg.sheet.Words;

/** The elements of a section, one template a kind. */
final class HtmlBlocks {

    private final ColumnHeads heads;

    /**
     * @param heads of the columns of all tables of the page
     */
    HtmlBlocks(ColumnHeads heads) {
        this.heads = heads;
    }

    Content of(Block block) {
        Function<Words, Content> words = HtmlBlocks::words;
        return block.match(
                paragraph -> Templates.of("paragraph.jte", Map.of("words", words(paragraph.words()))),
                notice -> Templates.of("notice.jte", Map.of("notice", notice, "lines", lines(notice))),
                facts -> Templates.of("facts.jte", Map.of("facts", facts, "words", words)),
                table -> Templates.of(
                        "table.jte", Map.of("table", table, "words", words, "heads", heads.of(table.columns()))),
                HtmlBlocks::picture,
                blanks -> Templates.of("blanks.jte", Map.of("blanks", blanks)),
                code -> Templates.of(
                        "code.jte",
                        Map.of(
                                "code",
                                code,
                                "drawing",
                                Templates.asIs(SvgCode.write(code.address(), code.caption(), code.id())))));
    }

    private static List<Content> lines(Block.Notice notice) {
        return notice.lines().stream().map(HtmlBlocks::words).toList();
    }

    private static Content words(Words words) {
        return Templates.of("words.jte", Map.of("words", words, "tone", tone(words.tone())));
    }

    /** Its class; most words have none to save room. */
    private static String tone(Tone tone) {
        return tone == Tone.PLAIN ? "" : tone.name().toLowerCase(Locale.ROOT);
    }

    private static Content picture(Block.Picture picture) {
        if (picture.wide().isEmpty()) {
            return picture(picture, picture.drawing(), picture.id(), "");
        }
        return Templates.together(List.of(
                picture(picture, picture.drawing(), picture.id(), "narrow"),
                picture(picture, picture.wide().get(), picture.id() + "-wide", "wide")));
    }

    /** One of its drawings, with what is said about that one: the page shows either the narrow or the wide. */
    private static Content picture(Block.Picture picture, Drawing drawing, String id, String width) {
        String svg = SvgDrawing.write(drawing, id, picture.caption());
        return Templates.of(
                "picture.jte",
                Map.of(
                        "picture",
                        picture,
                        "drawing",
                        Templates.asIs(svg),
                        "width",
                        width,
                        "description",
                        picture.legend().orElseGet(() -> Inert.of(drawing.description()))));
    }
}
