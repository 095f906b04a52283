package thalweg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.fault.InputException;
import thalweg.settings.Theme;
import thalweg.units.UnitSystem;

final class StartTest {

    @Test
    void theVersionIsThatOfTheBuild() throws IOException {
        assertThat(Files.readString(Path.of("pom.xml")))
                .contains("<artifactId>thalweg</artifactId>\n  <version>" + Version.NUMBER + "</version>");
    }

    @Test
    void aWalkThroughTheDemoNeedsNoTerminalAndLeavesNothing(@TempDir Path folder) {
        Map<String, String> environment = Map.of("HOME", folder.toString());

        assertThat(OpenScreen.warmUp(environment, Clock.systemUTC(), 0)).isZero();

        assertThat(folder.resolve(".cache/thalweg")).isDirectoryNotContaining("glob:**warm-up*");
        assertThat(folder.resolve(".local")).doesNotExist();
    }

    @Test
    void optionsAloneOpenTheScreen() {
        ScreenArguments read = ScreenArguments.of(List.of(
                        "--db",
                        "my records.db",
                        "--read-only",
                        "--ascii",
                        "--no-mouse",
                        "--units=imperial",
                        "--theme",
                        "contrast"))
                .orElseThrow();

        assertThat(read.db()).contains(Path.of("my records.db"));
        assertThat(read.readOnly()).isTrue();
        assertThat(read.ascii()).isTrue();
        assertThat(read.mouse()).isFalse();
        assertThat(read.units()).isEqualTo(UnitSystem.IMPERIAL);
        assertThat(read.theme()).contains(Theme.CONTRAST);
        assertThat(ScreenArguments.of(List.of())).isPresent();
    }

    @Test
    void anythingElseIsACommand() {
        assertThat(ScreenArguments.of(List.of("list", "--demo"))).isEmpty();
        assertThat(ScreenArguments.of(List.of("--help"))).isEmpty();
        assertThat(ScreenArguments.of(List.of("--demo", "--dance"))).isEmpty();
    }

    @Test
    void anOptionWithoutItsValueIsRefused() {
        assertThatThrownBy(() -> ScreenArguments.of(List.of("--db")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("--db needs");
        assertThatThrownBy(() -> ScreenArguments.of(List.of("--units", "cubits")))
                .hasMessageContaining("\"cubits\" are no units known here");
        assertThatThrownBy(() -> ScreenArguments.of(List.of("--theme=pink")))
                .hasMessage("\"pink\" is no theme; --theme takes one of terminal, contrast, plain.");
        assertThatThrownBy(() -> ScreenArguments.of(List.of("--db", "x", "--demo")))
                .hasMessageContaining("choose one of them");
    }
}
