package thalweg.exchange.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.exchange.Parcel;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;
import thalweg.testing.SampleRecords;

/**
 * The schema that others write files of records by, held against our writer and our reader through a validator that is not
 * ours.
 *
 * @see "JSON Schema, draft 2020-12"
 */
final class RecordsSchemaTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static final Path FILE = Path.of("src/docs/records.schema.json");

    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(text());

    private static String text() {
        try {
            return Files.readString(FILE);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> objections(String document) {
        return SCHEMA.validate(document, InputFormat.JSON).stream()
                .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
                .toList();
    }

    private static String written(long seed, Fill fill) {
        RandomRecords random = new RandomRecords(seed, fill);
        CanyonRecord canyon = random.canyon();
        return RecordsWriter.write(List.of(new Parcel(canyon, random.local(canyon))));
    }

    private static List<?> refusals(String document) {
        Findings findings = new Findings();
        AtomicInteger minted = new AtomicInteger();
        RecordsReader reader = new RecordsReader(
                () -> Uid.minted(1_700_000_000_000L, new UUID(0, minted.incrementAndGet())),
                "Ana",
                "2026-11-25T10:00:00Z",
                TODAY);
        reader.read("records.json", document.getBytes(StandardCharsets.UTF_8), findings);
        return findings.all();
    }

    @Test
    void theSampleFits() {
        assertThat(objections(new String(SampleRecords.bytes(), StandardCharsets.UTF_8)))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void everythingThatIsWrittenFits(Fill fill) {
        for (long seed = 0; seed < 30; seed++) {
            assertThat(objections(written(seed, fill))).isEmpty();
        }
    }

    @Test
    void everyKeyOfTheSchemaIsWrittenBySomebody() {
        Set<String> written = new TreeSet<>();
        for (long seed = 0; seed < 60; seed++) {
            keys(
                    JsonDocument.read("records.json", written(seed, Fill.EVERYTHING))
                            .root(),
                    written);
            keys(
                    JsonDocument.read("records.json", written(seed, Fill.SOMETHING))
                            .root(),
                    written);
        }
        Set<String> known = new TreeSet<>();
        properties(JsonDocument.read("schema", text()).root(), known);

        assertThat(known).isEqualTo(written);
    }

    private static void keys(Json json, Set<String> into) {
        if (json instanceof Json.Fields fields) {
            fields.values().forEach((key, value) -> {
                into.add(key);
                if (!key.equals("inventory")) {
                    keys(value, into);
                }
            });
        } else if (json instanceof Json.Items items) {
            items.values().forEach(item -> keys(item, into));
        }
    }

    private static void properties(Json schema, Set<String> into) {
        if (schema instanceof Json.Fields fields) {
            fields.values().forEach((key, value) -> {
                if (key.equals("properties") && value instanceof Json.Fields properties) {
                    into.addAll(properties.values().keySet());
                }
                properties(value, into);
            });
        } else if (schema instanceof Json.Items items) {
            items.values().forEach(item -> properties(item, into));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"name\": \"A\"|\"nome\": \"A\"",
                "\"name\": \"A\"|\"name\": \"\"",
                "\"name\": \"A\"|\"name\": 7",
                "\"version\": 2|\"version\": 3",
                "\"kind\": \"drop\"|\"kind\": \"waterfall\"",
                "\"height_cm\": 1800|\"height_cm\": 18.5",
                "\"height_cm\": 1800|\"height_cm\": -1",
                "\"on\": \"2026-06\"|\"on\": \"June\"",
                "\"on\": \"2026-06\"|\"on\": \"2026-13\"",
                "\"found\": \"worn\"|\"note\": \"worn\"",
                "\"found\": \"worn\"|\"found\": \"good\"",
                "\"lat_e7\": 1|\"lat_e7\": 900000001",
            })
    void whatTheReaderRefusesDoesNotFit(String right, String wrong) {
        String document = """
                {"format": "thalweg records", "version": 2, "canyons": [{"name": "A",
                  "position": {"lat_e7": 1, "lon_e7": 2}, "line": [{"kind": "drop", "height_cm": 1800,
                  "stations": [{"name": "S", "anchors": [{"role": "main", "parts": [{"label": "b", "kind": "bolt",
                  "inspections": [{"on": "2026-06", "found": "worn"}]}]}]}]}]}]}
                """;
        assertThat(objections(document)).isEmpty();
        assertThat(refusals(document)).isEmpty();

        String altered = document.replace(right, wrong);

        assertThat(objections(altered)).isNotEmpty();
        assertThat(refusals(altered)).isNotEmpty();
    }
}
