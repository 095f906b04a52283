package thalweg.sheet.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.fault.InputException;
import thalweg.service.LoadPhrases;
import thalweg.sheet.Hostile;
import thalweg.sheet.Paper;
import thalweg.sheet.RandomCanyon;
import thalweg.sheet.SampleSheets;
import thalweg.sheet.Section;
import thalweg.sheet.Sheet;
import thalweg.testing.GoldenFile;
import thalweg.testing.PdfText;

class PdfSheetTest {

    /** A whole DejaVu Sans, which has signs that the one of the program lacks; Debian's package fonts-dejavu-core. */
    private static final Path WHOLE_FONT = Path.of("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf");

    private static byte[] pdf(Sheet sheet, Paper paper) {
        return PdfSheet.render(sheet, paper, List.of(), LoadPhrases.english());
    }

    private static byte[] pdf(Sheet sheet) {
        return pdf(sheet, Paper.A4);
    }

    private static RandomCanyon named(String word) {
        return new RandomCanyon(3, mark -> mark + " " + word);
    }

    @Test
    void theFullCanyonIsReadAloudAsReviewed() {
        GoldenFile.holds("sheet/full-pdf.txt", String.join("\n", PdfText.structure(pdf(SampleSheets.full()))) + "\n");
    }

    static IntStream seeds() {
        return IntStream.range(0, 3);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyTextOfTheRecordIsThere(int seed) {
        RandomCanyon canyon = new RandomCanyon(seed, word -> word);

        assertThat(PdfText.unbroken(pdf(canyon.sheet()))).contains(canyon.expected());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyTextOfTheRecordIsThereAmidHostileOnes(int seed) {
        RandomCanyon canyon = new RandomCanyon(seed, Hostile::around);

        String text = PdfText.unbroken(pdf(canyon.sheet()));

        assertThat(text).contains(canyon.expected()).contains("<script>alert(1)</script>", "javascript:alert(1)");
    }

    @Test
    void hostileTextsLeadNowhereAndRunNothing() throws IOException {
        byte[] pdf = pdf(new RandomCanyon(7, Hostile::around).sheet());

        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDDocumentCatalog catalog = document.getDocumentCatalog();
            assertThat(catalog.getOpenAction()).isNull();
            assertThat(catalog.getAcroForm()).isNull();
            assertThat(catalog.getNames() == null || catalog.getNames().getJavaScript() == null)
                    .isTrue();
            for (PDPage page : document.getPages()) {
                assertThat(page.getAnnotations()).allMatch(PdfSheetTest::leadsToAPlace);
            }
        }
    }

    private static boolean leadsToAPlace(PDAnnotation annotation) {
        return annotation instanceof PDAnnotationLink link
                && (!(link.getAction() instanceof PDActionURI uri)
                        || uri.getURI().startsWith("geo:"));
    }

    @ParameterizedTest
    @EnumSource(
            value = Paper.class,
            names = {"A4", "LETTER"})
    void everyPageHasTheCanyonTheDayItsNumberAndThatItIsInvented(Paper paper) {
        List<String> pages = PdfText.pages(pdf(SampleSheets.full(), paper));

        assertThat(pages).hasSizeGreaterThan(2);
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i))
                    .contains("Żółta Szczelina | as of 2026-11-25 | invented for practice, no real place")
                    .contains((i + 1) + " / " + pages.size());
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Paper.class,
            names = {"A4", "LETTER"})
    void pagesHaveTheSizeOfTheirPaper(Paper paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(SampleSheets.full(), paper))) {
            for (PDPage page : document.getPages()) {
                assertThat(page.getMediaBox().getWidth() * 25.4 / 72).isCloseTo(paper.widthMillimetres(), within(0.2));
                assertThat(page.getMediaBox().getHeight() * 25.4 / 72)
                        .isCloseTo(paper.heightMillimetres(), within(0.2));
            }
        }
    }

    @Test
    void theFirstPageHasRopesFloodWaysOutAndHelp() {
        assertThat(PdfText.pages(pdf(SampleSheets.full())).get(0).replaceAll("\\s+", " "))
                .contains("Emergency", "Longest rope", "Two of 45 m.", "Ways out", "High-water", "Catchment");
    }

    @Test
    void theDocumentSaysItsTitleAndLanguageAndThatItIsTagged() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(SampleSheets.full()))) {
            PDDocumentCatalog catalog = document.getDocumentCatalog();
            assertThat(catalog.getLanguage()).isEqualTo("en");
            assertThat(catalog.getMarkInfo().isMarked()).isTrue();
            assertThat(catalog.getViewerPreferences().displayDocTitle()).isTrue();
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo(SampleSheets.full().footer());
            String metadata = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertThat(metadata).contains("pdfuaid:part");
        }
    }

    @Test
    void headingsTablesAndDrawingsAreTagged() {
        List<String> structure = PdfText.structure(pdf(SampleSheets.full()));

        assertThat(structure.stream().filter(tag("H1"))).hasSize(1);
        assertThat(structure.stream().filter(tag("H2")).map(line -> line.strip().substring("H2 ".length())))
                .startsWith(SampleSheets.full().sections().stream()
                        .map(Section::heading)
                        .toArray(String[]::new));
        assertThat(structure).anyMatch(tag("TH")).anyMatch(tag("TD")).anyMatch(tag("LI"));
        assertThat(structure.stream().filter(tag("Figure")))
                .isNotEmpty()
                .allSatisfy(figure -> assertThat(figure).hasSizeGreaterThan(40));
    }

    private static Predicate<String> tag(String name) {
        return line -> line.strip().equals(name) || line.strip().startsWith(name + " ");
    }

    @Test
    void wordsAreFoundWhoseLettersAFontWouldJoin() {
        assertThat(PdfText.unbroken(pdf(named("office-fluffy-file").sheet()))).contains("office-fluffy-file");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Żółw ſ Ǻ",
                "Ωμέγα ἀήρ",
                "Ущелье Ґ",
                "Հայերեն",
                "საქართველო",
                "± ≤ ² µ ° × – “q” ‰ →",
                "e\u0301 i\u0308"
            })
    void thisIsSetAsItIsWritten(String word) {
        String text = PdfText.unbroken(pdf(named(word).sheet()));

        assertThat(text).contains(PdfText.unbroken(word)).doesNotContain(Setting.STAND_IN);
    }

    @Test
    void whatNoFontHasIsReplacedAndListedAtTheEnd() {
        String text = String.join("", PdfText.pages(pdf(named("黄色い谷").sheet()))).replaceAll("\\s+", " ");

        assertThat(text)
                .contains("□□□□")
                .containsPattern("What could not be set.*U\\+3044 HIRAGANA LETTER I, times: \\d+")
                .contains("U+9EC4 CJK UNIFIED IDEOGRAPHS 9EC4");
    }

    @Test
    void scriptsThatRunToTheLeftAreReplacedRatherThanTurnedRound() throws IOException {
        FontFile whole = new FontFile("whole.ttf", Files.readAllBytes(WHOLE_FONT));
        byte[] pdf =
                PdfSheet.render(named("\u05E0\u05D7\u05DC").sheet(), Paper.A4, List.of(whole), LoadPhrases.english());

        assertThat(PdfText.unbroken(pdf)).contains("□□□", "U+05D7HEBREWLETTERHET");
    }

    @Test
    void aFontThatAPersonPutInPlaceSetsWhatOthersLack() throws IOException {
        Sheet sheet = named("\u2680\u2681").sheet();
        FontFile whole = new FontFile("whole.ttf", Files.readAllBytes(WHOLE_FONT));

        assertThat(PdfText.unbroken(pdf(sheet))).contains("□□").doesNotContain("\u2680");
        assertThat(PdfText.unbroken(PdfSheet.render(sheet, Paper.A4, List.of(whole), LoadPhrases.english())))
                .contains("\u2680\u2681")
                .doesNotContain(Setting.STAND_IN);
    }

    @Test
    void aFileThatIsNoFontIsRefusedByName() {
        FontFile broken = new FontFile("fonts/broken.ttf", new byte[] {0, 1, 0, 0, 9, 9});

        assertThatThrownBy(() -> PdfSheet.render(SampleSheets.bare(), Paper.A4, List.of(broken), LoadPhrases.english()))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("The font fonts/broken.ttf cannot be used");
    }

    @Test
    void fontsAreCutToWhatIsUsed() {
        assertThat(pdf(SampleSheets.full()).length).isLessThan(200_000);
    }
}
