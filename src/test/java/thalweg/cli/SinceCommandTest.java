package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What changed since an earlier sheet, as whoever asks for it by a command meets it. */
final class SinceCommandTest {

    private static final Pattern NOTED = Pattern.compile("Noted as sheet ([0-9a-f-]+)\\.");

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void openShell() {
        shell = new Shell(home);
    }

    private String written(String... more) {
        String[] all = new String[more.length + 6];
        System.arraycopy(more, 0, all, 6, more.length);
        System.arraycopy(
                new String[] {
                    "sheet",
                    "--demo",
                    "éclusaune",
                    "--overwrite",
                    "--out",
                    home.resolve("s.txt").toString()
                },
                0,
                all,
                0,
                6);
        Shell.Ran ran = shell.run(all);
        assertThat(ran.code()).as(ran.err()).isZero();
        Matcher noted = NOTED.matcher(ran.err());
        assertThat(noted.find()).as(ran.err()).isTrue();
        return noted.group(1);
    }

    private String sheet() throws IOException {
        return Files.readString(home.resolve("s.txt")).replaceAll("[\\s\u00A0]+", " ");
    }

    private void run(String... words) {
        Shell.Ran ran = shell.run(words);
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    @Test
    void aSheetBeginsWithWhatChangedSinceAnEarlierOne() throws IOException {
        String first = written();
        written("--since", first);
        assertThat(sheet()).contains("What changed since sheet " + first, "Nothing changed in the records.");

        run(
                "inspect",
                "--demo",
                "éclusaune/porte",
                "ring",
                "unsafe",
                "--on",
                "2026-11-20",
                "--by",
                "Ada",
                "--note",
                "worn through");
        run("remove", "--demo", "éclusaune/porte/chain", "--reason", "pulled out");
        written("--since", first.replaceAll("-.*", ""));

        String text = sheet();
        assertThat(text)
                .contains("What changed since sheet " + first)
                .containsPattern("Conditions: part ring at Porte: was . \\p{L}+, now ! unsafe")
                .contains("took part chain at Porte out of use")
                .contains("New inspections: added inspection of part ring at Porte, 2026-11-20: unsafe");
        assertThat(text.indexOf("What changed since")).isLessThan(text.indexOf("== Emergency"));
    }

    @Test
    void whatIsLeftOutIsNotAmongTheChangesEither() throws IOException {
        String first = written();
        run("inspect", "--demo", "éclusaune/porte", "ring", "unsafe", "--on", "2026-11-20", "--by", "Ada");

        written("--since", first, "--part", "4..9");
        assertThat(sheet()).contains("Nothing changed in the records.");

        written("--since", first, "--no-history");
        assertThat(sheet()).contains("now ! unsafe").doesNotContain("New inspections");
    }

    @Test
    void aNumberThatIsNotKnownIsRefusedInOneSentence() {
        String first = written();
        String elsewhere = first.replaceAll("-.*", "") + "-" + (first.endsWith("0") ? "1" : "0").repeat(6);

        assertThat(refused("99")).contains("has written no sheet 99");
        assertThat(refused(elsewhere)).contains("is of another database", "cannot be known here");
        assertThat(refused("x")).contains("is no number of a sheet");
        assertThat(shell.run("sheet", "--demo", "ombreñal", "--as", "text", "--since", first)
                        .err())
                .contains("is about another canyon than");
    }

    private String refused(String number) {
        Shell.Ran ran = shell.run("sheet", "--demo", "éclusaune", "--as", "text", "--since", number);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        return ran.err();
    }
}
