package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.testing.PdfText;

/** A sheet that is made for a trip of the sample data. */
final class TripSheetTest {

    private static final String CLUB_TRIP = "01a21500-4c11-7d03-9a52-6f0e1b7c2d31";

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void openShell() {
        shell = new Shell(home);
    }

    private String sheet(String... more) {
        String[] all = new String[more.length + 7];
        System.arraycopy(
                new String[] {"sheet", "--demo", "éclusaune", "--as", "text", "--trip", CLUB_TRIP}, 0, all, 0, 7);
        System.arraycopy(more, 0, all, 7, more.length);
        Shell.Ran ran = shell.run(all);
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.out().replaceAll("\\s+", " ");
    }

    @Test
    void theSheetHasTheTimesTheRopesAndTheMaterialOfThePlan() {
        assertThat(sheet())
                .contains(
                        "Plan of the trip on 2027-06-12: Club trip",
                        "Setting out: 6:30",
                        "2. drop, Porte; Porte Usually: 8:",
                        "At the latest: go on before",
                        "Passed at: ....",
                        "carry 60 m, 9.5 mm low-stretch",
                        "Together with the reserve",
                        "Rescue: number",
                        "What you found",
                        "1. Porte:");
    }

    @Test
    void theTimesAreThoseOfThePlan() {
        String plan = shell.run("trip", CLUB_TRIP, "--demo").out();
        String times = sheet();

        assertThat(plan).contains("Sets out: 6:30");
        assertThat(times)
                .containsPattern("14\\. drop, Portail; Portail Usually: 1\\d:\\d\\d \\| If it takes long: 1\\d:\\d\\d");
    }

    @Test
    void nobodysWeightStandsOnItAndNoNameWhereNamesAreLeftOut() {
        assertThat(sheet()).contains("Maëlle Tourvenac (lead)").doesNotContain("64 kg", "91 kg", "141 lb", "155 kg");
        assertThat(sheet("--no-names")).contains("People: 3").doesNotContain("Maëlle", "Gjeddebråt");
    }

    @Test
    void aPartHasTheTimesOfItsPlacesOnly() {
        assertThat(sheet("--part", "5..9"))
                .contains("5. drop, Rideau; Rideau Usually")
                .doesNotContain("Portail Usually");
    }

    @Test
    void paperAndThePocketHaveItToo() throws IOException {
        for (String paper : new String[] {"a4", "pocket"}) {
            Path file = home.resolve(paper + ".pdf");
            Shell.Ran ran = shell.run(
                    "sheet", "--demo", "éclusaune", "--trip", CLUB_TRIP, "--paper", paper, "--out", file.toString());

            assertThat(ran.code()).as(ran.err()).isZero();
            assertThat(PdfText.unbroken(Files.readAllBytes(file)))
                    .contains("Planofthetripon2027-06-12", "goonbefore", "Whatyoufound");
        }
    }

    @Test
    void aTripThatIsNotToThisCanyonOrNotThereIsRefused() {
        assertThat(shell.run("sheet", "--demo", "ombreñal", "--as", "text", "--trip", CLUB_TRIP)
                        .err())
                .contains("That trip goes to another canyon than");
        assertThat(shell.run("sheet", "--demo", "éclusaune", "--as", "text", "--trip", CLUB_TRIP.replace('3', '4'))
                        .err())
                .contains("There is no trip with the id");
        assertThat(shell.run("sheet", "--demo", "éclusaune", "--as", "text", "--trip", "x")
                        .err())
                .contains("is no id of a trip");
        assertThat(shell.run("sheet", "--demo", "éclusaune", "--as", "text", "--trip", CLUB_TRIP, "--station", "Porte")
                        .err())
                .contains("has no timetable");
    }
}
