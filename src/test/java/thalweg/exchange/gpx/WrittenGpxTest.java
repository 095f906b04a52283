package thalweg.exchange.gpx;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.exchange.map.GpxText;
import thalweg.logbook.CanyonRecord;
import thalweg.service.LoadPhrases;
import thalweg.testing.RandomRecords;
import thalweg.testing.SampleRecords;
import thalweg.text.Language;
import thalweg.units.UnitSystem;

/** What the program writes follows the schema, whatever is in the records. */
final class WrittenGpxTest {

    private static List<String> breaches(List<CanyonRecord> canyons, Language language) {
        String text = GpxText.write(
                canyons, LoadPhrases.of(language), UnitSystem.METRIC, Instant.parse("2026-11-25T12:00:00.5Z"));
        return GpxRules.breaches(text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void theSampleRecordsAreWrittenAsTheSchemaHasThem(Language language) {
        assertThat(breaches(SampleRecords.CANYONS, language)).isEmpty();
    }

    @Test
    void anyRecordsAreWrittenAsTheSchemaHasThem() {
        for (long seed = 1; seed <= 40; seed++) {
            for (RandomRecords.Fill fill : RandomRecords.Fill.values()) {
                RandomRecords random = new RandomRecords(seed, fill);

                assertThat(breaches(List.of(random.canyon(), random.canyon()), Language.EN))
                        .isEmpty();
            }
        }
    }
}
