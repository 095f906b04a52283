package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.fault.StoreException;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonMeasure;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyon;
import thalweg.logbook.PartFinding;
import thalweg.logbook.Span;
import thalweg.logbook.StationRow;
import thalweg.route.PartialDate;
import thalweg.testing.MemoryKnown;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

class MigrationsTest {

    private static final Database.Setup LATER = new Database.Setup(oursAnd("test-more.sql"), 5_000);
    private static final Database.Setup BROKEN = new Database.Setup(oursAnd("test-broken.sql"), 5_000);

    private static final Database.Setup FIRST = new Database.Setup(new Migrations(List.of("001-records.sql")), 5_000);

    private static final int OURS = Migrations.OURS.latest();
    private static final int NEXT = OURS + 1;

    private static Migrations oursAnd(String step) {
        return new Migrations(
                Stream.concat(Migrations.OURS.steps().stream(), Stream.of(step)).toList());
    }

    @TempDir
    private Path folder;

    private Path older() {
        Path file = folder.resolve("canyons.db");
        try (Database database = Database.open(file, Access.CREATE)) {
            var plan = MemoryKnown.planFor(new RandomRecords(8, Fill.EVERYTHING).canyon());
            new LedgerStore(database).append(new Batch(plan.revisions(), plan.facts(), "Ana", "2026-11-25T10:00:00Z"));
        }
        return file;
    }

    private Path backup() {
        return folder.resolve("canyons.db.before-version-" + NEXT);
    }

