package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.text.Width;

final class PlanCommandTest {

    private static final String RECORDS = """
            {"format": "thalweg records", "version": 1, "canyons": [
              {"name": "Klamm", "approach_min": 60, "descent_min": 300, "exit_min": 30, "line": [
                {"kind": "drop", "name": "Erste", "distance_cm": 10000, "stations": [
                  {"name": "S1", "rope_needed_cm": 2500, "anchors": [{"role": "main", "parts": [
                    {"label": "bolt", "kind": "bolt", "inspections": [{"on": "2020-05-01", "found": "sound"}]}]}]}]},
                {"kind": "drop", "name": "Zweite", "height_cm": 1200},
                {"kind": "drop", "name": "Dritte"}]}]}
            """;

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void openShell() throws IOException {
        shell = new Shell(home);
        Path file = Files.writeString(home.resolve("records.json"), RECORDS);
        assertThat(shell.run("import", file.toString(), "--accept").code()).isZero();
    }

    private Shell.Ran plan(String more, String... options) throws IOException {
        Path file = Files.writeString(
                home.resolve("trip.json"),
                "{\"canyon\": \"klamm\", \"on\": \"2027-07-17\", \"people\": [\"Ana, lead, 62 kg\", \"Bo\"]" + more
                        + "}");
        String[] arguments = new String[options.length + 2];
        arguments[0] = "plan";
        arguments[1] = file.toString();
        System.arraycopy(options, 0, arguments, 2, options.length);
        return shell.run(arguments);
    }

    private static String words(Shell.Ran ran) {
        return ran.out().replaceAll("\\s+", " ");
    }

    /** The escape lies 100 m along the line, which one walks in 5 min; nobody waits there. */
    @Test
    void anEscapeIsOutAfterItsWayOut() throws IOException {
        Path file = Files.writeString(
                home.resolve("out.json"),
                "{\"format\": \"thalweg records\", \"version\": 1, \"canyons\": [{\"name\": \"Gorge\","
                        + " \"approach_min\": 60, \"exit_min\": 30, \"line\": ["
                        + "{\"kind\": \"escape\", \"name\": \"Pfad\", \"distance_cm\": 10000, \"way_out_min\": 45},"
                        + "{\"kind\": \"escape\", \"distance_cm\": 20000}]}]}");
        assertThat(shell.run("import", file.toString(), "--accept").code()).isZero();
        Path trip = Files.writeString(
                home.resolve("out-trip.json"),
                "{\"canyon\": \"gorge\", \"on\": \"2027-07-17\", \"start\": \"8:00\", \"people\": [\"Ana\"],"
                        + " \"figures\": {\"spread\": 0}}");

        assertThat(words(shell.run("plan", trip.toString())))
                .contains(
                        "escape at place 1, Pfad: reached by 9:05 (9:05 late); way out 45 min: out by 9:50 (9:50 late)")
                .contains("escape at place 2: reached by 9:10 (9:10 late); way out unknown")
                .contains("How long the way out takes is not entered at place 2: see it beforehand.");
        assertThat(shell.run("plan", trip.toString(), "--json").out()).contains("\"way_out\": 45", "\"way_out\": null");
        assertThat(shell.run("show", "gorge").out()).contains("1: 100 m from the start; Way out: 45 min");
        assertThat(words(shell.run("sheet", "gorge", "--as", "text")).replace((char) 0xA0, (char) 0x20))
                .contains("way out 45 min", "way out unknown");
    }

    /** 25 m doubled take 2 x 25 + 2 = 52 m, of 95 % that are left 54.7; single 27, of 28.4. */
    @Test
    void withoutRopesItSaysWhatEachDropTakes() throws IOException {
        assertThat(words(plan("")))
                .contains("No rope was stated.")
                .contains("place 1, Erste, 25 m: takes one rope of 55 m doubled, or two of 29 m each");
    }

    @Test
    void aDayThatIsOverSaysSoAndOneBeyondBeliefIsRefused() throws IOException {
        Path file = home.resolve("day.json");
        Files.writeString(file, "{\"canyon\": \"klamm\", \"on\": \"2020-07-17\", \"people\": [\"Ana\"]}");
        assertThat(words(shell.run("plan", file.toString()))).contains("2020-07-17 is over: what is due");
        Files.writeString(file, "{\"canyon\": \"klamm\", \"on\": \"3020-07-17\", \"people\": [\"Ana\"]}");
        Shell.Ran ran = shell.run("plan", file.toString());
        assertThat(ran.code()).isEqualTo(ExitCodes.WRONG_INPUT);
        assertThat(ran.err()).contains("The day 3020-07-17 lies more than 5 years ahead");
    }

    @Test
    void onlyAnEscapeHasAWayOut() throws IOException {
        Path file = Files.writeString(
                home.resolve("wrong.json"), RECORDS.replace("\"height_cm\": 1200", "\"way_out_min\": 9"));
        Shell.Ran ran = shell.run("import", file.toString());

        assertThat(ran.out() + ran.err()).contains("way_out_min", "belongs to an escape");
    }

