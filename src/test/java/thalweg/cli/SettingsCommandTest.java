package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.text.Width;

final class SettingsCommandTest {

    private static final String RIG = """
            {"name": "lowering",
             "points": [{"name": "A", "at": [-0.3, 0], "strength_kN": 25}, {"name": "B", "at": [0.3, 0]}],
             "load": {"mass_kg": 100, "factor": 1.5, "toward_deg": 0},
             "rig": {"kind": "focused", "focus": [0, -0.6], "EA_kN": 70}}
            """;

    @TempDir
    private Path home = Path.of("");

    private Shell.Ran analyze(String... more) throws IOException {
        Path file = home.resolve("rig.json");
        Files.writeString(file, RIG);
        String[] arguments = new String[more.length + 2];
        arguments[0] = "analyze";
        arguments[1] = file.toString();
        System.arraycopy(more, 0, arguments, 2, more.length);
        return new Shell(home).run(arguments);
    }

    private Path settings(String text) throws IOException {
        Path file = home.resolve(".config/thalweg/settings.json");
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private static String words(Shell.Ran ran) {
        return ran.out().replaceAll("\\s+", " ");
    }

    @Test
    void aLoadWithAFactorIsPrintedWithItAndCalledByItsName() throws IOException {
        Shell.Ran ran = analyze();

        assertThat(ran.code()).isZero();
        assertThat(words(ran))
                .contains("Load 100 kg x 1.5 (lowered, one person), so 1.47 kN, toward 0°")
                .contains("The load pulls 1.5 times as hard as at rest, as stated.");
    }

    @Test
    void theUsersOwnSettingsNameTheirLoads() throws IOException {
        settings("{\"loads\": [{\"name\": \"Seilbahn\", \"mass_kg\": 100, \"factor\": 1.5}]}");

        assertThat(words(analyze())).contains("Load 100 kg x 1.5 (Seilbahn)");
    }

    @Test
    void anotherFileOfSettingsCanBeNamed() throws IOException {
        settings("{\"nonsense\": 1}");
        Path other = Files.writeString(home.resolve("other.json"), "{\"loads\": []}");

        Shell.Ran ran = analyze("--settings", other.toString());

        assertThat(ran.code()).isZero();
        assertThat(words(ran)).contains("Load 100 kg x 1.5, so 1.47 kN");
    }

    @Test
    void settingsThatCannotBeUsedStopTheWorkBeforeItBegins() throws IOException {
        Path file = settings("{\"nonsense\": 1}");

        Shell.Ran ran = analyze();

        assertThat(ran.code()).isEqualTo(ExitCodes.WRONG_INPUT);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains("The settings in " + file + " cannot be used: line 1, nonsense: is a key that is not known");
    }

    @Test
    void whyExplainsEveryFigureBehindTheReport() throws IOException {
        Shell.Ran ran = analyze("--why");

        assertThat(ran.code()).isZero();
        assertThat(words(ran))
                .contains("Why these figures What was put in")
                .contains("0.98 kN x factor 1.5 = 1.47 kN, taken to pull all the time.")
                .contains("Strength over force, B: unknown (the strength of B is not known)")
                .contains("Of this nobody stated: sway to either side: 0° (default)");
        assertThat(ran.out().indexOf("Cautions")).isLessThan(ran.out().indexOf("Why these figures"));
        assertThat(ran.out().substring(ran.out().indexOf("Why these figures")).lines())
                .allMatch(line -> Width.of(line) <= 90);
    }

    @Test
    void whyDoesNotGoWithJson() throws IOException {
        assertThat(analyze("--why", "--json").err()).contains("--why is for reading");
        assertThat(analyze("--why", "--jsonl").code()).isEqualTo(ExitCodes.WRONG_INPUT);
    }

    @Test
    void anotherLoadComesByItsNameAndKeepsTheDirection() throws IOException {
        Shell.Ran ran = analyze("--load", "RESCUE");

        assertThat(ran.code()).isZero();
        assertThat(words(ran)).contains("Load 200 kg, toward 0°");
    }

    @Test
    void aLoadThatNobodyNamedIsRefusedWithThoseThereAre() throws IOException {
        assertThat(analyze("--load", "elephant").err())
                .isEqualTo("There is no load \"elephant\"; there are \"one person\", \"one person, wet kit\","
                        + " \"two people, rescue\", \"lowered, one person\", \"bouncing, one person\".\n");
        assertThat(analyze("--load", "one").err())
                .isEqualTo("Several loads fit \"one\"; they are \"one person\", \"one person, wet kit\","
                        + " \"lowered, one person\", \"bouncing, one person\".\n");
        settings("{\"loads\": []}");
        assertThat(analyze("--load", "one person").err())
                .isEqualTo("There is no load \"one person\", for your settings name none; see src/docs/settings.md.\n");
    }

    @Test
    void aRigALineGoesBySettingsAndLoadLikeAFileDoes() throws IOException {
        settings("{\"derating\": {\"worn\": 0.4}, \"loads\": [{\"name\": \"us\", \"mass_kg\": 300}]}");
        Path one = Files.writeString(
                home.resolve("one.jsonl"),
                "{\"name\": \"x\", \"points\": [{\"name\": \"A\","
                        + " \"at\": [0, 0], \"strength_kN\": 20, \"condition\": \"worn\"}], \"load\": {\"mass_kg\": 90, \"toward_deg\": 0},"
                        + " \"rig\": {\"kind\": \"single\", \"focus\": [0, -0.5], \"EA_kN\": 50}}");

        Shell.Ran ran = new Shell(home).run("analyze", "--jsonl", "--load", "us", one.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("\"share\": 0.4").contains("\"point_kN\": {\"A\": 2.94");
    }

    @Test
    void settingsThatAreNamedMustBeThere() throws IOException {
        Shell.Ran ran = analyze("--settings", home.resolve("nowhere.json").toString());

        assertThat(ran.code()).isEqualTo(ExitCodes.WRONG_INPUT);
        assertThat(ran.err()).contains("There is no file " + home.resolve("nowhere.json"));
    }
}
