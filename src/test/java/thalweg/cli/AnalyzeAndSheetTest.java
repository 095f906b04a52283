package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.text.Width;

final class AnalyzeAndSheetTest {

    private static final String RIG =
            Path.of("sample-data", "rigs", "two-bolts-level.json").toString();
    private static final String TREE =
            Path.of("sample-data", "rigs", "single-tree.json").toString();

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void openShell() {
        shell = new Shell(home);
    }

    @Test
    void aReportHasFiguresAssumptionsAndCautions() {
        Shell.Ran ran = shell.run("analyze", RIG);

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("POINT", "AT THE AIM", "left bolt", "Largest angle")
                .contains("E  Equalised:", "A  Angle:")
                .contains("Material: 2.", "connectors: 3", "from memory")
                .contains("Best focus on the line across the aim")
                .contains("STRENGTH OVER IT", "with the load toward", "when right bolt goes")
                .contains("What the model takes for granted", "Cautions", "not a replacement for training");
    }

    @Test
    void aLimitedRigIsReportedWithItsKnotsAndStandsOnTheSheet() {
        String limited = Path.of("sample-data", "rigs", "limited-slider.json").toString();
        String words = shell.run("analyze", limited).out().replaceAll("\\s+", " ");
        shell.run("analyze", "--demo", limited, "--station", "éclusaune/porte", "--attach");
        String sheet =
                shell.run("sheet", "--demo", "éclusaune", "--as", "text").out().replaceAll("\\s+", " ");

        String knots = "limiter knots 0.06 m (left bolt) and 0.05 m (right bolt) from the focus, found so that the"
                + " master slides freely from -15° to 15°";
        assertThat(words)
                .contains(knots, "2 strands in a leg, 2 on which the master slides")
                .contains("At the aim the master is off both limiter knots. It is off both in 11 of 21 directions")
                .contains("A cut of the left bolt leg is like the loss of left bolt.")
                .contains("A cut of one strand of the slider leaves the one beside it.")
                .contains("Friction at the master may leave other shares: left bolt 38 to 62 %");
        assertThat(sheet)
                .contains("Layout: limited (the master slides between two knots): " + knots)
                .contains("Load: 90 kg, toward");
        assertThat(shell.run("analyze", "--units", "imperial", limited).out())
                .contains("limiter knots 0.2 ft")
                .doesNotContain(" kN");
    }

    @Test
    void imperialReportsHavePoundsForce() {
        assertThat(shell.run("analyze", "--units", "imperial", RIG).out())
                .contains("lbf")
                .doesNotContain(" kN");
    }

    @Test
    void aCascadeSaysWhatItComparesAndFromWhichSeed() {
        Shell.Ran ran = shell.run("analyze", RIG, "--cascade", "--trials", "3000", "--seed", "9");

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("Cascade, 3000 trials, seed 9: a comparison of layouts", "never a")
                .contains("0 of 3000, under 3/3000 if your beliefs hold; hidden defects");
        assertThat(shell.run("analyze", TREE, "--cascade").out())
                .contains("Cascade: unknown. Not known: the strength of");
        assertThat(shell.run("analyze", RIG, "--json").out())
                .doesNotContain("cascade")
                .contains("best_focus");
    }

    @Test
    void noPeakIsPrintedWithoutItsRange() {
        assertThat(shell.run("analyze", RIG).out())
                .contains("left bolt goes: model peak, load at rest, dry, undamped: right bolt")
                .contains("(range ");
        assertThat(shell.run("analyze", RIG, "--json").out()).contains("\"peak_range\"");
        assertThat(shell.run("analyze", TREE).out()).doesNotContain("(range ");
    }

    @Test
    void aLongCascadeTellsHowFarItIs() {
        Shell.Ran ran = shell.run("analyze", RIG, "--cascade", "--trials", "200000", "--json");

        assertThat(ran.out()).contains("\"trials\": 200000", "\"in_words\": \"0 of 200000");
        assertThat(ran.err()).contains("100000 of 200000 trials done.");
    }

    @Test
    void optionsOfACascadeThatCannotBeAreRefused() {
        assertThat(shell.run("analyze", RIG, "--trials", "10").err())
                .contains("--trials and --seed belong to --cascade");
        assertThat(shell.run("analyze", RIG, "--cascade", "--trials", "0").err())
                .contains("at least 1");
        assertThat(shell.run("analyze", RIG, "--cascade", "--trials", "0").code())
                .isEqualTo(2);
        assertThat(shell.run("analyze", "--jsonl", RIG, "--cascade").err())
                .contains("does not go with --json, --attach, --cascade");
    }

    @Test
    void layoutsAreComparedWhereSomebodyAsks() {
        assertThat(shell.run("analyze", RIG, "--compare").out())
                .contains("Layouts side by side. Nobody said what matters most.")
                .contains("The figures speak for focused.")
                .contains("If the load swayed 20° to either side or more: limited.");
        assertThat(shell.run("analyze", RIG, "--compare", "--matters", "equal-shares")
                        .out())
                .contains("The figures speak for limited, where equal shares matter most.");
        assertThat(shell.run("analyze", RIG, "--compare", "--json").out())
                .contains("\"speaks_for\": \"focused\"", "\"matters\": \"unstated\"", "\"would_change\"");
        assertThat(shell.run("analyze", RIG, "--json").out()).doesNotContain("speaks_for");
    }