    @Test
    void ropesTimesAndWhatIsDueAreWorkedOut() throws IOException {
        Shell.Ran ran =
                plan(", \"start\": \"8:00\", \"ropes\": [\"60 m, 62 g/m\", \"30 m, 62 g/m\", \"30 m, 46 g/m\"]");

        assertThat(ran.code()).isZero();
        assertThat(words(ran))
                .contains("carry 60 m - carry 30 m - carry 30 m - Together 7.0 kg.")
                .contains("If any one of them is lost, every drop is still served.")
                .contains("Decided by: place 1, Erste.")
                .contains("place 1, Erste, 25 m: one rope, doubled; after a loss: two ropes")
                .contains("place 2, Zweite, 12 m (height only): one rope, doubled")
                .contains(
                        "Possible too: all but the last lowered from above, on one of these ropes, at place 1, Erste; place 2")
                .contains("place 3, Dritte: length unknown, so nobody can say which rope serves")
                .contains(
                        "No part that these replace is worn, doubtful, unsafe, gone or due that day; the reserve alone: 6 m")
                .contains("No part is entered at #2 Zweite, #3 Dritte: what is needed there is unknown.")
                .contains("Approach: 1 h 0 min as the records state it")
                .contains("The records state 5 h 0 min for the line; where that is more, it counts as late.")
                .contains("2 places have no distance or length")
                .contains(", 14:30 late.")
                .contains("Nobody entered where the canyon is, so sunset is unknown.")
                .contains("Until when to go on is unknown")
                .contains("Call for help at 16:30: 2 h 0 min after a late return. Nobody is stated who would")
                .contains("Flash-flood potential: not stated.")
                .contains("S1, bolt: examine: due for 6 years")
                .contains("No station has an analysis. - No analysis: S1.")
                .contains("Paces are our choice")
                .contains("An aid for people trained in this.");
        assertThat(ran.out().lines()).allMatch(line -> Width.of(line) <= 80);
    }

    @Test
    void whatIsNotStatedIsSaidToBeUnknown() throws IOException {
        assertThat(words(plan("")))
                .contains("No rope was stated.")
                .contains("The start is not stated, so times count from the beginning of the line.")
                .doesNotContain("A way is unknown");
        assertThat(words(plan(", \"ropes\": [\"20 m\"]")))
                .contains("The weight of a rope is not stated")
                .contains("What is at hand does not serve every drop without passing a knot")
                .contains("place 1, Erste, 25 m: nothing reaches");
    }

    @Test
    void walkingAndWaterAreEstimatedWhereTheirFiguresAreStated() throws IOException {
        assertThat(words(
                        plan(", \"approach\": {\"distance_m\": 8000, \"up_m\": 900}, \"flood_potential\": \"probable\","
                                + " \"catchment\": {\"length_m\": 13580, \"fall_m\": 10}")))
                .contains("Approach: 4 h 0 min by DIN 33466")
                .contains("as you read it: probable")
                .contains("in about 7 h 5");
    }

    @Test
    void figuresOfTheFileAreGoneBy() throws IOException {
        Shell.Ran ran = plan(", \"figures\": {\"reserve_webbing_m\": 20, \"reserve_links\": 0}", "--json");

        assertThat(ran.out())
                .contains("\"webbing_m\": 20,")
                .contains("\"links\": 0,")
                .contains("\"reserve_cord_m\": 3");
        assertThat(plan(", \"figures\": {\"reserve_links\": 1.5}").err())
                .contains("figures.reserve_links: is out of range; it should be 0 to 50, a whole number");
    }

    @Test
    void itIsThereForPrograms() throws IOException {
        assertThat(words(plan(", \"ropes\": [\"60 m\"]", "--json")))
                .contains("\"carry\": [0]")
                .contains("\"weight_kg\": null")
                .contains("\"sunset\": null")
                .contains("\"turn_around\": []")
                .contains("\"place\": 3, \"length_m\": null, \"technique\": null, \"after_loss\": null,"
                        + " \"lowered\": null");
    }

    @Test
    void everythingWrongIsNamedAtOnce() throws IOException {
        Path file = Files.writeString(home.resolve("bad.json"), """
                {"canyon": "klamm", "on": "2027-02-31", "zone": "Mars/Base", "start": "25:00", "people": ["Ana, 6 kg"],
                 "ropes": ["sixty", "30 m, 900 g/m"], "approach": {"up_m": 99999}, "shrinkage": 0.9, "paces": {"x": 1}}
                """);
        Shell.Ran ran = shell.run("plan", file.toString());

        assertThat(ran.code()).isEqualTo(ExitCodes.WRONG_INPUT);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains("on: cannot be used: The date \"2027-02-31\" does not exist")
                .contains("zone: cannot be used: There is no time zone")
                .contains("start: cannot be used: The time \"25:00\" does not exist")
                .contains("people: cannot be used: The weight \"6 kg\"")
                .contains("ropes: cannot be used: The length \"sixty\"")
                .contains("ropes: cannot be used: A rope of 900 g/m is not believed")
                .contains("approach.up_m: is out of range")
                .contains("approach.distance_m: is missing")
                .contains("shrinkage: is out of range; it should be 0 to 0.3")
                .contains("paces.x: is no figure; there are: rig_min");
        assertThat(shell.run("plan").err()).startsWith("Name the file of a trip");
        assertThat(shell.run("plan", home + "/none.json").err()).startsWith("There is no file");
    }
}
