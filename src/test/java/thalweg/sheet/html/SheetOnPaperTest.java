package thalweg.sheet.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.sheet.Hostile;
import thalweg.sheet.RandomCanyon;
import thalweg.sheet.SampleSheets;
import thalweg.sheet.Sheet;

/** Prints sheets with Chromium and reads the paper with Poppler. */
class SheetOnPaperTest {

    private static final Pattern FONT =
            Pattern.compile("<fontspec [^>]*size=\"(\\d+)\" family=\"[^\"]*(?:DejaVu|Liberation)");

    @TempDir
    Path folder;

    private Path printed(Sheet sheet) throws IOException, InterruptedException {
        Tools tools = new Tools(folder);
        return tools.print(tools.page("sheet.html", HtmlSheet.render(sheet)));
    }

    private List<String> pages(Path paper) throws IOException, InterruptedException {
        String text = new Tools(folder).run(List.of("pdftotext", "-layout", paper.toString(), "-"));
        return List.of(text.split("\f")).stream()
                .map(page -> page.replaceAll("\\s+", " ").replace(" / ", "/"))
                .toList();
    }

    @Test
    void everyPageHasTheCanyonTheDayItsNumberAndThatItIsInvented() throws IOException, InterruptedException {
        List<String> pages = pages(printed(SampleSheets.full()));

        assertThat(pages).hasSizeGreaterThan(2);
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i))
                    .contains(
                            "Żółta Szczelina | as of 2026-11-25 | invented for practice, no real place",
                            (i + 1) + "/" + pages.size());
        }
    }

    @Test
    void theFirstPageHasRopesFloodWaysOutAndHelp() throws IOException, InterruptedException {
        assertThat(pages(printed(SampleSheets.full())).get(0))
                .contains("Emergency", "Longest rope", "Two of 45 m.", "Ways out", "High-water", "Catchment");
    }

    @Test
    void anyNameComesToTheFootAsItIs() throws IOException, InterruptedException {
        RandomCanyon canyon = new RandomCanyon(3, word -> "\"\\22 }</style><b>" + word);

        assertThat(pages(printed(canyon.sheet())))
                .allSatisfy(page -> assertThat(page).contains(canyon.sheet().footer()));
    }

    static Stream<Sheet> sheets() {
        return Stream.of(SampleSheets.full(), new RandomCanyon(7, Hostile::around).sheet());
    }

    /**
     * A browser makes everything smaller where one thing is too wide for the paper. Only the font of the page counts: for
     * one that stands in for a script it lacks, the tool guesses the size.
     */
    @ParameterizedTest
    @MethodSource("sheets")
    void noLetterIsSmallerThanTenPoints(Sheet sheet) throws IOException, InterruptedException {
        Path paper = printed(sheet);
        String fonts =
                new Tools(folder).run(List.of("pdftohtml", "-xml", "-i", "-stdout", "-zoom", "1", paper.toString()));

        List<Integer> sizes = FONT.matcher(fonts)
                .results()
                .map(font -> Integer.valueOf(font.group(1)))
                .toList();
        assertThat(sizes).isNotEmpty().allMatch(size -> size >= 10);
    }

    @Test
    void paperIsBlackOnWhite() throws IOException, InterruptedException {
        Path paper = printed(SampleSheets.full());
        new Tools(folder)
                .run(List.of(
                        "pdftoppm",
                        "-r",
                        "30",
                        paper.toString(),
                        folder.resolve("picture").toString()));

        try (Stream<Path> files = Files.list(folder)) {
            List<Path> pictures =
                    files.filter(file -> file.toString().endsWith(".ppm")).toList();
            assertThat(pictures).isNotEmpty();
            for (Path picture : pictures) {
                assertOnlyGrey(picture);
            }
        }
    }

    /** Pixels of a binary PPM of at most 256 levels follow its header of three lines. */
    private static void assertOnlyGrey(Path picture) throws IOException {
        byte[] bytes = Files.readAllBytes(picture);
        int at = 0;
        for (int lines = 0; lines < 3; at++) {
            lines += bytes[at] == '\n' ? 1 : 0;
        }
        boolean white = false;
        boolean black = false;
        for (; at + 2 < bytes.length; at += 3) {
            assertThat(bytes[at] == bytes[at + 1] && bytes[at] == bytes[at + 2])
                    .as("a grey pixel")
                    .isTrue();
            white |= (bytes[at] & 0xFF) == 255;
            black |= (bytes[at] & 0xFF) < 60;
        }
        assertThat(white && black).isTrue();
    }

    @Test
    void hostileTextsArePrintedAsTexts() throws IOException, InterruptedException {
        RandomCanyon canyon = new RandomCanyon(7, Hostile::around);
        String text = String.join(" ", pages(printed(canyon.sheet())));

        assertThat(text).contains("<script>").contains(canyon.expected());
    }
}
