package thalweg.exchange.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.body.FactBody;
import thalweg.exchange.Parcel;
import thalweg.json.Finding;
import thalweg.json.Findings;
import thalweg.json.JsonException;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.route.PartKind;

class RecordsReaderTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String AT = "2026-11-25T10:00:00Z";

    private static final String FILE = """
        {
          "format": "thalweg records",
          "version": 1,
          "canyons": [
            {
              "name": "Invented Gorge",
              "invented": true,
              "line": [
                {"kind": "walk"},
                {
                  "kind": "drop",
                  "height_cm": 1800,
                  "stations": [
                    {
                      "name": "S1",
                      "anchors": [
                        {
                          "role": "main",
                          "parts": [
                            {
                              "label": "left bolt",
                              "kind": "bolt",
                              "placed": "2019",
                              "inspections": [
                                {"on": "2020-05-01", "found": "sound"},
                                {"on": "2024-05-01", "found": "worn", "author": "Bo", "at": "2024-05-02T08:00:00Z"}
                              ]
                            },
                            {"label": "right bolt", "kind": "bolt"}
                          ]
                        }
                      ],
                      "rigging_notes": [{"on": "2024-05-01", "technique": "blocked"}]
                    }
                  ]
                }
              ]
            }
          ]
        }
        """;

    private final Findings findings = new Findings();
    private int minted;

    private List<CanyonRecord> read(byte[] bytes) {
        return new RecordsReader(this::mint, "Ana", AT, TODAY)
                .read("records.json", bytes, findings).stream()
                        .map(Parcel::canyon)
                        .toList();
    }

    private List<CanyonRecord> read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private Uid mint() {
        minted++;
        return Uid.minted(1_700_000_000_000L + minted, new UUID(0, minted));
    }

    private static String replaced(String from, String to) {
        assertThat(FILE).contains(from);
        return FILE.replace(from, to);
    }

    private static PartRecord leftBolt(CanyonRecord canyon) {
        return canyon.stations().get(0).parts().get(0);
    }

    @Test
    void aFileWrittenByHandNeedsNoIdsAuthorsOrTimes() {
        CanyonRecord canyon = read(FILE).get(0);

        assertThat(findings.all()).isEmpty();
        assertThat(minted)
                .as("a canyon, two places, a station, an anchor, two parts")
                .isEqualTo(7);
        assertThat(canyon.line()).map(place -> place.number()).containsExactly(1, 2);
        PartRecord bolt = leftBolt(canyon);
        assertThat(bolt.part().kind()).isEqualTo(PartKind.BOLT);
        assertThat(bolt.state().condition()).contains(Condition.WORN);
        assertThat(bolt.inspections().stream().map(Entry::author)).containsExactly("Bo", "Ana");
        assertThat(bolt.inspections().stream().map(Entry::at)).containsExactly("2024-05-02T08:00:00Z", AT);
        Entry<Inspection> newest = bolt.inspections().get(0);
        assertThat(newest.uid())
                .isEqualTo(FactBody.of(newest.content())
                        .fact(newest.author(), newest.at())
                        .uid());
        assertThat(canyon.stations().get(0).station().obstacle())
                .isEqualTo(canyon.line().get(1).obstacle().uid());
    }

    @Test
    void childrenKeepTheOrderOfTheirList() {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < 300; i++) {
            line.append(i == 0 ? "" : ", ")
                    .append("{\"kind\": \"walk\", \"name\": \"place ")
                    .append(i)
                    .append("\"}");
        }

        CanyonRecord canyon =
                read(replaced("{\"kind\": \"walk\"},", line + ",")).get(0);

        assertThat(findings.all()).isEmpty();
        assertThat(canyon.line()).hasSize(301);
        for (int i = 0; i < 300; i++) {
            assertThat(canyon.line().get(i).obstacle().name()).isEqualTo("place " + i);
            assertThat(canyon.line().get(i).number()).isEqualTo(i + 1);
        }
        assertThat(canyon.line())
                .allMatch(place -> OrderKey.isKey(place.obstacle().order()));
    }

    @Test
    void statedPlacesInLineCountAndTheOthersFollowThem() {
        String text = replaced(
                "{\"kind\": \"walk\"},",
                "{\"kind\": \"swim\", \"order\": \"m\"}, {\"kind\": \"jump\"}, {\"kind\": \"slide\", \"order\":"
                        + " \"A\"},");

        CanyonRecord canyon = read(text).get(0);

        assertThat(canyon.line().stream().map(place -> place.obstacle().kind().name()))
                .containsExactly("SLIDE", "SWIM", "JUMP", "DROP");
        assertThat(canyon.line()).map(place -> place.number()).containsExactly(1, 2, 3, 4);
    }

    /** A key longer than any reader takes would be stored and never read again. */
    @Test
    void aListThatHasNoRoomLeftIsRefused() {
        String last = "z".repeat(64);

        assertThat(read(replaced("{\"kind\": \"walk\"},", "{\"kind\": \"walk\", \"order\": \"" + last + "\"},")))
                .isEmpty();
        assertThat(findings.all())
                .map(Finding::print)
                .containsExactly("line 8, canyons[0].line: has no room for all its entries; leave out their orders,"
                        + " or give fewer.");
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        assertThat(read("\uFEFF" + FILE)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        "kind": "walk"        | "kind": "cliff"         | line 9, canyons[0].line[0].kind: is "cliff"; it should be one of
        "height_cm": 1800     | "height_m": 18          | line 10, canyons[0].line[1].height_m: is a key that is not known here
        "height_cm": 1800     | "height_cm": 18.5       | line 10, canyons[0].line[1].height_cm: is 18.5; it should be a whole number
        "height_cm": 1800     | "height_cm": 1e300      | line 10, canyons[0].line[1].height_cm: is 1E+300; it should be
        "name": "S1"          | "side": "left"          | line 14, canyons[0].line[1].stations[0].name: is missing
        "role": "main"        | "role": "spare"         | line 17, canyons[0].line[1].stations[0].anchors[0].role: is "spare"
        "placed": "2019"      | "placed": "2027"        | line 20, canyons[0].line[1].stations[0].anchors[0].parts[0].placed: is 2027, which has not come yet.
        "placed": "2019"      | "placed": "19"          | parts[0].placed: is "19"; a date is
        "on": "2020-05-01"    | "on": "2026-11-26"      | line 25, canyons[0].line[1].stations[0].anchors[0].parts[0].inspections[0].on: is 2026-11-26, which has not come yet.
        "on": "2020-05-01"    | "on": "2020-02-30"      | inspections[0].on: is "2020-02-30"; a date is
        "found": "worn"       | "found": "OK"           | line 26, canyons[0].line[1].stations[0].anchors[0].parts[0].inspections[1].found: is "OK"
        "2024-05-02T08:00:00Z" | "yesterday"            | inspections[1].at: is "yesterday"; it should be a time in UTC
        "2024-05-02T08:00:00Z" | "2024-05-02T08:00:00+02:00" | inspections[1].at: is "2024-05-02T08:00:00+02:00"; it should be a time in UTC
        "2024-05-02T08:00:00Z" | "2024-13-02T08:00:00Z" | inspections[1].at: is "2024-13-02T08:00:00Z"
        "technique": "blocked" | "by": "Bo"             | rigging_notes[0].technique: and every other heading is missing
        "technique": "blocked" | "technique": ["blocked"] | rigging_notes[0].technique: should be a text.
        "invented": true      | "invented": "true"      | line 5, canyons[0].invented: should be true or false.
        "invented": true      | "uid": "7"              | line 5, canyons[0].uid: is no id;
        "canyons": [          | "extra": 1, "canyons": [ | line 1, extra: is a key that is not known here
        """)
    void eachMistakeIsOneFindingWithItsLineAndNothingIsTaken(String from, String to, String finding) {
        assertThat(read(replaced(from, to))).isEmpty();

        assertThat(findings.all()).hasSize(1);
        assertThat(findings.all().get(0).print()).contains(finding).endsWith(".");
    }

    @Test
    void allMistakesAreReportedAtOnce() {
        String text = FILE.replace("\"walk\"", "\"cliff\"")
                .replace("1800", "-1")
                .replace("\"S1\"", "\"\"")
                .replace("\"worn\"", "\"OK\"")
                .replace("\"right bolt\"", "7");

        assertThat(read(text)).isEmpty();

        assertThat(findings.all()).map(Finding::line).containsExactly(9, 10, 14, 26, 29);
    }

    @Test
    void anEntryThatWasAlteredAfterItWasWrittenIsRefused() {
        String written = RecordsWriter.write(read(FILE).stream().map(Parcel::of).toList());
        assertThat(findings.none()).isTrue();

        for (String altered : List.of(
                written.replace("\"found\": \"worn\"", "\"found\": \"sound\""),
                written.replace("\"author\": \"Bo\"", "\"author\": \"Eve\""),
                written.replace("\"on\": \"2020-05-01\"", "\"on\": \"2021-05-01\""))) {
            assertThat(altered).isNotEqualTo(written);
            Findings here = new Findings();
            assertThat(new RecordsReader(this::mint, "Ana", AT, TODAY)
                            .read("records.json", altered.getBytes(StandardCharsets.UTF_8), here))
                    .isEmpty();
            assertThat(here.all())
                    .singleElement()
                    .extracting(Finding::sentence)
                    .isEqualTo("does not match what the entry says: it was altered after it was written.");
        }
    }

    @Test
    void anIdThatStandsTwiceIsRefused() {
        String uid = "\"uid\": \"0190163d-8694-739b-aea5-966c26f8ad91\", ";

        assertThat(read(FILE.replace("{\"kind\": \"walk\"}", "{" + uid + "\"kind\": \"walk\"}")
                        .replace("\"name\": \"S1\"", uid + "\"name\": \"S1\"")))
                .isEmpty();
        assertThat(findings.all())
                .singleElement()
                .extracting(Finding::print)
                .asString()
                .endsWith("stations[0].uid: stands twice in the file; every thing has its own.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        "thalweg records" | "other records" | line 1, format: should be "thalweg records"; this is no file of records.
        "thalweg records" | 7               | line 1, format: should be a text.
        "version": 1      | "version": 3    | line 1, version: should be 1 or 2; a file of a newer version needs a newer Thalweg.
        "version": 1      | "version": "1"  | line 1, version: should be a number.
        "version": 1,     | ``              | line 1, version: should be 1 or 2;
        """)
    void anotherFormatOrVersionIsSaidFirst(String from, String to, String finding) {
        assertThat(read(replaced(from, to).replace("\"walk\"", "\"cliff\""))).isEmpty();

        assertThat(findings.all().get(0).print()).startsWith(finding);
        assertThat(findings.all()).noneMatch(one -> one.path().contains("canyons"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "7", "\"x\""})
    void aFileThatIsNoObjectIsAFinding(String text) {
        assertThat(read(text)).isEmpty();
        assertThat(findings.all()).hasSize(1);
    }

    @Test
    void aFileWithoutCanyonsHasNothingToImport() {
        assertThat(read("{\"format\": \"thalweg records\", \"version\": 1, \"canyons\": []}"))
                .isEmpty();
        assertThat(findings.all().get(0).print()).contains("canyons: is missing or empty; there is nothing to import.");
    }

    @Test
    void aFileThatIsNoJsonIsOneSentence() {
        for (String text :
                List.of("", "not json", "{\"format\": \"thalweg records\"", FILE.replace("1800", "1e999999999"))) {
            assertThatThrownBy(() -> read(text))
                    .isInstanceOf(JsonException.class)
                    .hasMessageStartingWith("records.json ")
                    .hasMessageEndingWith(".");
        }
        assertThatThrownBy(() -> read(new byte[] {(byte) 0xC3, (byte) 0x28}))
                .isInstanceOf(JsonException.class)
                .hasMessage("records.json is not UTF-8 text; save it as UTF-8 and try again.");
    }

    /** Every prefix of a file, as an interrupted copy leaves it, ends in a sentence and never in a bug. */
    @Test
    void everyTruncatedFileIsRefused() {
        byte[] whole = FILE.stripTrailing().getBytes(StandardCharsets.UTF_8);
        List<Integer> accepted = new ArrayList<>();
        for (int length = 0; length < whole.length; length++) {
            byte[] part = Arrays.copyOf(whole, length);
            try {
                read(part);
                accepted.add(length);
            } catch (JsonException e) {
                assertThat(e.sentence()).startsWith("records.json ");
            }
        }
        assertThat(accepted).isEmpty();
    }
}
