package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.Parcel;
import thalweg.fault.StoreException;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.testing.MemoryKnown;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

/** An import that stops half-way leaves nothing half-written, whatever stopped it. */
final class HalfwayTest {

    /** Canyons of one import. */
    private static final int CANYONS = 6;

    private static final String AT = "2026-11-25T10:00:00Z";

    @TempDir
    private Path folder = Path.of("");

    private Path file() {
        return folder.resolve("records.db");
    }

    private static Batch manyCanyons(long seed) {
        List<Parcel> parcels = new ArrayList<>();
        for (int i = 0; i < CANYONS; i++) {
            RandomRecords random = new RandomRecords(seed + i, Fill.EVERYTHING);
            CanyonRecord canyon = random.canyon();
            parcels.add(new Parcel(canyon, random.local(canyon)));
        }
        ImportPlan plan = ImportPlan.of(parcels, new MemoryKnown(), "Ana", AT);
        return new Batch(plan.revisions(), plan.facts(), "Ana", AT);
    }

    private static void holdsNothing(Database database) {
        for (String table : Derived.TABLES) {
            assertThat(count(database, table)).as(table).isZero();
        }
        for (String table : List.of("revision", "revision_parent", "fact", "change", "change_entry")) {
            assertThat(count(database, table)).as(table).isZero();
        }
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    private static int count(Database database, String table) {
        return database.read(sql -> sql.one("select count(*) from " + table, row -> row.getInt(1)))
                .orElseThrow();
    }

    @Test
    void aFullDiskLeavesNothing() {
        try (Database database = Database.open(file(), Access.CREATE)) {
            database.read(sql -> sql.one("pragma max_page_count = 90", row -> row.getInt(1)));

            assertThatThrownBy(() -> new LedgerStore(database).append(manyCanyons(1)))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("is full; nothing was changed");

            holdsNothing(database);
            database.read(sql -> sql.one("pragma max_page_count = 1000000", row -> row.getInt(1)));
            new LedgerStore(database).append(manyCanyons(1));
            assertThat(count(database, "canyon")).isEqualTo(CANYONS);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"revision", "canyon", "part", "trip", "private_note", "inspection", "sheet_given", "change_entry"
            })
    void aStatementThatFailsLeavesNothing(String table) {
        try (Database database = Database.open(file(), Access.CREATE)) {
            database.write(sql -> sql.run("create trigger broken before insert on " + table
                    + " when (select count(*) from " + table + ") > 3 begin select raise(abort, 'broken'); end"));

            assertThatThrownBy(() -> new LedgerStore(database).append(manyCanyons(1)))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("refused the work; nothing was changed");

            database.write(sql -> sql.run("drop trigger broken"));
            holdsNothing(database);
        }
    }

    /** Imports one batch after the other until somebody ends it; a line on standard output for each that is done. */
    public static final class Importing {

        private Importing() {}

        /** @param arguments the database file, and the seed of the first batch */
        public static void main(String[] arguments) {
            try (Database database = Database.open(Path.of(arguments[0]), Access.CREATE)) {
                for (long seed = Long.parseLong(arguments[1]); seed < 1_000_000; seed += CANYONS) {
                    new LedgerStore(database).append(manyCanyons(seed));
                    System.out.println("done");
                }
            }
        }
    }

    @Test
    void aProgramThatIsKilledLeavesWholeImports() throws IOException, InterruptedException {
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path", ""));
        for (int wait : new int[] {0, 130}) {
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home", ""), "bin", "java")
                                    .toString(),
                            "-cp",
                            classPath,
                            Importing.class.getName(),
                            file().toString(),
                            Integer.toString(1 + wait * 1_000))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            try (BufferedReader out =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
                assertThat(out.readLine()).isEqualTo("done");
                TimeUnit.MILLISECONDS.sleep(wait);
            }
            process.destroyForcibly().waitFor();

            try (Database database = Database.open(file(), Access.WRITE)) {
                assertThat(count(database, "canyon") % CANYONS).isZero();
                assertThat(count(database, "canyon")).isPositive();
                assertThat(new CheckStore(database).findings()).isEmpty();
                List<Uid> canyons = new RecordStore(database).canyons();
                assertThat(new RecordStore(database).canyon(canyons.get(0))).isPresent();
            }
        }
    }
}
