package thalweg.exchange.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.exchange.Parcel;
import thalweg.json.Findings;
import thalweg.ledger.Uid;
import thalweg.logbook.LocalRecord;

/** What stays with one database, read from a file: it may be written by hand, and each mistake is named with its line. */
final class LocalRecordsReaderTest {

    private static final String HASH = "0123456789abcdef".repeat(4);

    private static final String FILE = """
        {
          "format": "thalweg records",
          "version": 2,
          "canyons": [
            {
              "uid": "01970000-0000-7000-8000-000000000001",
              "name": "Invented Gorge",
              "line": [
                {
                  "uid": "01970000-0000-7000-8000-000000000002",
                  "kind": "drop",
                  "height_cm": 1800,
                  "stations": [
                    {
                      "uid": "01970000-0000-7000-8000-000000000003",
                      "name": "S1",
                      "anchors": [
                        {
                          "uid": "01970000-0000-7000-8000-000000000004",
                          "role": "main"
                        }
                      ]
                    }
                  ]
                }
              ],
              "trips": [
                {
                  "state": "done",
                  "on": "2026-06-14",
                  "start_min": 510,
                  "people": [
                    {"name": "Ana", "role": "lead", "weight_g": 62000}
                  ],
                  "ropes": [
                    {"length_cm": 6000, "kind": "9.5 mm"}
                  ]
                }
              ],
              "private_notes": [
                {"about": "01970000-0000-7000-8000-000000000001", "text": "one"},
                {"about": "01970000-0000-7000-8000-000000000002", "text": "two"},
                {"about": "01970000-0000-7000-8000-000000000003", "text": "three"}
              ],
              "sheets_given": [
                {"on": "2026-06-01", "to": "Kurs", "number": 12, "file": "a.html", "records": "HASH"}
              ]
            }
          ]
        }
        """.replace("HASH", HASH);

    private final Findings findings = new Findings();
    private int minted;

    private List<Parcel> read(String text) {
        return new RecordsReader(this::mint, "Ana", "2026-11-25T10:00:00Z", LocalDate.of(2026, 11, 25))
                .read("records.json", text.getBytes(StandardCharsets.UTF_8), findings);
    }

    private Uid mint() {
        minted++;
        return Uid.minted(1_700_000_000_000L + minted, new UUID(0, minted));
    }

    @Test
    void aFileWrittenByHandIsTakenWhole() {
        LocalRecord local = read(FILE).get(0).local();

        assertThat(findings.all()).isEmpty();
        assertThat(local.trips().get(0).people().get(0).name()).isEqualTo("Ana");
        assertThat(local.notes()).extracting(note -> note.text()).containsExactly("one", "two", "three");
        assertThat(local.sheets().get(0).content().number()).isEqualTo(12);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        "state": "done"       | "state": "soon"        | line 28, canyons[0].trips[0].state: is "soon"; it should be one of planned, done, called_off.
        "on": "2026-06-14"    | "on": "3000"           | line 28, canyons[0].trips[0].on: is a day that has not come yet, so the trip is not done; today is 2026-11-25.
        "on": "2026-06-14"    | "on": "1850-01"        | line 28, canyons[0].trips[0].on: is a day that lies before 1900.
        "on": "2026-06-14"    | "on": "2026-02-30"     | line 28, canyons[0].trips[0].on: is "2026-02-30"; a date is
        "start_min": 510      | "start_min": 1500      | line 28, canyons[0].trips[0].start_min: is 1500; it should be a whole number from 0 to 1439.
        "weight_g": 62000     | "weight_g": 5          | line 33, canyons[0].trips[0].people[0].weight_g: is 5; it should be a whole number from 10000 to 300000.
        "role": "lead"        | "role": "boss"         | line 33, canyons[0].trips[0].people[0].role: is "boss"; it should be one of beginner, able, lead.
        "name": "Ana",        | "nom": "Ana",          | line 33, canyons[0].trips[0].people[0].name: is missing
        "length_cm": 6000     | "length_cm": 0         | line 36, canyons[0].trips[0].ropes[0].length_cm: is 0; it should be a whole number from 100 to 100000.
        "height_cm": 1800     | "height_cm": 500000    | line 9, canyons[0].line[0].height_cm: is 500000; it should be a whole number from 0 to 100000.
        "text": "two"         | "text": " "            | line 42, canyons[0].private_notes[1].text: is blank
        00000002", "text"     | 00000004", "text"      | line 42, canyons[0].private_notes[1].about: names no canyon, place or station that stands in the file before it.
        "number": 12          | "number": 0            | line 46, canyons[0].sheets_given[0].number: is 0; it should be a whole number from 1 to 1000000000.
        "2026-06-01"          | "2027"                 | line 46, canyons[0].sheets_given[0].on: is 2027, which has not come yet.
        "records": "0         | "records": "x          | line 46, canyons[0].sheets_given[0].records: is no SHA-256
        "role": "main"        | "role": "main", "trips": [] | line 20, canyons[0].line[0].stations[0].anchors[0].trips: is a key that is not known here; it belongs in a canyon; known are
        "name": "S1",         | "name": "S1", "parts": [{"label": "bolt", "kind": "bolt"}], | line 16, canyons[0].line[0].stations[0].parts: is a key that is not known here; it belongs in an anchor; known are
        "kind": "drop",       | "kind": "drop", "anchors": [], | line 11, canyons[0].line[0].anchors: is a key that is not known here; it belongs in a station; known are
        """)
    void eachMistakeIsNamedWithItsLineAndNothingIsTaken(String from, String to, String finding) {
        assertThat(FILE).contains(from);

        assertThat(read(FILE.replace(from, to))).isEmpty();

        assertThat(findings.all()).isNotEmpty();
        assertThat(findings.all().get(0).print()).startsWith(finding).endsWith(".");
    }

    @Test
    void whatIsPlannedMayLieAheadAsFarAsIsBelieved() {
        String planned = FILE.replace("\"done\"", "\"planned\"");

        assertThat(read(planned.replace("2026-06-14", "2031-11-25"))).hasSize(1);
        assertThat(read(planned.replace("2026-06-14", "2032"))).isEmpty();
        assertThat(findings.all().get(0).print()).contains("is a day that lies more than 5 years ahead");
    }
}
