package thalweg.sheet.markdown;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.sheet.Hostile;
import thalweg.sheet.RandomCanyon;
import thalweg.sheet.SampleSheets;
import thalweg.sheet.Section;
import thalweg.sheet.Sheet;
import thalweg.testing.GoldenFile;

/** A sheet as Markdown, read again by commonmark-java, which follows the specification and its test suite. */
class MarkdownSheetTest {

    private static final int SEEDS = 40;

    private static final Parser PARSER =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();

    static Stream<Sheet> sheets() {
        return Stream.of(
                SampleSheets.full(),
                SampleSheets.bare(),
                new RandomCanyon(7, Hostile::around).sheet(),
                new RandomCanyon(8, Hostile::around).sheet());
    }

    private static List<Node> nodes(Node node) {
        List<Node> all = new ArrayList<>();
        for (Optional<Node> child = Optional.ofNullable(node.getFirstChild());
                child.isPresent();
                child = Optional.ofNullable(child.get().getNext())) {
            all.add(child.get());
            all.addAll(nodes(child.get()));
        }
        return all;
    }

    private static List<Node> parsed(Sheet sheet) {
        return nodes(PARSER.parse(MarkdownSheet.render(sheet)));
    }

    private static long sections(List<Section> sections) {
        return sections.stream().mapToLong(one -> 1 + sections(one.sections())).sum();
    }

    @Test
    void theBareCanyonReadsAsReviewed() {
        GoldenFile.holds("sheet/bare.md", MarkdownSheet.render(SampleSheets.bare()));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void nothingInItBecomesMarkupOfItsOwn(Sheet sheet) {
        assertThat(parsed(sheet))
                .doesNotHaveAnyElementsOfTypes(
                        HtmlBlock.class,
                        HtmlInline.class,
                        Image.class,
                        Code.class,
                        FencedCodeBlock.class,
                        IndentedCodeBlock.class)
                .filteredOn(node -> node instanceof Link)
                .allSatisfy(link -> assertThat(((Link) link).getDestination()).startsWith("geo:"));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void onlyTheSheetItselfMakesHeadings(Sheet sheet) {
        assertThat(parsed(sheet).stream().filter(node -> node instanceof Heading))
                .hasSize((int) (1 + sections(sheet.sections())));
    }

    @Test
    void tablesAreTables() {
        assertThat(parsed(SampleSheets.full())).hasAtLeastOneElementOfType(TableBlock.class);
    }

    @Test
    void everyTextOfTheRecordIsThere() {
        everyTextIsThere(UnaryOperator.identity());
    }

    @Test
    void everyTextOfTheRecordIsThereAmidHostileOnes() {
        everyTextIsThere(Hostile::around);
    }

    private static void everyTextIsThere(UnaryOperator<String> dress) {
        TextContentRenderer renderer = TextContentRenderer.builder()
                .extensions(List.of(TablesExtension.create()))
                .build();
        for (long seed = 0; seed < SEEDS; seed++) {
            RandomCanyon canyon = new RandomCanyon(seed, dress);

            assertThat(renderer.render(PARSER.parse(MarkdownSheet.render(canyon.sheet()))))
                    .as("seed %d", seed)
                    .contains(canyon.expected());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "# no heading",
                "- no item",
                "12. no number",
                "3) no number",
                "=== no line",
                "*a* _b_ `c` ~~d~~ [e](f) ![g](h) <i>j</i> &amp; k|l \\ m",
                "    no code",
                "> no quote",
                "www.example.org https://example.org a@example.org",
                "back\\| slash",
                "--- | ---",
                ":--- no column"
            })
    void aLineComesBackAsItWas(String line) {
        TextContentRenderer renderer = TextContentRenderer.builder().build();

        assertThat(renderer.render(PARSER.parse(Escaped.start(line)))).isEqualTo(line.strip());
        assertThat(renderer.render(PARSER.parse("- x " + Escaped.inline(line.strip()))))
                .endsWith("x " + line.strip());
    }
}
