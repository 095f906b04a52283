package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.service.FindRecord;
import thalweg.service.ListCanyons;
import thalweg.tui.core.Key;

final class ImportTableWalkTest {

    private static final Key SEND = Key.ctrl('s');

    @TempDir
    private Path folder;

    private String file(String content) throws IOException {
        return Files.writeString(folder.resolve("in.csv"), content).toString();
    }

    @Test
    void aTableIsMatchedLookedAtAndTakenIn() throws IOException {
        String file = file("""
                Gully,No,Type,Height (m),Belay,Bank,Stars
                Test Gully,1,drop,12.5,R1,left,5
                Test Gully,2,slide,4,,,
                """);
        try (Walk walk = Walk.emptyIn(folder, 24, 80)) {
            walk.type("i").type(file).press(SEND);
            assertThat(walk.screen())
                    .contains("Columns of in.csv", "stations: a station with its place", "Height (m)", "height (m)")
                    .contains("(left out)");

            walk.press(SEND);
            assertThat(walk.screen())
                    .contains("Rows: 2 new, 0 changed, 0 the same as here, 0 refused.")
                    .contains("Columns that are left out: Stars")
                    .contains("line 2: new, Test Gully/1/R1");
            assertThat(new ListCanyons(walk.session()).count()).isZero();

            walk.press(SEND);
            assertThat(new FindRecord(walk.session()).canyon("Test Gully").line())
                    .hasSize(2);
            assertThat(walk.screen()).contains("Taken in.");
            walk.press(Key.of(Key.Named.ESCAPE));
            assertThat(walk.screen()).contains("Test Gully");
        }
    }

    @Test
    void aColumnIsChangedAndARefusalLeadsBackToIt() throws IOException {
        String file = file("canyon;place;place_kind;how high\nTest Gully;1;drop;12\n");
        try (Walk walk = Walk.emptyIn(folder, 24, 80)) {
            walk.type("i").type(file).press(SEND);
            walk.press(Key.of(Key.Named.DOWN), Key.of(Key.Named.DOWN), Key.of(Key.Named.DOWN), Key.of(Key.Named.DOWN));
            walk.press(Key.of(Key.Named.DOWN)).type("h");
            assertThat(walk.screen()).contains("In the file: 12");

            walk.press(SEND);
            assertThat(walk.screen()).contains("1 refused", "\"12\" has no unit");
            walk.press(SEND);
            assertThat(walk.screen()).contains("Nothing is taken in as long as a row is refused");

            walk.press(Key.of(Key.Named.ESCAPE)).press(Key.of(Key.Named.RIGHT));
            assertThat(walk.screen()).contains("height (m)");
            walk.press(SEND).press(SEND);
            assertThat(new FindRecord(walk.session()).canyon("Test Gully").line())
                    .hasSize(1);
        }
    }

    @Test
    void anotherKindGuessesTheColumnsAnew() throws IOException {
        String file = file("name,date\nTest Gully,2020\n");
        try (Walk walk = Walk.emptyIn(folder, 12, 40)) {
            walk.type("i").type(file).press(SEND);
            assertThat(walk.screen()).contains("< inspections");

            walk.press(Key.of(Key.Named.RIGHT));
            assertThat(walk.screen()).contains("< canyons");
        }
    }

    @Test
    void aTableThatIsBrokenIsToldWithItsLine() throws IOException {
        String file = file("name,region\nTest Gully,\"open\n");
        try (Walk walk = Walk.emptyIn(folder, 24, 80)) {
            walk.type("i").type(file).press(SEND).press(SEND);

            assertThat(walk.screen()).contains("line 2: a quote is opened and never closed");
        }
    }
}
