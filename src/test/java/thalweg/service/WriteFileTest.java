package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.fault.InputException;

final class WriteFileTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theTextIsThereAndNothingElse() throws IOException {
        WriteFile.whole(folder.resolve("a.txt"), "ünï", false);

        assertThat(folder.resolve("a.txt")).hasContent("ünï");
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void whatIsThereIsReplacedOnlyWhenAsked() throws IOException {
        Path target = Files.writeString(folder.resolve("a.txt"), "old");

        assertThatThrownBy(() -> WriteFile.whole(target, "new", false))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("is there already");
        assertThat(target).hasContent("old");

        WriteFile.whole(target, "new", true);
        assertThat(target).hasContent("new");
    }

    @Test
    void aMissingFolderIsNamed() {
        assertThatThrownBy(() -> WriteFile.whole(folder.resolve("none/a.txt"), "new", false))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("There is no folder");
    }
}
