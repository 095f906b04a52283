package thalweg.sheet.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import thalweg.sheet.Hostile;
import thalweg.sheet.RandomCanyon;
import thalweg.sheet.SampleSheets;
import thalweg.sheet.Sheet;
import thalweg.testing.GoldenFile;

class HtmlSheetTest {

    private static final int SEEDS = 40;

    private static final Set<String> ELEMENTS = Set.of(
            "html",
            "head",
            "meta",
            "title",
            "style",
            "body",
            "header",
            "main",
            "footer",
            "section",
            "h1",
            "h2",
            "h3",
            "h4",
            "p",
            "div",
            "strong",
            "bdi",
            "a",
            "ul",
            "li",
            "dl",
            "dt",
            "dd",
            "table",
            "caption",
            "thead",
            "tbody",
            "tr",
            "th",
            "td",
            "figure",
            "figcaption",
            "svg",
            "desc",
            "g",
            "line",
            "polygon",
            "path",
            "text");

    /** Any other attribute could load or run something. */
    private static final Set<String> ATTRIBUTES = Set.of(
            "lang",
            "charset",
            "http-equiv",
            "content",
            "name",
            "id",
            "class",
            "role",
            "scope",
            "href",
            "aria-labelledby",
            "xmlns",
            "viewBox",
            "width",
            "height",
            "fill",
            "stroke",
            "stroke-linejoin",
            "stroke-width",
            "stroke-dasharray",
            "font-family",
            "font-size",
            "font-weight",
            "text-anchor",
            "points",
            "d",
            "x",
            "y",
            "x1",
            "y1",
            "x2",
            "y2");

    static Stream<Sheet> sheets() {
        return Stream.of(
                SampleSheets.full(),
                SampleSheets.bare(),
                SampleSheets.imperial(),
                new RandomCanyon(7, Hostile::around).sheet(),
                new RandomCanyon(8, Hostile::around).sheet());
    }

    @Test
    void theFullCanyonReadsAsReviewed() {
        GoldenFile.holds("sheet/full.html", HtmlSheet.render(SampleSheets.full()));
    }

    @Test
    void theBareCanyonReadsAsReviewed() {
        GoldenFile.holds("sheet/bare.html", HtmlSheet.render(SampleSheets.bare()));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void onlyPlainMarkupComesOut(Sheet sheet) {
        Page page = Page.of(HtmlSheet.render(sheet));

        assertThat(page.elements("*")).extracting(Element::getTagName).isSubsetOf(ELEMENTS);
        assertThat(page.attributes().map(attribute -> attribute.getName())).isSubsetOf(ATTRIBUTES);
        assertThat(page.values("http-equiv")).containsExactly("Content-Security-Policy");
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void nothingLeadsOutsideButToAPlace(Sheet sheet) {
        Page page = Page.of(HtmlSheet.render(sheet));
        List<String> ids = page.values("id");

        assertThat(page.values("href"))
                .allSatisfy(link -> assertThat(link.startsWith("geo:") || ids.contains(link.substring(1)))
                        .as(link)
                        .isTrue());
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everyIdIsUniqueAndEveryReferenceFindsOne(Sheet sheet) {
        Page page = Page.of(HtmlSheet.render(sheet));

        assertThat(page.values("id")).doesNotHaveDuplicates();
        assertThat(page.values("aria-labelledby"))
                .allSatisfy(names -> assertThat(page.values("id")).contains(names.split(" ")));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void headingsGoDownOneLevelAtATime(Sheet sheet) {
        List<Integer> levels = Page.of(HtmlSheet.render(sheet)).headings();

        assertThat(levels.stream().filter(level -> level == 1)).hasSize(1);
        for (int i = 1; i < levels.size(); i++) {
            assertThat(levels.get(i)).isLessThanOrEqualTo(levels.get(i - 1) + 1);
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void nothingHiddenOrReorderedComesOut(Sheet sheet) {
        assertThat(HtmlSheet.render(sheet)).doesNotContainPattern("[\\p{Cc}\\p{Cf}&&[^\\n]]");
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
        for (long seed = 0; seed < SEEDS; seed++) {
            RandomCanyon canyon = new RandomCanyon(seed, dress);
            String text = Page.of(HtmlSheet.render(canyon.sheet())).text();

            assertThat(text).as("seed %d", seed).contains(canyon.expected());
        }
    }

    @Test
    void theFullCanyonIsSmallEnoughToSend() {
        byte[] html = HtmlSheet.render(SampleSheets.full()).getBytes(StandardCharsets.UTF_8);

        assertThat(html).hasSizeLessThan(300_000);
    }

    @Test
    void theLanguageIsTold() {
        assertThat(Page.of(HtmlSheet.render(SampleSheets.full())).values("lang"))
                .containsExactly("en");
    }
}
