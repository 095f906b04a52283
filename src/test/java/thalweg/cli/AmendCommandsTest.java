package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Putting right, taking out, taking back and moving, by commands. */
final class AmendCommandsTest {

    private static final String RECORDS = """
            {"format": "thalweg records", "version": 2, "canyons": [
              {"uid": "01970000-0000-7000-8000-000000000001", "name": "Probe", "invented": true, "line": [
                {"uid": "01970000-0000-7000-8000-000000000011", "kind": "drop", "height_cm": 1800, "stations": [
                  {"uid": "01970000-0000-7000-8000-000000000111", "name": "first", "anchors": [
                    {"uid": "01970000-0000-7000-8000-000000001111", "role": "main", "parts": [
                      {"uid": "01970000-0000-7000-8000-000000011111", "label": "left bolt", "kind": "bolt",
                       "inspections": [{"on": "2024-05", "found": "sound", "by": "Ann", "work": ["cleaned", "tightened"],
                                        "water": "low", "note": "fine"}]},
                      {"uid": "01970000-0000-7000-8000-000000011112", "label": "webbing", "kind": "webbing"}]},
                    {"uid": "01970000-0000-7000-8000-000000001112", "role": "high_water"}],
                   "rigging_notes": [{"on": "2025", "by": "Bo", "landing": "pool"}]}]},
                {"uid": "01970000-0000-7000-8000-000000000012", "kind": "swim"}]},
              {"uid": "01970000-0000-7000-8000-000000000002", "name": "Other"}]}
            """;

    private static final String LEFT_BOLT = "01970000-0000-7000-8000-000000011111";
    private static final String WEBBING = "01970000-0000-7000-8000-000000011112";
    private static final String STATION = "01970000-0000-7000-8000-000000000111";
    private static final String HIGH_WATER = "01970000-0000-7000-8000-000000001112";
    private static final String DROP = "01970000-0000-7000-8000-000000000011";
    private static final String SWIM = "01970000-0000-7000-8000-000000000012";

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void takeIn() throws IOException {
        shell = new Shell(home);
        Path file = Files.writeString(home.resolve("records.json"), RECORDS);
        assertThat(shell.run("import", file.toString(), "--accept").code()).isZero();
    }

    private String done(String... arguments) {
        Shell.Ran ran = shell.run(arguments);
        assertThat(ran.err()).doesNotContain("Exception");
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.err();
    }

