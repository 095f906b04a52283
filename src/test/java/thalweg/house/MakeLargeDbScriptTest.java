package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.house.Checkout.Outcome;

/** How a large database is asked for, and what is refused before anything is built. */
class MakeLargeDbScriptTest {

    @TempDir
    Path folder;

    private Checkout checkout;

    @BeforeEach
    void makeCheckout() throws IOException {
        checkout = new Checkout(folder);
        checkout.withCommand("java", "printf '%s ' \"$@\"").withCommand("mvn", "exit 0");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--canyons|--canyons needs a number after it.",
                "--canyons ten|--canyons needs a number from 0 to 9999999, not \"ten\".",
                "--inspections -1|--inspections needs a number from 0 to 9999999, not \"-1\".",
                "--stations 3|There is no option --stations; there are --canyons and --inspections.",
                "one.db two.db|One file is made, not two: one.db and two.db."
            })
    void wrongUseIsOneSentence(String arguments, String sentence) throws Exception {
        Outcome outcome = make(arguments.split(" "));

        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).isEqualTo(sentence + "\n");
    }

    @Test
    void withoutAFileItSaysHowItIsUsed() throws Exception {
        assertThat(make().err()).startsWith("Which file? scripts/make-large-db FILE");
    }

    @Test
    void aFileThatIsThereIsLeftAlone() throws Exception {
        Path file = Files.writeString(folder.resolve("mine.db"), "mine");

        Outcome outcome = make(file.toString());

        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).isEqualTo("The file " + file + " is there already; name one that is not.\n");
        assertThat(file).hasContent("mine");
    }

    @ParameterizedTest
    @ValueSource(strings = {"java", "mvn"})
    void aMissingToolIsOneSentence(String missing) throws Exception {
        checkout.without(missing);

        Outcome outcome = make("large.db");

        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).startsWith("This needs " + missing + ", ");
    }

    private Outcome make(String... arguments) throws IOException, InterruptedException {
        return checkout.run(folder, checkout.command("make-large-db", arguments));
    }
}
