package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ImportTableCommandTest {

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void openShell() {
        shell = new Shell(home);
    }

    private String file(String name, String content) throws IOException {
        return Files.writeString(home.resolve(name), content).toString();
    }

    @Test
    void aTableIsShownRowByRowAndTakenInWhenAccepted() throws IOException {
        String file =
                file("drops.csv", "Gully;No;Type;Drop;Belay;Stars\nProbe;1;abseil;18 m;Top;5\nProbe;2;slide;3 m;;\n");

        Shell.Ran shown = shell.run("import", file, "--as", "stations", "--column", "Drop=height");
        assertThat(shown.code()).isEqualTo(1);
        assertThat(shown.out())
                .contains("  Drop = height\n", "  Stars = (left out)\n", "Columns that are left out: Stars\n")
                .contains("line 2: station Top; canyon Probe; place 1; kind of place drop; height 18.00 m")
                .contains("line 2: new, Probe/1/Top", "line 3: new, Probe/2")
                .contains("Rows: 2 new, 0 changed, 0 the same as here, 0 refused.")
                .contains("The canyon \"Probe\" is not here yet and would be new.");
        assertThat(shell.folders().data()).doesNotExist();

        assertThat(shell.run("import", file, "--accept").err()).contains("Taken in.");
        Shell.Ran again = shell.run("import", file, "--accept");
        assertThat(again.out()).contains("Rows: 0 new, 0 changed, 2 the same as here, 0 refused.");
        assertThat(again.err()).contains("There is nothing to take in.");
    }

    @Test
    void whatEveryRowSaysIsSetOnce() throws IOException {
        String file = file("drops.txt", "place,place_kind,height_ft\n1,drop,60\n");

        Shell.Ran ran = shell.run("import", file, "--as", "stations", "--set", "canyon=Probe", "--dry-run");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("line 2: canyon Probe; place 1; kind of place drop; height 18.29 m");
        assertThat(ran.err()).contains("Nothing was written.");
    }

    @Test
    void aRefusedRowIsNamedAndNothingIsWritten() throws IOException {
        String file = file("drops.csv", "canyon,place,place_kind,height\nProbe,1,drop,18\nProbe,2,drop,18 m\n");

        Shell.Ran ran = shell.run("import", file, "--accept");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out())
                .contains("line 2: refused, Probe/1: height: \"18\" has no unit")
                .contains("Nothing is taken in as long as a row is refused");
        assertThat(shell.folders().data()).doesNotExist();
    }

    @Test
    void aBrokenFileIsRefusedByItsLines() throws IOException {
        Shell.Ran ran = shell.run("import", file("drops.csv", "canyon,region\nProbe,a,b\n"));

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("was not taken in; one thing is wrong in it:", "line 2: cells are 3");
    }

    @Test
    void wrongUseIsToldInASentence() throws IOException {
        String file = file("list.csv", "one,two\na,b\n");

        assertThat(shell.run("import", file).err()).contains("its headings do not tell what its rows are; say --as");
        assertThat(shell.run("import", file, "--as", "routes").err()).contains("\"routes\" is no kind of table");
        assertThat(shell.run("import", file, "--as", "canyons", "--column", "three=canyon")
                        .err())
                .contains("The table has no column \"three\"; its columns are: one, two.");
        assertThat(shell.run("import", file, "--as", "canyons", "--column", "one=part")
                        .err())
                .contains("\"part\" is no field of canyons; fields are: canyon, ");
        assertThat(shell.run("import", file, "--as", "canyons", "--separator", "dot")
                        .err())
                .contains("\"dot\" is no separator");
        assertThat(shell.run("import", "sample-data/records.json", "--as", "canyons")
                        .err())
                .contains("is no table; leave out --as");
    }

    @Test
    void exportedTablesAreUnderstoodByThemselves() {
        shell.run("import", "sample-data/records.json", "--accept");
        for (String kind : new String[] {"canyons", "stations", "parts", "inspections"}) {
            String file = home.resolve(kind + ".csv").toString();
            assertThat(shell.run("export", "--as", kind + "-csv", "--out", file).code())
                    .isZero();

            Shell.Ran ran = shell.run("import", file);

            assertThat(ran.code()).as(kind).isZero();
            assertThat(ran.out()).contains("Rows: 0 new, 0 changed, ", " 0 refused.");
        }
    }
}