    @Test
    void whatMattersBelongsToAComparisonAndIsOneOfTwo() {
        assertThat(shell.run("analyze", RIG, "--matters", "equal-shares").err())
                .contains("--matters belongs to --compare");
        assertThat(shell.run("analyze", RIG, "--compare", "--matters", "style").err())
                .contains("it must be equal-shares or little-extension");
        assertThat(shell.run("analyze", RIG, "--compare", "--matters", "style").code())
                .isEqualTo(2);
    }

    @Test
    void standardInputIsReadForADash() throws IOException {
        Shell.Ran ran = shell.typing(Files.readString(Path.of(TREE)), "analyze", "-", "--json");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("{").contains("\"steady\"");
    }

    @Test
    void oneObjectIsForOneFile() {
        Shell.Ran ran = shell.run("analyze", "--json", RIG, TREE);

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith("--json prints one object, for one file");
    }

    @Test
    void aWrongFileAmongSeveralToAttachPrintsAndKeepsNothing() throws IOException {
        Path wrong = Files.writeString(home.resolve("wrong.json"), "{\"points\": []}");
        shell.run("list", "--demo");

        Shell.Ran ran =
                shell.run("analyze", "--demo", RIG, wrong.toString(), "--station", "éclusaune/porte", "--attach");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("wrong.json is no rig that can be computed");
        assertThat(shell.run("show", "--demo", "éclusaune/porte").out()).doesNotContain("Rig analysis");
    }

    @Test
    void attachingNeedsAStationAndTheOtherWayRound() {
        assertThat(shell.run("analyze", RIG, "--attach").err()).contains("--station and --attach go together");
        assertThat(shell.run("analyze", RIG, "--station", "x").err()).contains("--station and --attach go together");
    }

    @Test
    void whatIsAttachedCountsAsItWasFoundAndByYourShares() throws IOException {
        Path settings = Files.writeString(home.resolve("mine.json"), "{\"derating\": {\"worn\": 0.7}}");
        shell.run("inspect", "--demo", "éclusaune/porte", "left bolt", "worn", "--by", "Ada");

        Shell.Ran ran = shell.run(
                "analyze",
                "--demo",
                RIG,
                "--station",
                "éclusaune/porte",
                "--attach",
                "--settings",
                settings.toString());

        assertThat(ran.out().replaceAll("\\s+", " ")).contains("condition 0.7, as stated with the rig: found worn");
        assertThat(shell.run("sheet", "--demo", "éclusaune", "--as", "text")
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("condition 0.7, as stated with the rig: found worn");
    }

    @Test
    void theWholeWayByCommandsEndsOnASheet() throws IOException {
        Path sheet = home.resolve("éclusaune.html");

        shell.run("inspect", "--demo", "éclusaune/porte", "ring", "unsafe", "--by", "Ada", "--note", "groove <3 mm>");
        Shell.Ran attached = shell.run("analyze", "--demo", RIG, "--station", "éclusaune/porte", "--attach");
        Shell.Ran written = shell.run("sheet", "--demo", "éclusaune", "--as", "html", "--out", sheet.toString());

        assertThat(attached.err()).contains("Attached to Gorge de l'Éclusaune/Porte.");
        assertThat(written.code()).isZero();
        assertThat(Files.readString(sheet))
                .contains("Gorge de l", "invented for practice", "groove &lt;3 mm&gt;", "<svg", "2026-11-25")
                .doesNotContain("http://www.w3.org/1999/xlink", "<script");
        assertThat(Files.size(sheet)).isLessThan(300_000);
        assertThat(shell.run("sheet", "--demo", "éclusaune", "--out", sheet.toString())
                        .err())
                .contains("is there already");
    }

    @Test
    void aTextSheetIsAtMostSeventyTwoColumnsWide() {
        Shell.Ran ran = shell.run("sheet", "--demo", "ombreñal", "--as", "text");

        assertThat(ran.code()).isZero();
        assertThat(ran.out().lines()).allMatch(line -> Width.of(line) <= 72);
        assertThat(ran.out()).contains("Ranura de Ombreñal", "invented for practice");
    }

    @Test
    void theDemoKeepsWhatWasEnteredUntilItIsMadeAnew() {
        shell.run("inspect", "--demo", "éclusaune/porte", "ring", "doubtful");
        assertThat(shell.run("show", "--demo", "éclusaune/porte").out()).contains("ring: ? doubtful on 2026-11-25");

        assertThat(shell.run("show", "--demo", "--anew", "éclusaune/porte").out())
                .contains("ring: ~ worn on 2026-09-19");
    }

    @Test
    void anUnknownCanyonIsOneSentence() {
        Shell.Ran ran = shell.run("sheet", "--demo", "nowhere");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err().lines()).hasSize(1);
        assertThat(ran.err()).contains("There is no canyon named \"nowhere\"");
    }

    @Test
    void theSheetsOfManyCanyonsGoIntoOneFolder() throws IOException {
        Path folder = Files.createDirectory(home.resolve("sheets"));

        Shell.Ran ran =
                shell.run("sheets", "--demo", "--as", "text", "--longest-drop", "30 m..", "--out", folder.toString());
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).contains("sheets written to " + folder);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).isNotEmpty().allMatch(file -> file.toString().endsWith(".txt"));
        }

        Shell.Ran again =
                shell.run("sheets", "--demo", "--as", "text", "--longest-drop", "30 m..", "--out", folder.toString());
        assertThat(again.code()).isEqualTo(ExitCodes.WRONG_INPUT);
        assertThat(again.err()).contains("are there already");

        Shell.Ran none = shell.run("sheets", "--demo", "nowhere", "--out", folder.toString());
        assertThat(none.code()).isEqualTo(ExitCodes.NO);
        assertThat(none.err()).contains("No canyon fits; nothing was written.");
    }
}
