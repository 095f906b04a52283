package thalweg.exchange.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.Parcel;
import thalweg.json.Findings;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.testing.MemoryKnown;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

class RecordsRoundTripTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String AT = "2026-11-25T10:00:00Z";

    private static List<Parcel> read(String text) {
        Findings findings = new Findings();
        RecordsReader reader = new RecordsReader(
                () -> {
                    throw new AssertionError("every thing has its id");
                },
                "Nobody",
                AT,
                TODAY);
        List<Parcel> canyons = reader.read("records.json", text.getBytes(StandardCharsets.UTF_8), findings);
        assertThat(findings.all()).isEmpty();
        return canyons;
    }

    private static List<Parcel> canyons(long seed, Fill fill) {
        RandomRecords random = new RandomRecords(seed, fill);
        List<Parcel> canyons = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            CanyonRecord canyon = random.canyon();
            canyons.add(new Parcel(canyon, random.local(canyon)));
        }
        return canyons;
    }

    @ParameterizedTest
    @EnumSource
    void whatIsWrittenIsReadBackAndWrittenAgainByteForByte(Fill fill) {
        for (long seed = 0; seed < 20; seed++) {
            List<Parcel> canyons = canyons(seed, fill);
            String text = RecordsWriter.write(canyons);

            List<Parcel> read = read(text);

            assertThat(read).isEqualTo(canyons);
            assertThat(RecordsWriter.write(read)).isEqualTo(text);
        }
    }

    @Test
    void importingAnExportIntoWhereItCameFromChangesNothing() {
        for (long seed = 0; seed < 20; seed++) {
            MemoryKnown known = new MemoryKnown();
            List<Parcel> canyons = canyons(seed, Fill.SOMETHING);
            ImportPlan first = ImportPlan.of(canyons, known, "Ana", AT);
            known.accept(first);

            ImportPlan again = ImportPlan.of(read(RecordsWriter.write(canyons)), known, "Bo", "2026-12-01T00:00:00Z");

            assertThat(first.isEmpty()).isFalse();
            assertThat(again.isEmpty()).isTrue();
            assertThat(again.changes()).isEmpty();
            assertThat(again.added()).isZero();
            assertThat(again.unchanged())
                    .isEqualTo(first.revisions().size() + first.facts().size());
        }
    }

    @Test
    void theFileSaysWhatItIs() {
        assertThat(RecordsWriter.write(List.of()))
                .isEqualTo("{\"format\": \"thalweg records\", \"version\": 2, \"canyons\": []}\n");
    }

    @Test
    void parentsAreSaidByTheNestingOnly() {
        CanyonRecord canyon = new RandomRecords(8, Fill.EVERYTHING).canyon();
        Uid uid = canyon.canyon().uid();

        String text = RecordsWriter.write(List.of(Parcel.of(canyon)));

        assertThat(text.split(uid.text(), -1)).as("the id stands once").hasSize(2);
        assertThat(text).doesNotContain("\"obstacle\":", "\"station\":", "\"anchor\":");
    }
}
