package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.service.FindRecord;
import thalweg.tui.core.Key;

final class KeeperWalkTest {

    private static final Key SAVE = Key.ctrl('s');

    @TempDir
    private Path folder;

    private static Walk visiting(Walk walk) {
        return walk.press(Key.Named.ENTER)
                .press(Key.Named.DOWN, 2)
                .press(Key.Named.ENTER)
                .type("i");
    }

    @Test
    void untilANameIsSetTheAccountsStandsInAndSaysSo() {
        try (Walk walk = Walk.keeping(folder)) {
            visiting(walk).field("By");
            assertThat(walk.screen()).contains("ada", "the name of your account");
        }
    }

    @Test
    void aNameThatWasSetSignsFromThenOnAndInTheNextStartToo() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("y");
            assertThat(walk.screen()).contains("signed ada: that is the name of the account");
            walk.fill("Name", "Ada Probe").press(SAVE);
            assertThat(walk.screen()).contains("What you enter is signed Ada Probe from now on.");

            visiting(walk).type("s").press(SAVE);
            assertThat(new FindRecord(walk.session())
                            .station("éclusaune/porte")
                            .station()
                            .parts()
                            .get(0)
                            .inspections()
                            .get(0))
                    .satisfies(entry -> {
                        assertThat(entry.content().by()).isEqualTo("Ada Probe");
                        assertThat(entry.author()).isEqualTo("Ada Probe");
                    });
        }
        try (Walk walk = Walk.keeping(folder)) {
            visiting(walk).field("By");
            assertThat(walk.screen()).contains("Ada Probe").doesNotContain("the name of your account");
        }
    }

    @Test
    void theNameOfTheSettingsFileIsNotChangedOnTheScreen() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.session().named(Optional.of("Ada of the file"));
            walk.type("y").fill("Name", "Other").press(SAVE);

            assertThat(walk.screen()).contains("Your settings file names you \"Ada of the file\"");
            assertThat(walk.session().keeper()).isEqualTo("Ada of the file");
        }
    }
}
