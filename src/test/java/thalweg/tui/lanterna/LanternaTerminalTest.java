package thalweg.tui.lanterna;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thalweg.testing.Tmux;

/** A whole program with a demo screen in a real terminal, tmux. Where tmux is missing these tests fail. */
@Timeout(120)
class LanternaTerminalTest {

    @TempDir
    Path folder;

    @Test
    void aPersonCanStartUseAndLeaveItInAPlainLocaleToo() throws Exception {
        try (Tmux tmux = new Tmux(folder, 80, 24, "LC_ALL=C")) {
            tmux.start(DemoProgram.class, "'" + folder.resolve("log") + "'");
            String screen = tmux.await("? help");
            assertThat(screen)
                    .contains("│ wide 峡谷 after|")
                    .contains("│ marks e\u0301a\u030A\u0323 after|")
                    .contains("│ emoji 🧗 after|")
                    .contains("│ thai น้ำ after|")
                    .contains("│ dots ⣿⡇ boxes ┌─┐ blocks ▀█ after|")
                    .contains("│ rare → … ≥ ✓ after|");

            tmux.keys("F5");
            tmux.await("  key F5\n");
            tmux.keys("M-x");
            tmux.await("  key Alt-x\n");
            tmux.keys("BTab");
            tmux.await("  key Shift-Tab\n");
            tmux.keys("Escape");
            tmux.await("  key Esc\n");
            tmux.keys("C-Up");
            tmux.await("  key Ctrl-Up\n");
            tmux.text("é");
            tmux.await("  key é\n");
            tmux.keys("C-s");
            tmux.await("  key Ctrl-S\n");
            tmux.keys("C-\\");
            tmux.await("  key Ctrl-\\\n");
            tmux.text("\033[<0;10;5M");
            tmux.await("  MousePressed[row=3, column=9]\n");
            tmux.run("set-buffer", "q\nd");
            tmux.run("paste-buffer", "-p");
            tmux.await("  Pasted[text=q|d]\n");
            tmux.keys("y");
            tmux.await("  copied\n");
            assertThat(tmux.run("show-buffer").strip()).isEqualTo("sling");
            assertThat(tmux.run("display-message", "-p", "#{cursor_x} #{cursor_y} #{cursor_flag}")
                            .strip())
                    .isEqualTo("0 2 1");
            assertThat(tmux.run("display-message", "-p", "#{alternate_on} #{mouse_standard_flag} #{mouse_sgr_flag}")
                            .strip())
                    .isEqualTo("1 1 1");

            tmux.keys("C-c");
            assertThat(tmux.await("ended 0")).doesNotContain("Demo");
            assertGivenBack(tmux);
        }
    }

    /** The log as text, so that a failure of the test shows what was written there. */
    private String logged() throws IOException {
        return Files.exists(folder.resolve("log")) ? Files.readString(folder.resolve("log")) : "";
    }

    private static void assertGivenBack(Tmux tmux) throws Exception {
        assertThat(tmux.settings("after")).isEqualTo(tmux.settings("before"));
        assertThat(tmux.run(
                                "display-message",
                                "-p",
                                "#{alternate_on} #{mouse_standard_flag} #{mouse_sgr_flag} #{cursor_flag}")
                        .strip())
                .isEqualTo("0 0 0 1");
    }

    @Test
    void aStormOfSizesLeavesAWholeScreenAndASignalGivesTheTerminalBack() throws Exception {
        try (Tmux tmux = new Tmux(folder, 80, 24)) {
            tmux.start(DemoProgram.class, "'" + folder.resolve("log") + "'");
            String before = tmux.await("? help");

            for (int i = 0; i < 40; i++) {
                tmux.resize(41 + i * 2, 14 + i % 20);
            }
            tmux.resize(120, 40);
            tmux.await("Demo 120x40");
            tmux.await("? help");
            tmux.resize(80, 24);
            tmux.await("Demo 80x24");
            assertThat(tmux.await("? help")).isEqualTo(before);

            tmux.signal("TERM");
            assertThat(tmux.await("ended 143")).doesNotContain("gone", "mistake");
            assertThat(logged()).isEmpty();
            assertGivenBack(tmux);
        }
    }

    @Test
    void ctrlZStopsTheProgramWithItsScriptAndItComesBack() throws Exception {
        try (Tmux tmux = new Tmux(folder, 80, 24)) {
            tmux.start(DemoProgram.class, "'" + folder.resolve("log") + "'");
            String before = tmux.await("? help");

            tmux.keys("C-z");
            String stopped = tmux.await("Stopped");
            assertThat(stopped).doesNotContain("? help");
            tmux.text("stty -g >'" + folder.resolve("stopped") + "'; echo st''illed");
            tmux.keys("Enter");
            tmux.await("stilled");
            assertThat(tmux.settings("stopped")).isEqualTo(tmux.settings("before"));
            tmux.resize(100, 30);
            tmux.text("fg");
            tmux.keys("Enter");
            tmux.await("Demo 100x30");
            tmux.resize(80, 24);
            tmux.await("Demo 80x24");
            assertThat(tmux.await("? help")).isEqualTo(before);

            tmux.keys("F6");
            tmux.await("key F6");
            tmux.keys("C-c");
            tmux.await("ended 0");
            assertGivenBack(tmux);
        }
    }

    @Test
    void aMistakeOfTheProgramGivesTheTerminalBackAndSaysWhereToLook() throws Exception {
        try (Tmux tmux = new Tmux(folder, 200, 24)) {
            tmux.start(DemoProgram.class, "'" + folder.resolve("log") + "' 'break while drawing always'");
            String end = tmux.await("ended 70");

            assertThat(end)
                    .contains("Thalweg ended because of a mistake in the program; the log at " + folder.resolve("log")
                            + " says more.")
                    .doesNotContain("\tat ", "? help");
            assertThat(Files.readString(folder.resolve("log"))).contains("drawing broke on purpose");
            assertGivenBack(tmux);
        }
    }
}
