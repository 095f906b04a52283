package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsReader;
import thalweg.fault.Sentence;
import thalweg.json.Findings;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

class RecordRulesTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static final String FILE = """
            {"format": "thalweg records", "version": 2, "canyons": [
             {"name": "Probe", "longest_drop_cm": 3000, "line": [
              {"kind": "walk", "distance_cm": 1000},
              {"kind": "swim"},
              {"kind": "drop", "name": "Long", "height_cm": 2000, "distance_cm": 5000, "stations": [
               {"name": "S1", "rope_needed_cm": 2500, "anchors": [{"role": "main", "parts": [
                {"label": "left", "kind": "bolt", "placed": "2019", "inspections": [
                 {"on": "2020-05-01", "found": "worn", "left": "sound", "work": ["tightened"]}]},
                {"label": "right", "kind": "bolt"}]}]}]}]}]}
            """;

    private static List<RecordRules.Broken> broken(String from, String to) {
        assertThat(FILE).contains(from);
        RandomRecords random = new RandomRecords(1, Fill.NOTHING);
        Findings findings = new Findings();
        List<Parcel> parcels = new RecordsReader(
                        () -> random.uid(), "Ana", "2026-11-25T10:00:00Z", LocalDate.of(2999, 1, 1))
                .read("probe", FILE.replace(from, to).getBytes(StandardCharsets.UTF_8), findings);
        assertThat(findings.all()).isEmpty();
        return RecordRules.brokenBy(parcels.get(0).canyon(), TODAY);
    }

    @Test
    void whatDoesNotContradictItselfIsLeftAlone() {
        assertThat(broken("Probe", "Probe")).isEmpty();
        assertThat(broken("\"placed\": \"2019\",", "\"placed\": \"2020\","))
                .as("the same year")
                .isEmpty();
        assertThat(broken("\"distance_cm\": 1000", "\"distance_cm\": 5000"))
                .as("as far along")
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "longest_drop_cm": 3000 | "longest_drop_cm": 1900    | Probe / place 3 Long | is 20 m high, but the longest drop of the canyon is said to be 19 m.
            "distance_cm": 5000  | "distance_cm": 900   | Probe / place 3 Long | is at 9 m along the line, but place 1 before it at 10 m.
            "rope_needed_cm": 2500 | "rope_needed_cm": 1500 | Probe / place 3 Long / S1 | needs 15 m of rope, less than its drop is high (20 m).
            "label": "right"     | "label": "left"      | Probe / place 3 Long / S1 | has 2 parts called "left" in one anchor; nobody can tell which was inspected.
            "placed": "2019"     | "placed": "2021-06"  | Probe / place 3 Long / S1 / left | was inspected on 2020-05-01, before it was placed (2021-06), and no inspection says that it was replaced.
            , "work": ["tightened"] | ``                | Probe / place 3 Long / S1 / left | The inspection of 2020-05-01 left the part better than it was found, but no work is noted.
            "name": "Probe",     | "name": "Probe", "rounds": [{"on": "1850", "by": "Ana"}], | Probe | A round is dated 1850, which lies before 1900.
            "on": "2020-05-01"   | "on": "2027-05-01"   | Probe / place 3 Long / S1 / left | An inspection is dated 2027-05-01, which has not come yet.
            "work": ["tightened"] | "work": ["tightened"], "round": "018f0000-0000-8000-8000-000000000000" | Probe / place 3 Long / S1 / left | The inspection of 2020-05-01 belongs to a round that is not among those of the canyon.
            """)
    void eachContradictionIsNamedWithItsPlace(String from, String to, String where, String sentence) {
        assertThat(broken(from, to)).singleElement().satisfies(one -> {
            assertThat(Sentence.joined(" / ", one.where()).toString()).isEqualTo(where);
            assertThat(one.what().toString()).isEqualTo(sentence);
        });
    }

    @Test
    void aReplacedPartMayBeYoungerThanItsFirstInspections() {
        assertThat(
                        broken(
                                "\"placed\": \"2019\", \"inspections\": [",
                                "\"placed\": \"2021\", \"inspections\": [{\"on\": \"2021-04\", \"left\": \"sound\", \"work\": [\"replaced\"]},"))
                .isEmpty();
    }

    @Test
    void noCanyonOfAnyKindMakesItFail() {
        for (long seed = 0; seed < 60; seed++) {
            CanyonRecord canyon = new RandomRecords(seed, Fill.SOMETHING).canyon();

            assertThat(RecordRules.brokenBy(canyon, TODAY))
                    .allSatisfy(one -> assertThat(one.where().get(0))
                            .hasToString(canyon.canyon().name()));
        }
    }
}
