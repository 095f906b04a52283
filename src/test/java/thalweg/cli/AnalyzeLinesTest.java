package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.Main;
import thalweg.exchange.json.RigAnswerText;
import thalweg.exchange.json.RigFile;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.rig.Analyze;
import thalweg.testing.Child;

final class AnalyzeLinesTest {

    private static final String PULLED_BY = "{\"name\": \"%s\", \"points\": [{\"name\": \"A\", \"at\": [0, 0]}],"
            + " \"load\": {\"mass_kg\": %s, \"toward_deg\": 0},"
            + " \"rig\": {\"kind\": \"single\", \"focus\": [0, -0.5], \"EA_kN\": 50}}";

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void openShell() {
        shell = new Shell(home);
    }

    private static String rig(String name) {
        return PULLED_BY.formatted(name, "90");
    }

    /** What the answer to a rig is when that is asked for alone. */
    private static String answered(String line) {
        return RigAnswerText.lineWithChains(Analyze.of(RigFile.read("rig", line)))
                .strip();
    }

    private static String because(String answer) {
        Json errors = ((Json.Fields) JsonDocument.read("answer", answer).root())
                .field("errors")
                .orElseThrow();
        return ((Json.Items) errors)
                .values().stream()
                        .map(one -> key((Json.Fields) one) + ": " + text((Json.Fields) one, "why"))
                        .reduce("", (all, one) -> all + one + "\n");
    }

    private static String key(Json.Fields error) {
        return error.field("key").orElseThrow().equals(Json.NOTHING) ? "the line" : text(error, "key");
    }

    private static String text(Json.Fields fields, String key) {
        return ((Json.Text) fields.field(key).orElseThrow()).value();
    }

    private static long lineOf(String answer) {
        return JsonDocument.read("answer", answer)
                .reader(new Findings())
                .whole("line", 1, Long.MAX_VALUE)
                .orElseThrow();
    }

