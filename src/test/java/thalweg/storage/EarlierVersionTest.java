package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.body.WithdrawalBody;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.PartRecord;

/** A database that version 1 of the tables really wrote, kept as a file: one invented canyon. */
class EarlierVersionTest {

    private static final Uid CANYON =
            Uid.parse("019ba000-0000-7000-8000-000000000001").orElseThrow();

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void itLiesThere() throws IOException {
        file = folder.resolve("canyons.db");
        try (InputStream kept = Objects.requireNonNull(
                        EarlierVersionTest.class.getResourceAsStream("/thalweg/storage/version-1.db.gz"));
                GZIPInputStream in = new GZIPInputStream(kept)) {
            Files.copy(in, file);
        }
        assertThat(FileHeader.of(file).version()).isEqualTo(1);
    }

    @Test
    void itIsBroughtUpToDateAndNothingIsLost() {
        try (Database database = Database.open(file, Access.WRITE)) {
            assertThat(new CheckStore(database).findings()).isEmpty();
            CanyonRecord canyon = new RecordStore(database).canyon(CANYON).orElseThrow();
            PartRecord bolt = canyon.stations().get(0).parts().get(0);
            assertThat(canyon.canyon().name()).isEqualTo("Łomnica Probe");
            assertThat(bolt.state().condition()).contains(Condition.WORN);
            assertThat(bolt.counting()).hasSize(2);
            assertThat(canyon.stations().get(0).countingNotes()).hasSize(1);
            assertThat(new CanyonStore(database).search("lomnica")).hasSize(1);
        }
    }

    @Test
    void whatWasWrittenBeforeCanBeWithdrawnNow() {
        try (Database database = Database.open(file, Access.WRITE)) {
            LedgerStore ledger = new LedgerStore(database);
            Uid newest = new RecordStore(database)
                    .canyon(CANYON)
                    .orElseThrow()
                    .stations()
                    .get(0)
                    .parts()
                    .get(0)
                    .inspections()
                    .get(0)
                    .uid();
            ledger.append(new Batch(
                    List.of(),
                    List.of(WithdrawalBody.of(newest, "slip", "Ana", "2026-11-25T10:00:00Z")),
                    "Ana",
                    "2026-11-25T10:00:00Z"));

            PartRecord bolt = new RecordStore(database)
                    .canyon(CANYON)
                    .orElseThrow()
                    .stations()
                    .get(0)
                    .parts()
                    .get(0);
            assertThat(bolt.state().condition()).contains(Condition.SOUND);
            assertThat(new CheckStore(database).findings()).isEmpty();
        }
    }

    @Test
    void aCopyOfItIsKept() {
        Database.open(file, Access.WRITE).close();

        Path copy = folder.resolve("canyons.db.before-version-" + Migrations.OURS.latest());
        assertThat(FileHeader.of(copy).version()).isEqualTo(1);
    }
}
