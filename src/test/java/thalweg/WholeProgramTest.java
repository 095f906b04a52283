package thalweg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.testing.Tmux;

/** The program itself in a real terminal, from the first picture to a sheet on the disk. */
final class WholeProgramTest {

    @TempDir
    private Path folder = Path.of("");

    private Tmux terminal(int columns, int rows, String... more) throws IOException, InterruptedException {
        String[] environment = new String[more.length + 5];
        environment[0] = "XDG_DATA_HOME=" + folder.resolve("data");
        environment[1] = "XDG_STATE_HOME=" + folder.resolve("state");
        environment[2] = "XDG_CACHE_HOME=" + folder.resolve("cache");
        environment[3] = "XDG_CONFIG_HOME=" + folder.resolve("config");
        environment[4] = "USER=ada";
        System.arraycopy(more, 0, environment, 5, more.length);
        return new Tmux(folder, columns, rows, environment);
    }

    @Test
    void aNewInspectionAndAnAnalysisComeOutOnTheSheet() throws IOException, InterruptedException {
        try (Tmux tmux = terminal(120, 40)) {
            tmux.start(Main.class, "--demo");
            tmux.await("Gorge de l'Éclusaune (invented)");
            tmux.keys("Enter");
            tmux.await("2 drop, 8 m, Porte");
            tmux.keys("Down", "Down", "Enter");
            tmux.await("Porte / Porte");
            tmux.keys("i");
            tmux.await("Inspection of Porte");
            tmux.text("d");
            tmux.await("doubtful");
            tmux.keys("C-s");
            tmux.await("Saved.");

            tmux.keys("r");
            tmux.await("Arrows move the focus");
            tmux.keys("Left", "o");
            tmux.await("Strands in a leg");
            tmux.keys("Enter", "Enter", "Enter", "Enter", "Enter", "Enter", "Enter", "Enter");
            tmux.await("> Stiffness of a strand");
            tmux.keys("C-s");
            tmux.await("attach to station");
            tmux.keys("a");
            tmux.await("Attached:");

            tmux.keys("Escape");
            tmux.await("rig analysis");
            tmux.keys("Escape");
            tmux.await("write sheet");
            tmux.keys("w");
            tmux.await("Sheet of Gorge");
            tmux.keys("Down", "Down", "C-u", "C-k");
            tmux.text(folder.resolve("sheet").toString());
            tmux.keys("C-s");
            tmux.await("Written: ");
            tmux.keys("q");
            tmux.await("ended 0");

            assertThat(tmux.settings("after")).isEqualTo(tmux.settings("before"));
            assertThat(Files.readString(folder.resolve("sheet.html")))
                    .contains("Gorge de l", "doubtful", "by ada", "<svg", "invented for practice");
        }
    }

    @Test
    void aRequestToEndGivesTheTerminalBack() throws IOException, InterruptedException {
        try (Tmux tmux = terminal(80, 24, "LANG=C")) {
            tmux.start(Main.class, "--demo --ascii");
            tmux.await("Ranura de Ombre");

            tmux.signal("TERM");
            tmux.await("ended 143");

            assertThat(tmux.settings("after")).isEqualTo(tmux.settings("before"));
        }
    }

    @Test
    void aDatabaseThatIsNotOursIsRefusedBeforeTheScreenOpens() throws IOException, InterruptedException {
        Path foreign = Files.writeString(folder.resolve("notes.db"), "shopping list");
        try (Tmux tmux = terminal(80, 24)) {
            tmux.start(Main.class, "--db '" + foreign + "'");

            String screen = tmux.await("ended 3");

            assertThat(screen.replace("\n", "")).contains("is not a Thalweg database; choose another file with --db.");
            assertThat(Files.readString(foreign)).isEqualTo("shopping list");
        }
    }

    @Test
    void theFirstStartOnAnEmptyMachineOffersWhatToDo() throws IOException, InterruptedException {
        try (Tmux tmux = terminal(80, 24)) {
            tmux.start(Main.class, "");

            tmux.await("No canyons yet.");
            tmux.keys("q");
            tmux.await("ended 0");

            assertThat(folder.resolve("data/thalweg/records.db")).isRegularFile();
        }
    }
}