    @Test
    void everyLineIsAnsweredInOrderAsItWouldBeAlone() {
        Shell.Ran ran = shell.typing(rig("one") + "\n" + rig("two") + "\n" + rig("three"), "analyze", "--jsonl", "-");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out().lines())
                .containsExactly(answered(rig("one")), answered(rig("two")), answered(rig("three")));
    }

    @Test
    void blankLinesArePassedOverAndCounted() {
        Shell.Ran ran = shell.typing("\n  \t\r\n" + rig("one") + "\r\n\n{}\n\n", "analyze", "--jsonl", "-");

        assertThat(ran.out().lines()).hasSize(2);
        assertThat(ran.out().lines().findFirst()).contains(answered(rig("one")));
        assertThat(lineOf(ran.out().lines().skip(1).findFirst().orElseThrow())).isEqualTo(5);
    }

    @Test
    void nothingToReadIsNothingToSay() {
        assertThat(shell.typing("", "analyze", "--jsonl", "-")).isEqualTo(new Shell.Ran(0, "", ""));
        assertThat(shell.typing("\n\n", "analyze", "--jsonl", "-")).isEqualTo(new Shell.Ran(0, "", ""));
    }

    @Test
    void aRefusedLineSaysEveryKeyAndReasonAndTheOthersAreAnswered() {
        String wrong = PULLED_BY.formatted("wrong", "-90").replace("\"EA_kN\": 50", "\"colour\": 5");
        String lines = rig("one") + "\n" + wrong + "\n" + rig("three") + "\n";

        Shell.Ran ran = shell.typing(lines, "analyze", "--jsonl", "-");

        String[] answers = ran.out().lines().toArray(String[]::new);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(answers).hasSize(3);
        assertThat(answers[0]).isEqualTo(answered(rig("one")));
        assertThat(answers[2]).isEqualTo(answered(rig("three")));
        assertThat(answers[1]).startsWith("{\"file\": \"standard input\", \"line\": 2, \"errors\": [{\"key\": ");
        assertThat(because(answers[1])).startsWith("rig.colour: is a key that is not known here");
        assertThat(ran.err()).isEqualTo("Lines refused: 1 of 3; with --jsonl every line is a whole rig by itself.\n");
    }

    @Test
    void everythingThatIsWrongWithTheFiguresIsSaid() {
        String wrong = PULLED_BY.formatted("wrong", "-90").replace("\"EA_kN\": 50", "\"EA_kN\": 0");

        String answer = shell.typing(wrong, "analyze", "--jsonl", "-").out();

        assertThat(because(answer)).contains("load.mass_kg: ", "rig.EA_kN: ");
    }

    @Test
    void whatIsNoObjectIsRefusedByItsPlaceInTheFile() {
        String lines = "\n{\"points\": [,]}\n[1, 2]\nnonsense\n" + rig("a") + rig("b") + "\n";

        String[] answers =
                shell.typing(lines, "analyze", "--jsonl", "-").out().lines().toArray(String[]::new);

        assertThat(because(answers[0])).startsWith("the line: standard input is not valid JSON at line 2, column 1");
        assertThat(because(answers[1])).startsWith("the line: there is no JSON object; it should begin with {.");
        assertThat(because(answers[2])).startsWith("the line: standard input is not valid JSON at line 4, column ");
        assertThat(because(answers[3])).contains("goes on after its end, at line 5, column ");
    }

    @Test
    void severalFilesAreReadOneAfterTheOther() throws IOException {
        Path one = Files.writeString(home.resolve("one.jsonl"), rig("one") + "\n{}\n");
        Path two = Files.writeString(home.resolve("two.jsonl"), "\uFEFF" + rig("two"));

        Shell.Ran ran = shell.run("analyze", "--jsonl", one.toString(), home + "/none.jsonl", two.toString());

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out().lines()).hasSize(3);
        assertThat(ran.out().lines().skip(1).findFirst().orElseThrow())
                .startsWith("{\"file\": \"" + one + "\", \"line\": 2, ");
        assertThat(ran.out().lines().skip(2)).containsExactly(answered(rig("two")));
        assertThat(ran.err()).startsWith("There is no file " + home + "/none.jsonl; check the path.\n");
    }

    @Test
    void linesAreAttachedToNothingAndPrintedInOneWay() {
        assertThat(shell.typing("", "analyze", "--jsonl", "--json", "-").code()).isEqualTo(2);
        assertThat(shell.typing("", "analyze", "--jsonl", "-", "--attach", "--station", "x")
                        .err())
                .contains("--jsonl does not go with --json, --attach");
    }

    @Test
    void anotherProgramCanTalkToItLineByLine() throws IOException, InterruptedException {
        try (Child child = new Child(home, Main.class, 64, "analyze", "--jsonl", "-")) {
            child.say(rig("first"));
            assertThat(child.answer()).isEqualTo(answered(rig("first")));
            child.say("");
            child.say("{\"name\": ");
            assertThat(lineOf(child.answer())).isEqualTo(3);
            child.say(rig("last"));
            assertThat(child.answer()).isEqualTo(answered(rig("last")));
            child.input().close();

            assertThat(child.code()).isEqualTo(1);
            assertThat(child.errors()).startsWith("Lines refused: 1 of 3");
        }
    }

    /** A line of 200 MB goes through a program that may use 32 MB; what is no text does not stop it either. */
    @Test
    void longLinesAndBrokenTextAreRefusedAndTakeNoRoom() throws IOException, InterruptedException {
        byte[] much = new byte[1 << 20];
        Arrays.fill(much, (byte) ' ');
        try (Child child = new Child(home, Main.class, 32, "analyze", "--jsonl", "-")) {
            OutputStream in = child.input();
            for (int i = 0; i < 200; i++) {
                in.write(much);
            }
            child.say(rig("behind it"));
            String tooLong = child.answer();
            in.write(new byte[] {'"', (byte) 0xC3, (byte) 0x28, '"', '\n'});
            in.write(new byte[] {0, '{', 0, '\n'});
            child.say(rig("at the end"));
            in.close();

            assertThat(because(tooLong)).isEqualTo("the line: is longer than 100000 bytes; that is no rig.\n");
            assertThat(because(child.answer())).startsWith("the line: standard input is not UTF-8 text");
            assertThat(because(child.answer())).contains("is not valid JSON at line 3, column ");
            assertThat(child.answer()).isEqualTo(answered(rig("at the end")));
            assertThat(child.code()).isEqualTo(1);
        }
    }

    @Test
    void aReaderThatHasSeenEnoughEndsItQuietly() throws IOException, InterruptedException {
        try (Child child = new Child(home, Main.class, 64, "analyze", "--jsonl", "-")) {
            child.say(rig("first"));
            child.answer();
            child.hangUp();

            assertThat(sayUntilNobodyListens(child)).isTrue();
            assertThat(child.code()).isZero();
            assertThat(child.errors()).isEmpty();
        }
    }

    /** Whether the child stopped reading before ten thousand lines. */
    private static boolean sayUntilNobodyListens(Child child) {
        byte[] line = (rig("more") + "\n").getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 10_000; i++) {
            try {
                child.input().write(line);
                child.input().flush();
            } catch (IOException e) {
                return true;
            }
        }
        return fail("it read on although nobody listened");
    }

    @Test
    void severalReportsHaveAHeadingEachAndOneThatIsWrongStopsNoOther() throws IOException {
        String level = Path.of("sample-data", "rigs", "two-bolts-level.json").toString();
        Path wrong = Files.writeString(home.resolve("wrong.json"), "{\"points\": []}");

        Shell.Ran alone = shell.run("analyze", level);
        Shell.Ran ran = shell.run("analyze", level, wrong.toString(), level);

        String head = level + "\n" + "=".repeat(level.length()) + "\n";
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out())
                .isEqualTo(head + alone.out() + "\n\n" + wrong + "\n"
                        + "=".repeat(wrong.toString().length())
                        + "\nNot computed; standard error says why.\n\n\n" + head + alone.out());
        assertThat(ran.err()).startsWith(wrong + " is no rig that can be computed: ");
        assertThat(alone.out()).doesNotContain("===");
    }
}
