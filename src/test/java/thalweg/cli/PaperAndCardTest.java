package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.testing.PdfText;

final class PaperAndCardTest {

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void openShell() {
        shell = new Shell(home);
    }

    private String written(String... more) throws IOException {
        Path file = home.resolve("out.pdf");
        String[] arguments = new String[more.length + 6];
        System.arraycopy(
                new String[] {"sheet", "--demo", "éclusaune", "--overwrite", "--out", file.toString()},
                0,
                arguments,
                0,
                6);
        System.arraycopy(more, 0, arguments, 6, more.length);
        Shell.Ran ran = shell.run(arguments);
        assertThat(ran.code()).as(ran.err()).isZero();
        return PdfText.unbroken(Files.readAllBytes(file));
    }

    @Test
    void theEndingOfTheFileSaysThatItIsPaper() throws IOException {
        assertThat(written()).contains("Éclusaune", "Station:Porte", "Readthisfirst");
        assertThat(Files.readString(home.resolve("out.pdf"), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void thePocketHasEveryStationAndSaysWhatItLeavesOut() throws IOException {
        assertThat(written("--paper", "pocket")).contains("Station:Porte", "Leftouthere", "Emergency");
    }

    @Test
    void paperIsNotPrintedOnTheTerminal() {
        Shell.Ran ran = shell.run("sheet", "--demo", "éclusaune", "--as", "pdf");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("A PDF is no text for a terminal; name the file to write with --out PATH.");
    }

    @Test
    void paperIsForPaper() {
        Shell.Ran ran = shell.run("sheet", "--demo", "éclusaune", "--as", "text", "--paper", "letter");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("--paper is for PDF");
    }

    private String card(String station) {
        Shell.Ran ran = shell.run("sheet", "--demo", "éclusaune", "--as", "text", "--station", station);
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.out();
    }

    @Test
    void aStationIsFoundByNamePartOfItAndNumberOfItsPlace() {
        String card = card("Dalle line");

        assertThat(card).contains("Dalle line", "Read this first").doesNotContain("Station: Orgue");
        assertThat(card("dall")).isEqualTo(card);
        assertThat(card("11")).isEqualTo(card).contains("Place 11: ");
    }

    @Test
    void aStationThatIsNotThereOrNotTheOnlyOneIsRefusedWithThoseThatAre() {
        Shell.Ran none = shell.run("sheet", "--demo", "éclusaune", "--as", "text", "--station", "zzz");
        Shell.Ran several = shell.run("sheet", "--demo", "éclusaune", "--as", "text", "--station", "orgue");

        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("has no station \"zzz\"; it has: ", "Porte, place ");
        assertThat(several.code()).isEqualTo(2);
        assertThat(several.err()).contains("fits several stations of", "Orgue, top", "Orgue, hanging");
    }

    @Test
    void aCardComesInEveryForm() throws IOException {
        assertThat(shell.run("sheet", "--demo", "éclusaune", "--station", "porte")
                        .out())
                .contains("<h1><bdi>Porte, ");
        assertThat(shell.run("sheet", "--demo", "éclusaune", "--as", "markdown", "--station", "porte")
                        .out())
                .startsWith("# Porte, ");
        assertThat(written("--station", "porte")).contains("Porte,", "Station:Porte");
        assertThat(written("--station", "porte", "--paper", "pocket")).contains("Station:Porte");
    }

    @Test
    void aFontThatCannotBeUsedIsNamed() throws IOException {
        Path fonts = Files.createDirectories(shell.folders().fonts());
        Files.writeString(fonts.resolve("broken.ttf"), "no font");

        Shell.Ran ran = shell.run(
                "sheet", "--demo", "éclusaune", "--out", home.resolve("x.pdf").toString());

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("broken.ttf cannot be used", "take it out of the folder");
        assertThat(home.resolve("x.pdf")).doesNotExist();
    }

    @Test
    void whatIsLeftOutIsSaidOnPaperAndNowhereElse() throws IOException {
        String paper = written("--no-places", "--no-names", "--no-history", "--no-analyses", "--part", "2..5");

        assertThat(paper)
                .contains("places2to5of", "Leftoutatexport", "bywhomisleftout")
                .doesNotContain("°0", "Lastinspections", "Latestriganalysis");
    }

    @Test
    void aPartThatIsNotOnTheLineIsRefused() {
        for (String part : new String[] {"0..3", "5..2", "3..99", "x"}) {
            Shell.Ran ran = shell.run("sheet", "--demo", "éclusaune", "--as", "text", "--part", part);

            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err()).contains("The part ");
        }
        assertThat(shell.run("sheet", "--demo", "éclusaune", "--as", "text", "--part", "1..2", "--station", "Porte")
                        .err())
                .contains("leave out the station or the part");
    }
}