    private String refused(String... arguments) {
        Shell.Ran ran = shell.run(arguments);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines()).hasSize(1);
        return ran.err();
    }

    private String show(String name) {
        return shell.run("show", "--ids", name).out();
    }

    /** The id that stands in the lines after some words. */
    private String idAfter(String words) {
        Matcher found = Pattern.compile(Pattern.quote(words) + ".*?id (\\S+)", Pattern.DOTALL)
                .matcher(show("probe/first"));
        assertThat(found.find()).as(words).isTrue();
        return found.group(1);
    }

    private String inspection() {
        return idAfter("2024-05  + sound");
    }

    @Test
    void showPrintsIdsWhenAsked() {
        assertThat(show("probe/first")).contains("id " + LEFT_BOLT, "id " + HIGH_WATER, "id " + STATION);
        assertThat(show("probe")).contains("place 1: id " + DROP, "place 2: id " + SWIM);
        assertThat(shell.run("show", "probe/first").out()).doesNotContain(LEFT_BOLT);
    }

    @Test
    void aCorrectionKeepsWhatIsNotSaid() {
        String id = inspection();

        String said = done("correct", id, "worn", "--by", "Bo", "--reason", "the other bolt was sound");

        assertThat(said)
                .contains("Done: corrected inspection of part left bolt at first, 2024-05: the other bolt was sound")
                .contains("(change 2; `undo` takes it back).");
        assertThat(show("probe/first"))
                .contains("left bolt: ~ worn on 2024-05")
                .contains("2024-05  ~ worn  Bo; cleaned, tightened; water low; fine")
                .contains("corrects an earlier entry: the other bolt was sound")
                .contains("(corrected) 2024-05  + sound  Ann; cleaned, tightened; water low; fine")
                .contains("corrected by the entry of 2024-05, by ada, 2026-11-25 12:00 UTC: the other bolt was");
        assertThat(refused("correct", id, "gone", "--reason", "again")).contains("corrected or withdrawn before");
    }

    @Test
    void whatWasSaidCanBeUnsaid() {
        done("correct", inspection(), "--water", "unknown", "--work", "none", "--note", "", "--reason", "made up");

        assertThat(show("probe/first")).contains("2024-05  + sound  Ann\n");
    }

    @Test
    void aPartThatWasNotSeenLosesWhatOnlyASeenOneHas() {
        done("correct", inspection(), "not-seen", "--reason", "it was under snow");

        assertThat(show("probe/first")).contains("2024-05  not seen  Ann; water low; fine");
    }

    @Test
    void aNoteIsCorrectedByHeading() {
        String id = idAfter("Rigging note of 2025 by Bo");

        done("correct", id, "--text", "landing=", "--text", "rope-set=60 m", "--on", "2025-07", "--reason", "mixed up");

        assertThat(show("probe/first"))
                .contains("Rigging note of 2025-07 by Bo\n  Rope set: 60 m", "(corrected) Rigging note of 2025 by Bo");
    }

    @Test
    void aRoundIsEnteredUsedCorrectedAndWithdrawn() {
        assertThat(done("round", "probe", "--on", "2026-06", "--by", "Cyd", "--water", "high", "--note", "all anchors"))
                .contains("Done: added round in canyon Probe, 2026-06");
        done("inspect", "probe/first", "webbing", "doubtful", "--round", "latest");

        String shown = show("probe");
        assertThat(shown)
                .contains("Rounds:\n  2026-06 by Cyd, water high\n    all anchors\n")
                .contains("first, webbing: ? doubtful");
        assertThat(show("probe/first")).contains("2026-06  ? doubtful  Cyd; water high");
        Matcher id =
                Pattern.compile("2026-06 by Cyd.*?id (\\S+)", Pattern.DOTALL).matcher(shown);
        assertThat(id.find()).isTrue();
        done("correct", id.group(1), "--water", "low", "--reason", "misread");
        assertThat(show("probe")).contains("2026-06 by Cyd, water low", "(corrected) 2026-06 by Cyd, water high");
        assertThat(refused("inspect", "probe/first", "webbing", "worn", "--round", id.group(1)))
                .contains("There is no round \"" + id.group(1) + "\" in Probe");
        assertThat(refused("inspect", "probe/first", "webbing", "worn", "--round", "first"))
                .contains("latest is the newest");
    }

    @Test
    void withdrawingStaysToBeSeen() {
        String id = inspection();

        assertThat(done("withdraw", id, "--reason", "another canyon"))
                .contains("Done: withdrew inspection of part left bolt at first, 2024-05: another canyon");

        assertThat(show("probe/first"))
                .contains("left bolt: . never inspected", "(withdrawn) 2024-05  + sound")
                .contains("withdrawn: another canyon, by ada, 2026-11-25 12:00 UTC");
        assertThat(refused("withdraw", id, "--reason", "again")).contains("corrected or withdrawn before");
        done("undo");
        assertThat(show("probe/first"))
                .contains("left bolt: + sound on 2024-05")
                .doesNotContain("(withdrawn)");
    }

    @Test
    void removingSaysWhatWentAlong() {
        assertThat(done("remove", "probe/first", "--reason", "rockfall"))
                .contains("Done: took station first out of use: rockfall")
                .contains("Together with it went 2 anchors and 2 parts.");
        assertThat(refused("show", "probe/first")).contains("There is no station named");
        assertThat(refused("remove", LEFT_BOLT, "--reason", "gone")).contains("There is nothing in use with the id");

        assertThat(done("undo")).contains("Taken back: took station first out of use: rockfall in Probe (change 2).");
        assertThat(done("redo")).contains("Brought again: took station first out of use");
        assertThat(done("undo", "--change", "2")).contains("Taken back");
        assertThat(refused("undo", "--change", "2")).contains("Change 2 was taken back before.");
        assertThat(done("redo", "--change", "2")).contains("Brought again");
        assertThat(refused("redo", "--change", "2")).contains("Change 2 stands");
    }

    @Test
    void everyKindOfThingCanBeRemovedByName() {
        done("remove", "probe/first/left bolt", "--reason", "pulled");
        done("remove", HIGH_WATER, "--reason", "gone");
        done("remove", SWIM, "--reason", "dry now");
        done("remove", "other", "--reason", "entered twice");

        assertThat(shell.run("list").out()).contains("Probe").doesNotContain("Other");
        assertThat(shell.run("changes").out().lines()).hasSize(6);
    }

    @Test
    void thingsMoveBesideOthersAndIntoOthers() {
        assertThat(done("move", "probe/first/webbing", "--before", LEFT_BOLT))
                .contains("Done: moved part webbing at first in its line");
        assertThat(done("move", WEBBING, "--before", LEFT_BOLT)).contains("It stands there already");
        assertThat(show("probe/first").indexOf("webbing:"))
                .isLessThan(show("probe/first").indexOf("left bolt:"));

        assertThat(done("move", LEFT_BOLT, "--to", HIGH_WATER)).contains("Done: moved part left bolt at first");
        assertThat(show("probe/first")).containsPattern("(?s)high-water anchor.*left bolt: \\+ sound on 2024-05");
        done("move", STATION, "--to", SWIM);
        done("move", SWIM, "--before", DROP);
        assertThat(show("probe")).containsPattern("1 +swim +first");
        assertThat(done("move", SWIM, "--to", "other")).contains("moved place swim: to Other");
        assertThat(show("other")).containsPattern("1 +swim +first");
        assertThat(shell.run("check").code()).isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            move probe/first                                | Say where it goes: exactly one of --to
            move probe/first --to other                     | The station "first" cannot be put into the canyon "Other"; it belongs to places.
            move probe --to other                           | The canyon "Probe" cannot be put into the canyon "Other"; it belongs to nothing.
            move probe/first --before probe                 | The station "first" cannot be put beside the canyon "Probe"; name another station.
            move probe/first --after probe/first            | A thing cannot be put beside itself
            withdraw nonsense --reason x                    | "nonsense" is no id of an entry
            withdraw 01970000-0000-7000-8000-000000000999 --reason x | There is no entry with the id 01970000
            withdraw 01970000-0000-7000-8000-000000011111 --reason x | There is no entry with the id 01970000
            undo --change 99                                | There is no change with the number 99
            redo                                            | There is nothing to bring again.
            changes --most 0                                | --most is a number from 1 to
            changes probe --change 1                        | leave the canyon out
            remove probe                                    | --reason TEXT is needed here. See thalweg remove --help.
            inspect probe/first webbing worn --water deep   | The water level "deep" is not known; it is one of dry, low
            inspect probe/first webbing worn --work glued   | The work "glued" is not known; it is one of added
            inspect probe/first webbing worn --left not-seen | The condition as left "not-seen" is not known
            inspect probe/first webbing worn --round latest | There is no round in Probe; `round CANYON` enters one.
            inspect probe/first webbing worn --photo no.jpg | There is no photo no.jpg; check the path.
            round probe --on 2026-12                        | The date 2026-12 has not come yet
            round probe --on soon                           | The date "soon" cannot be read
            round probe --on 1850                           | The date 1850 lies before 1900; was another year meant?
            inspect probe/first webbing worn --on 1850-05   | The date 1850-05 lies before 1900; was another year meant?
            """)
    void wrongUseIsOneSentence(String line, String sentence) {
        assertThat(refused(line.split(" "))).contains(sentence);
        assertThat(shell.run("changes").out().lines()).hasSize(2);
    }

    @Test
    void anOptionOfAnotherKindOfEntryIsRefused() {
        String note = idAfter("Rigging note of 2025 by Bo");

        assertThat(refused("correct", note, "--work", "added", "--reason", "x"))
                .contains("This entry is a rigging note, about which --work says nothing");
        assertThat(refused("correct", note, "worn", "--reason", "x")).contains("the condition says nothing");
        assertThat(refused("correct", note, "--text", "glory=x", "--reason", "x"))
                .contains("is one of technique, rope-set");
        assertThat(refused("correct", inspection(), "--text", "landing=x", "--reason", "x"))
                .contains("This entry is an inspection");
        assertThat(refused("correct", inspection(), "--reason", "x")).contains("Nothing differs from the entry");
        assertThat(refused("correct", inspection(), "worn", "--reason", " ")).contains("A word of reason is needed");
    }

    @Test
    void photosAreHashedKeptAndDropped() throws IOException {
        Path photo = Files.writeString(home.resolve("a=b.jpg"), "abc");
        done(
                "inspect",
                "probe/first",
                "webbing",
                "worn",
                "--photo",
                photo + "=edge = frayed",
                "--photo",
                photo.toString());

        // SHA-256 of "abc": FIPS 180-2, appendix B.1.
        assertThat(show("probe/first"))
                .contains("photo a=b.jpg \"edge = frayed\", sha256 ba7816bf8f01...")
                .contains("photo a=b.jpg, sha256 ba7816bf8f01...");
        String html = shell.run("sheet", "probe", "--as", "text").out();
        assertThat(html).contains("photo a=b.jpg: edge = frayed");
        done("correct", idAfter("2026-11-25  ~ worn"), "--drop-photos", "--reason", "somebody's face");
        assertThat(shell.run("sheet", "probe", "--as", "text").out()).doesNotContain("a=b.jpg");
    }

    @Test
    void changesAreListedAndReadByPeopleAndPrograms() {
        done("correct", inspection(), "worn", "--reason", "looked again");
        done("undo");

        assertThat(shell.run("changes").out())
                .contains(
                        "NUMBER  WHEN",
                        "2       2026-11-25 12:00 UTC  ada  Probe",
                        "taken back",
                        "import of 2 canyons");
        assertThat(shell.run("changes", "other").code()).isZero();
        assertThat(shell.run("changes", "--change", "2").out())
                .contains(
                        "Change 2, by ada, 2026-11-25 12:00 UTC\nProbe\ntaken back by ada", "  found: sound -> worn\n");
        assertThat(shell.run("changes", "--change", "2", "--json").out())
                .contains(
                        "\"taken_back\": true",
                        "\"did\": \"corrected\"",
                        "\"before\": \"sound\"",
                        "\"after\": \"worn\"");
        assertThat(shell.run("changes", "--json", "--most", "1").out())
                .contains("\"number\": 2")
                .doesNotContain("\"number\": 1,");
    }

    @Test
    void whatWasAmendedTravelsToAnotherDatabase() throws IOException {
        Path photo = Files.writeString(home.resolve("b.jpg"), "abc");
        done("round", "probe", "--on", "2026-06");
        done("inspect", "probe/first", "webbing", "worn", "--round", "latest", "--photo", photo + "=edge");
        done("correct", inspection(), "worn", "--reason", "looked again");
        done("withdraw", idAfter("Rigging note of 2025 by Bo"), "--reason", "another canyon");
        done("move", "probe/first/webbing", "--before", LEFT_BOLT);
        done("remove", SWIM, "--reason", "dry");
        done("undo");
        done("redo");
        Path file = home.resolve("out.json");
        done("export", "--out", file.toString());
        String other = home.resolve("other.db").toString();

        assertThat(shell.run("import", file.toString(), "--db", other, "--accept")
                        .code())
                .isZero();

        for (String name : List.of("probe", "probe/first")) {
            assertThat(shell.run("show", "--ids", name, "--db", other).out()).isEqualTo(show(name));
        }
        assertThat(shell.run("export", "--db", other).out()).isEqualTo(Files.readString(file));
        assertThat(shell.run("import", file.toString(), "--db", other).out()).contains("Nothing new in 2 canyons");
        assertThat(shell.run("check", "--db", other).code()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"round", "correct", "withdraw", "move", "remove", "changes", "undo", "redo"})
    void everyCommandHasHelp(String command) {
        Shell.Ran ran = shell.run(command, "--help");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("thalweg " + command).contains("--db");
    }
}
