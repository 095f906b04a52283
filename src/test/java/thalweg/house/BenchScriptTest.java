package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.house.Checkout.Outcome;

/** How measuring begins, and how it says that it cannot. */
class BenchScriptTest {

    @TempDir
    Path folder;

    private Checkout checkout;

    @BeforeEach
    void makeCheckout() throws IOException {
        checkout = new Checkout(folder);
        checkout.withCommand("java", "exit 0").withCommand("mvn", "exit 1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"java", "mvn", "script"})
    void aMissingToolIsOneSentence(String missing) throws Exception {
        checkout.without(missing);

        Outcome outcome = bench();

        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).startsWith("Measuring needs " + missing + ", ");
        assertThat(outcome.err().lines()).hasSize(1);
    }

    @Test
    void anUnknownGroupIsRefusedBeforeAnythingIsBuilt() throws Exception {
        Outcome outcome = bench("rig", "ropes");

        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err())
                .isEqualTo("There is no group ropes; there are rig, records, sheets, start and keys.\n");
        assertThat(checkout.target("bench-build.log")).doesNotExist();
    }

    @Test
    void aBuildThatFailsSaysWhereTheReasonIs() throws Exception {
        Outcome outcome = bench();

        assertThat(outcome.code()).isEqualTo(1);
        assertThat(outcome.err()).endsWith("/target/bench-build.log says why.\n");
        assertThat(checkout.target("bench-build.log")).exists();
    }

    private Outcome bench(String... groups) throws IOException, InterruptedException {
        return checkout.run(folder, checkout.command("bench", groups));
    }
}
