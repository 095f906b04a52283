package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.house.Checkout.Outcome;

/** How everything is tested with one command. */
class TestScriptTest {

    private static final List<String> TOOLS = List.of("java", "mvn", "tmux", "chromium", "pdftotext", "script");

    private static final String TWO_RUNS = """
            echo '[INFO] Tests run: 2, Failures: 0, Errors: 0, Skipped: 0, Time elapsed: 1 s -- in thalweg.SomeTest'
            echo '[INFO] Tests run: 5, Failures: 0, Errors: 0, Skipped: 0'
            echo '[INFO] Tests run: 6, Failures: 0, Errors: 0, Skipped: 0'
            echo '[INFO] BUILD SUCCESS'
            """;

    @TempDir
    Path folder;

    private Checkout checkout;

    @BeforeEach
    void makeCheckout() throws IOException {
        checkout = new Checkout(folder);
    }

    @ParameterizedTest
    @ValueSource(strings = {"java", "mvn", "tmux", "chromium", "pdftotext", "script"})
    void aMissingToolIsOneSentence(String missing) throws Exception {
        withMavenThat(TWO_RUNS);
        checkout.without(missing);

        Outcome outcome = test();

        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).startsWith("The tests need " + missing + ", ");
        assertThat(outcome.err().lines()).hasSize(1);
    }

    @Test
    void theSummariesOfTheRunnerAreTheLastLines() throws Exception {
        withMavenThat(TWO_RUNS);

        Outcome outcome = test();

        assertThat(outcome.code()).isZero();
        assertThat(outcome.out()).endsWith("""
                        BUILD SUCCESS

                        Tests run: 5, Failures: 0, Errors: 0, Skipped: 0
                        Tests run: 6, Failures: 0, Errors: 0, Skipped: 0
                        """);
    }

    @Test
    void aFailureIsToldAndTheSummaryStaysLast() throws Exception {
        withMavenThat("echo '[ERROR] Tests run: 5, Failures: 1, Errors: 0, Skipped: 0'\nexit 1");

        Outcome outcome = test();

        assertThat(outcome.code()).isEqualTo(1);
        assertThat(outcome.out())
                .contains("Something failed")
                .endsWith("\nTests run: 5, Failures: 1, Errors: 0, Skipped: 0\n");
    }

    @Test
    void whatFailsAfterTheTestsFailsTheWhole() throws Exception {
        withMavenThat(TWO_RUNS + "\nexit 1");

        assertThat(test().code()).isEqualTo(1);
    }

    @Test
    void testsThatWereLeftOutAreAFailure() throws Exception {
        withMavenThat("echo '[INFO] Tests are skipped.'");

        Outcome outcome = test();

        assertThat(outcome.code()).isEqualTo(1);
        assertThat(outcome.out()).endsWith("The tests did not run in both languages.\n");
    }

    @Test
    void aSingleRunIsAFailure() throws Exception {
        withMavenThat("echo '[INFO] Tests run: 5, Failures: 0, Errors: 0, Skipped: 0'");

        Outcome outcome = test();

        assertThat(outcome.code()).isEqualTo(1);
        assertThat(outcome.out()).contains("The tests did not run in both languages.\n");
    }

    @Test
    void nothingCanBeLeftOutByAnArgument() throws Exception {
        withMavenThat(TWO_RUNS);

        Outcome outcome = checkout.run(folder, checkout.command("test", "-DskipTests"));

        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
    }

    private void withMavenThat(String body) throws IOException {
        for (String tool : TOOLS) {
            checkout.withCommand(tool, tool.equals("mvn") ? body : "exit 0");
        }
    }

    private Outcome test() throws IOException, InterruptedException {
        return checkout.run(folder, checkout.command("test"));
    }
}
