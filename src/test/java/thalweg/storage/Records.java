package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsReader;
import thalweg.json.Findings;
import thalweg.testing.MemoryKnown;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

/** Puts canyons that stand as text in a test into a database. */
final class Records {

    private static final String AT = "2026-11-25T10:00:00Z";

    private final LedgerStore ledger;
    private final RandomRecords ids = new RandomRecords(77, Fill.NOTHING);

    Records(Database database) {
        this.ledger = new LedgerStore(database);
    }

    /**
     * Adds canyons.
     *
     * @param canyons as in a file of records, the items of the list alone
     */
    void add(String canyons) {
        String text = "{\"format\": \"thalweg records\", \"version\": 1, \"canyons\": [" + canyons + "]}";
        Findings findings = new Findings();
        List<Parcel> read = new RecordsReader(ids::uid, "Ana", AT, LocalDate.of(2026, 11, 25))
                .read("test", text.getBytes(StandardCharsets.UTF_8), findings);
        assertThat(findings.all()).isEmpty();
        ImportPlan plan = ImportPlan.of(read, new MemoryKnown(), "Ana", AT);
        ledger.append(new Batch(plan.revisions(), plan.facts(), "Ana", AT));
    }
}
