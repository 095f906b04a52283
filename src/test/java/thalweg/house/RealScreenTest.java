package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thalweg.Main;
import thalweg.testing.KeptDrafts;
import thalweg.testing.Tmux;

/** The program as it is, under its start script, in a real terminal: what a person does, and what befalls them. */
@Timeout(180)
class RealScreenTest {

    private static final long PATIENCE_SECONDS = 60;

    @TempDir
    Path folder;

    private Checkout checkout;

    /** The script finds a Java that leaves its number and becomes the program of this build. */
    @BeforeEach
    void makeCheckout() throws IOException, InterruptedException {
        checkout = new Checkout(folder).withMaven("").withJava("17.0.1", """
                echo $$ >'%s/pid'
                while [ "$1" != -jar ]; do shift; done
                shift 2
                exec %s "$@"
                """.formatted(folder, Tmux.java(Main.class)));
        checkout.start("--version");
    }

    private Tmux terminal() throws IOException, InterruptedException {
        return new Tmux(
                folder,
                80,
                24,
                "PATH=" + folder.resolve("commands") + ":" + System.getenv("PATH"),
                "HOME=" + folder,
                "XDG_DATA_HOME=" + folder.resolve("data"),
                "XDG_STATE_HOME=" + folder.resolve("state"),
                "XDG_CACHE_HOME=/no:archive",
                "LC_ALL=C.UTF-8");
    }

    private void startDemo(Tmux tmux) throws IOException, InterruptedException {
        tmux.startCommand("'" + checkout.script("thalweg") + "' --demo");
        tmux.await("Canyons  9");
    }

    private static void assertGivenBack(Tmux tmux) throws IOException, InterruptedException {
        assertThat(tmux.settings("after")).isEqualTo(tmux.settings("before")).matches("[0-9a-f:]+\\s*");
        assertThat(tmux.run("display-message", "-p", "#{alternate_on} #{mouse_standard_flag} #{cursor_flag}")
                        .strip())
                .isEqualTo("0 0 1");
    }

    private String drafts() throws IOException {
        return KeptDrafts.in(folder.resolve("state/thalweg/drafts"));
    }

    private void awaitDraft(String text) throws IOException, InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!drafts().contains(text)) {
            assertThat(System.nanoTime()).as("the draft never came").isLessThan(end);
            Thread.sleep(20);
        }
    }

    @Test
    void aCanyonIsFoundAVisitEnteredARigLookedAtASheetWrittenAndTheTerminalGivenBack() throws Exception {
        Path sheet = folder.resolve("sheet.html");
        try (Tmux tmux = terminal()) {
            startDemo(tmux);

            tmux.text("/eclusaune");
            tmux.await("1 of 9");
            tmux.keys("Enter");
            tmux.await("Porte");
            tmux.keys("Down", "Down", "Enter");
            tmux.await("Station Porte");
            tmux.text("i");
            tmux.await("Ctrl-S save");
            tmux.text("w");
            tmux.await("worn");
            tmux.keys("C-s");
            tmux.await("Saved.");
            tmux.text("r");
            tmux.await("o load and layout");
            tmux.keys("Escape");
            tmux.await("Station Porte");
            tmux.keys("Escape");
            tmux.await("w write sheet");
            tmux.text("w");
            tmux.await("Format");
            tmux.keys("Down", "Down", "C-u");
            tmux.text(sheet.toString());
            tmux.keys("C-s");
            tmux.await("sheet.html");
            Checkout.await(sheet);
            tmux.await("noted as sheet");
            tmux.text("q");

            tmux.await("ended 0");
            assertGivenBack(tmux);
            assertThat(sheet).content().contains("Porte", "</html>");
        }
    }

    @Test
    void whatIsTypedComesBackAfterTheProgramWasKilledAndAfterItWasAskedToEnd() throws Exception {
        try (Tmux tmux = terminal()) {
            startDemo(tmux);
            tmux.text("n");
            tmux.await("New canyon");
            tmux.text("Rio Entwurf");
            tmux.await("Rio Entwurf");
            awaitDraft("\"Rio Entwurf\"");
            tmux.signal("KILL");
            assertThat(tmux.await("ended 137")).contains("ended by signal 9");
            assertGivenBack(tmux);

            startDemo(tmux);
            tmux.await("1 draft waits");
            tmux.text("d");
            tmux.await("less than a minute old");
            tmux.keys("Enter");
            tmux.await("Filled from a draft");
            tmux.text(" zwei");
            tmux.await("Rio Entwurf zwei");
            tmux.signal("TERM");
            tmux.await("ended 143");
            assertGivenBack(tmux);
            assertThat(drafts()).contains("\"Rio Entwurf zwei\"");
        }
    }

    @Test
    void aStormOfSizesAndAPauseByTheShellLeaveAWholeScreen() throws Exception {
        try (Tmux tmux = terminal()) {
            startDemo(tmux);
            for (int i = 0; i < 40; i++) {
                tmux.resize(40 + 7 * (i % 20), 12 + 3 * (i % 15));
            }
            tmux.resize(80, 24);
            tmux.await("? help");

            tmux.keys("C-z");
            // The prompt from before shows as soon as the screen is left; the shell listens only once it says this.
            tmux.await("Stopped");
            tmux.text("fg");
            tmux.keys("Enter");
            tmux.await("Canyons  9");
            tmux.text("/eclusaune");
            tmux.await("1 of 9");
            assertThat(tmux.await("metric").lines().findFirst().orElseThrow()).contains("Canyons  1 of 9");

            tmux.keys("C-c");
            tmux.await("ended 0");
            assertGivenBack(tmux);
        }
    }

    @Test
    void anEmptyDatabaseLeadsToTheDemo() throws Exception {
        try (Tmux tmux = terminal()) {
            tmux.startCommand("'" + checkout.script("thalweg") + "'");
            tmux.await("No canyons yet.");
            tmux.text("v");
            tmux.await("Canyons  9");
            tmux.resize(100, 30);
            tmux.await("? help");
            tmux.text("q");

            tmux.await("ended 0");
            assertGivenBack(tmux);
        }
    }

    @Test
    void aLineThatIsCutEndsTheProgramAndKeepsWhatWasTyped() throws Exception {
        try (Tmux tmux = terminal()) {
            startDemo(tmux);
            tmux.text("n");
            tmux.await("New canyon");
            tmux.text("Rio Abriss");
            tmux.await("Rio Abriss");
            tmux.signal("HUP");
            tmux.await("ended 129");
            assertGivenBack(tmux);
            assertThat(drafts()).contains("\"Rio Abriss\"");
        }
    }
}
