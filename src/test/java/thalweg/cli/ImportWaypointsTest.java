package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ImportWaypointsTest {

    private static final String FILES = "src/test/resources/thalweg/exchange/gpx/";

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void openShell() {
        shell = new Shell(home);
    }

    @Test
    void aFileOfWaypointsIsReportedAndPlacedByNobody() {
        Shell.Ran ran = shell.run("import", FILES + "waypoints.gpx");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains("4 waypoints.")
                .containsPattern("8 +Sheepfold +742.5 m +33.146200, -40.771900 +Leave the path here.")
                .containsPattern("37 +Drop +unknown +33.144880, -40.771020\n")
                .contains("no height of a drop is taken from them")
                .contains("Waypoints are placed by a person, in the screen: start `thalweg`, then g");
        assertThat(shell.folders().data()).doesNotExist();
    }

    @Test
    void routesTracksAndUnitsAreTold() {
        assertThat(shell.run("import", FILES + "route.gpx", "--units", "imperial")
                        .out())
                .contains("5 waypoints, 4 of them on routes.", "2434 ft");
        assertThat(shell.run("import", FILES + "track.gpx").out())
                .contains("0 waypoints.", "The file has 3 points of tracks; the way that a device went is not taken.");
    }

    @Test
    void theContentCountsAndNotTheName() throws IOException {
        Path renamed = Files.copy(Path.of(FILES + "prefixed.gpx"), home.resolve("records.json"));

        assertThat(shell.run("import", renamed.toString()).out()).contains("1 waypoint.", "With a prefix");
    }

    @Test
    void acceptingIsRefusedBecauseAPersonDecides() {
        Shell.Ran ran = shell.run("import", FILES + "waypoints.gpx", "--accept");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("--accept cannot say what each of them is. Waypoints are placed by a person");
        assertThat(shell.folders().data()).doesNotExist();
    }

    @Test
    void whatIsWrongIsNamedWithItsLine() throws IOException {
        Path broken = Files.writeString(home.resolve("b.gpx"), "<gpx>\n<wpt lat='91' lon='1'/>\n<wpt lat='1'/></gpx>");

        Shell.Ran ran = shell.run("import", broken.toString());

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains("was not taken in; 2 things are wrong in it:")
                .contains("  line 2: the latitude \"91\"")
                .contains("  line 3: the point has no longitude (lon)");
    }
}
