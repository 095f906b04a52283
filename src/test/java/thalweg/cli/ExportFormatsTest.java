package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code export --as} writes besides the file of records. */
class ExportFormatsTest {

    @TempDir
    Path home;

    private Shell shell;

    @BeforeEach
    void openShell() {
        shell = new Shell(home);
    }

    @Test
    void gpxSaysWhatItLeavesOut() {
        Shell.Ran ran = shell.run("export", "--demo", "--as", "gpx");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("<gpx ", "<type>canyon</type>");
        assertThat(ran.err())
                .contains("parts, inspections, notes and analyses are not in it")
                .contains("because nobody entered where they are");
    }

    @Test
    void geojsonHoldsEveryStation() {
        assertThat(shell.run("export", "--demo", "--as", "geojson", "Eclusaune").out())
                .contains("\"FeatureCollection\"", "Porte");
    }

    @Test
    void tablesHaveALineForEach() {
        String canyons = shell.run("export", "--demo", "--as", "canyons-csv").out();
        String found = shell.run("export", "--demo", "--as", "inspections-csv").out();

        assertThat(canyons.lines().count()).isEqualTo(10);
        assertThat(canyons).startsWith("canyon,other_names,region,");
        assertThat(found.lines().count()).isGreaterThan(840);
        assertThat(found).startsWith("canyon,place,station,part,kind,on,by,found,");
    }

    @Test
    void whatIsPrivateGoesIntoJsonAlone() {
        Shell.Ran ran = shell.run("export", "--demo", "--as", "gpx", "--with-private");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).isEqualTo("What is private goes into json alone; leave out --with-private for gpx.\n");
    }

    @Test
    void aFormatThatIsNoneIsRefusedWithThoseThereAre() {
        assertThat(shell.run("export", "--demo", "--as", "kml").err())
                .contains("json", "gpx", "geojson", "canyons-csv");
    }
}
