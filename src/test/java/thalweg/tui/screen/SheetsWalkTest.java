package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.tui.core.Key;

final class SheetsWalkTest {

    private static final Key SEND = Key.ctrl('s');

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theSheetsOfAllThatAreListedGoIntoOneFolder() throws IOException {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.type("S");
            assertThat(walk.screen()).contains("Sheets of 2 canyons");

            walk.fill("Folder", folder.toString()).press(SEND);

            assertThat(walk.screen()).contains("2 sheets written to ");
            try (Stream<Path> files = Files.list(folder)) {
                assertThat(files).hasSize(2).allMatch(file -> file.toString().endsWith(".html"));
            }
        }
    }

    @Test
    void filesThatAreThereAreNotReplacedUnasked() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.type("S").fill("Folder", folder.toString()).press(SEND);
            walk.type("S").fill("Folder", folder.toString()).press(SEND);

            assertThat(walk.screen().replaceAll("\\s+", " ")).contains("2 of these files are there already, such as");
        }
    }
}