    @Test
    void anOlderDatabaseIsCopiedAndThenBroughtUpToDate() throws IOException {
        Path file = older();

        try (Database database = Database.open(file, Access.WRITE, LATER)) {
            assertThat(database.read(Migrations::version)).isEqualTo(NEXT);
            assertThat(database.<List<String>>read(sql -> sql.all("select word from more", row -> row.getString(1))))
                    .containsExactly("kept; not cut at this semicolon");
            assertThat(new CanyonStore(database).count()).isEqualTo(1);
        }

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(backup())))
                .isEqualTo("rw-------");
        try (Database copy = Database.open(backup(), Access.READ)) {
            assertThat(copy.read(Migrations::version)).isEqualTo(OURS);
            assertThat(new CanyonStore(copy).count()).isEqualTo(1);
            assertThat(new CheckStore(copy).findings()).isEmpty();
        }
        Database.open(file, Access.WRITE, LATER).close();
    }

    /** The rows were written by version 1 of the program itself. */
    private Path ofVersion1() throws IOException {
        Path file = folder.resolve("old.db");
        String rows = Files.readString(Path.of("src/test/resources/thalweg/storage/version-1-rows.sql"));
        try (Database database = Database.open(file, Access.CREATE, FIRST)) {
            database.write(sql -> {
                for (String row : rows.split(";\\R", -1)) {
                    if (!row.isBlank()) {
                        sql.run(row);
                    }
                }
                return sql;
            });
        }
        return file;
    }

    @Test
    void whatVersion1HeldIsFoundByItsWordsAndMeasuresAfterwards() throws IOException {
        Path file = ofVersion1();

        try (Database database = Database.open(file, Access.WRITE)) {
            assertThat(database.read(Migrations::version)).isEqualTo(OURS);
            assertThat(new CheckStore(database).findings()).isEmpty();
            CanyonStore canyons = new CanyonStore(database);
            assertThat(canyons.search("luzna")).map(CanyonRow::name).containsExactly("Łużna Próba");
            assertThat(canyons.search("PROBENSTRASSE utop")).hasSize(1);
            assertThat(canyons.search("沢")).map(CanyonRow::name).containsExactly("奥試験沢");
            assertThat(canyons.stations("елка")).map(StationRow::stationName).containsExactly("Ёлка");
            assertThat(new PartStore(database).parts(PartFinding.of("pw2231"), 10))
                    .singleElement()
                    .satisfies(row -> assertThat(row.replacedSince()).contains(PartialDate.parse("2023-05-01")));
            CanyonFilter atMost18 =
                    new CanyonFilter("", "", Map.of(CanyonMeasure.LONGEST_DROP, Span.to(1800)), false, false);
            assertThat(canyons.canyons(new Finding("", atMost18)))
                    .as("of one nothing is known, one has a drop of unknown height, of one it is stated")
                    .map(FoundCanyon::fits)
                    .containsExactly(false, false, true);
        }
        assertThat(folder.resolve("old.db.before-version-" + OURS)).isRegularFile();
    }

    @Test
    void aLedgerThatCannotBeReadLeavesAnOldDatabaseAsItWas() throws IOException {
        Path file = ofVersion1();
        try (Database database = Database.open(file, Access.WRITE, FIRST)) {
            database.write(sql -> sql.run("update revision set canonical = '{}' where key = 2"));
        }

        assertThatThrownBy(() -> Database.open(file, Access.WRITE))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("its ledger breaks a rule")
                .hasMessageContaining("Nothing was changed");

        try (Database database = Database.open(file, Access.READ, FIRST)) {
            assertThat(database.read(Migrations::version)).isEqualTo(1);
        }
    }

    @Test
    void aNewDatabaseNeedsNoCopy() {
        try (Database database = Database.open(folder.resolve("canyons.db"), Access.CREATE, LATER)) {
            assertThat(database.read(Migrations::version)).isEqualTo(NEXT);
        }
        assertThat(backup()).doesNotExist();
    }

    @Test
    void anOlderDatabaseThatIsOnlyReadSaysWhatToDo() throws IOException {
        Path file = older();
        byte[] before = Files.readAllBytes(file);

        assertThatThrownBy(() -> Database.open(file, Access.READ, LATER))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("was written by an older Thalweg")
                .hasMessageContaining("open it on the screen");

        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        assertThat(backup()).doesNotExist();
    }

    @Test
    void aStepThatFailsLeavesTheOldTablesAndTheCopy() throws IOException {
        Path file = older();

        assertThatThrownBy(() -> Database.open(file, Access.WRITE, BROKEN)).isInstanceOf(StoreException.class);

        assertThat(backup()).isRegularFile();
        try (Database database = Database.open(file, Access.READ)) {
            assertThat(new CheckStore(database).findings()).isEmpty();
        }
    }

    @Test
    void aCopyThatIsThereIsNeverOverwritten() throws IOException {
        Path file = older();
        Files.writeString(backup(), "precious");

        assertThatThrownBy(() -> Database.open(file, Access.WRITE, LATER))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("before-version-" + NEXT + " is there already; move it away");

        assertThat(backup()).hasContent("precious");
        try (Database database = Database.open(file, Access.READ)) {
            assertThat(database.read(Migrations::version)).isEqualTo(OURS);
        }
    }

    /** Both find an empty file; the second waits for the first and must not run the steps again. */
    @Test
    void twoWhoFillTheSameEmptyFileAtOnceRunEachStepOnce() throws Exception {
        Path file = Files.createFile(folder.resolve("canyons.db"));
        CountDownLatch start = new CountDownLatch(1);
        ExecutorService both = Executors.newFixedThreadPool(2);
        try {
            List<Future<Integer>> opened = List.of(0, 1).stream()
                    .map(i -> both.submit(() -> {
                        start.await();
                        try (Database database = Database.open(file, Access.WRITE, LATER)) {
                            return database.read(sql -> sql.all("select word from more", row -> row.getString(1)))
                                    .size();
                        }
                    }))
                    .toList();
            start.countDown();
            for (Future<Integer> rows : opened) {
                assertThat(rows.get()).isEqualTo(1);
            }
        } finally {
            both.shutdownNow();
        }
    }

    /** The same without chance: the steps run inside the lock only from where the other has left the tables. */
    @Test
    void stepsThatAreDoneAlreadyAreNotRunAgain() {
        try (Database database = Database.inMemory()) {
            database.write(sql -> {
                Migrations.OURS.run(sql);
                return sql;
            });
            assertThat(database.read(Migrations::version)).isEqualTo(OURS);
        }
    }
}
