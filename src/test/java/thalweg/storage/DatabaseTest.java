package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.fault.StoreException;

class DatabaseTest {

    private static final Database.Setup IMPATIENT = new Database.Setup(Migrations.OURS, 50);

    @TempDir
    private Path folder;

    private Database open(Access access) {
        return Database.open(folder.resolve("canyons.db"), access, IMPATIENT);
    }

    private static String pragma(Database database, String name) {
        return database.read(sql -> sql.one("pragma " + name, row -> row.getString(1)))
                .orElseThrow();
    }

    private static int settings(Database database) {
        return database.read(sql -> sql.one("select count(*) from setting", row -> row.getInt(1)))
                .orElseThrow();
    }

    private static int insert(Sql sql, String name) throws SQLException {
        return sql.run("insert into setting (name, value) values (?, 'x')", name);
    }

    /** Names and numbers as in "Pragma statements supported by SQLite", sqlite.org/pragma.html. */
    @ParameterizedTest
    @EnumSource
    void everyConnectionHasItsSettings(Access access) {
        open(Access.CREATE).close();

        try (Database database = Database.open(folder.resolve("canyons.db"), access)) {
            assertThat(pragma(database, "journal_mode")).isEqualTo("delete");
            assertThat(pragma(database, "synchronous")).as("extra").isEqualTo("3");
            assertThat(pragma(database, "foreign_keys")).isEqualTo("1");
            assertThat(pragma(database, "trusted_schema")).isEqualTo("0");
            assertThat(pragma(database, "cell_size_check")).isEqualTo("1");
            assertThat(pragma(database, "temp_store")).as("memory").isEqualTo("2");
            assertThat(pragma(database, "mmap_size")).isEqualTo("0");
            assertThat(pragma(database, "application_id")).isEqualTo("" + Database.APPLICATION_ID);
            assertThat(pragma(database, "user_version")).isEqualTo("" + Migrations.OURS.latest());
            assertThat(database.isReadOnly()).isEqualTo(access == Access.READ);
        }
    }

    @Test
    void theMemoryHasThemToo() {
        try (Database database = Database.inMemory()) {
            assertThat(pragma(database, "foreign_keys")).isEqualTo("1");
            assertThat(pragma(database, "trusted_schema")).isEqualTo("0");
            assertThat(pragma(database, "user_version")).isEqualTo("" + Migrations.OURS.latest());
        }
    }

    /** But for the index of words, whose tables SQLite makes by itself. */
    @Test
    void everyTableIsStrict() {
        try (Database database = Database.inMemory()) {
            assertThat(database.<List<String>>read(sql -> sql.all(
                            "select name, strict from pragma_table_list where schema = 'main' and name not like 'sqlite_%'"
                                    + " and name not glob '*_words*'",
                            row -> row.getString(1) + row.getInt(2))))
                    .hasSize(23)
                    .allMatch(table -> table.endsWith("1"));
        }
    }

    @Test
    void failedWorkLeavesNothing() {
        try (Database database = open(Access.CREATE)) {
            RuntimeException reason = new IllegalArgumentException("no");

            assertThatThrownBy(() -> database.write(sql -> {
                        insert(sql, "a");
                        throw reason;
                    }))
                    .isSameAs(reason);
            assertThatThrownBy(
                            () -> database.write(sql -> insert(sql, "b") + sql.run("insert into nowhere values (1)")))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("refused the work; nothing was changed");

            assertThat(settings(database)).isZero();
            assertThat(database.<Integer>write(sql -> insert(sql, "c"))).isEqualTo(1);
            assertThat(settings(database)).isEqualTo(1);
        }
    }

    /** SQLite rolls back by itself after some failures; there is nothing left to roll back then. */
    @Test
    void theFirstFailureIsReportedWhenSqliteHasRolledBackAlready() {
        try (Database database = open(Access.CREATE)) {
            RuntimeException reason = new IllegalArgumentException("first");

            assertThatThrownBy(() -> database.write(sql -> {
                        insert(sql, "a");
                        sql.run("rollback");
                        throw reason;
                    }))
                    .isSameAs(reason);
            assertThatThrownBy(() -> database.read(sql -> {
                        sql.run("rollback");
                        throw reason;
                    }))
                    .isSameAs(reason);

            assertThat(settings(database)).isZero();
            assertThat(database.<Integer>write(sql -> insert(sql, "c"))).isEqualTo(1);
        }
    }

    @Test
    void aFullDiskIsSaidAndLeavesNothing() {
        try (Database database = open(Access.CREATE)) {
            database.read(sql -> sql.one("pragma max_page_count = 60", row -> row.getInt(1)));

            assertThatThrownBy(() -> database.write(sql -> {
                        for (int i = 0; i < 1_000; i++) {
                            insert(sql, "x".repeat(4_000) + i);
                        }
                        return sql;
                    }))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("is full; nothing was changed");

            assertThat(settings(database)).isZero();
            assertThat(database.<Integer>write(sql -> insert(sql, "c"))).isEqualTo(1);
            assertThat(new CheckStore(database).findings()).isEmpty();
        }
    }

    @Test
    void readingInsideOtherWorkSeesWhatThatHasLeftSoFar() {
        try (Database database = open(Access.CREATE)) {
            int inside = database.write(sql -> insert(sql, "a") + settings(database));
            int insideRead = database.read(sql -> settings(database));

            assertThat(inside).isEqualTo(2);
            assertThat(insideRead).isEqualTo(1);
            assertThat(settings(database))
                    .as("the outer work was not ended by the inner")
                    .isEqualTo(1);
        }
    }

    @Test
    void writingInsideOtherWorkIsRefusedAndTheOuterWorkUndone() {
        try (Database database = open(Access.CREATE)) {
            for (boolean reading : new boolean[] {false, true}) {
                Database.Work<Integer> nested = sql -> {
                    int count = reading ? 0 : insert(sql, "a");
                    return count + database.<Integer>write(within -> insert(within, "b"));
                };
                assertThatIllegalStateException()
                        .isThrownBy(() -> {
                            if (reading) {
                                database.read(nested);
                            } else {
                                database.write(nested);
                            }
                        })
                        .withMessageContaining("inside other work");
            }
            assertThat(settings(database)).isZero();
        }
    }

    @Test
    void readingNeverChangesAnything() {
        try (Database database = open(Access.CREATE)) {
            database.read(sql -> insert(sql, "a"));

            assertThat(settings(database)).isZero();
        }
    }

    @Test
    void aDatabaseThatSomebodyElseWritesIsSaidToBeBusy() {
        try (Database one = open(Access.CREATE);
                Database other = open(Access.WRITE)) {
            one.write(sql -> {
                assertThatThrownBy(() -> other.write(within -> insert(within, "b")))
                        .isInstanceOf(StoreException.class)
                        .hasMessageContaining("canyons.db is being written by another program");
                assertThat(settings(other)).as("readers go on").isZero();
                return insert(sql, "a");
            });

            assertThat(settings(other)).isEqualTo(1);
            assertThat(other.<Integer>write(sql -> insert(sql, "b"))).isEqualTo(1);
        }
    }

    @Test
    void aDatabaseLockedAsAWholeIsSaidToBeBusyWhenItIsOpened() {
        try (Database one = open(Access.CREATE)) {
            one.read(sql -> sql.all("pragma locking_mode = exclusive", row -> row.getString(1)));
            one.write(sql -> insert(sql, "a"));

            for (Access access : Access.values()) {
                assertThatThrownBy(() -> open(access))
                        .isInstanceOf(StoreException.class)
                        .hasMessageContaining("is being written by another program");
            }
        }
    }

    @Test
    void aWriterThatAReaderHoldsUpChangesNothingAndCanTryAgain() {
        try (Database one = open(Access.CREATE);
                Database other = open(Access.WRITE)) {
            other.read(sql -> {
                settings(other);
                assertThatThrownBy(() -> one.write(within -> insert(within, "a")))
                        .isInstanceOf(StoreException.class)
                        .hasMessageContaining("being written by another program");
                return sql;
            });

            assertThat(settings(one)).isZero();
            assertThat(one.<Integer>write(sql -> insert(sql, "a"))).isEqualTo(1);
        }
    }

    @Test
    void settingsAreKept() {
        try (Database database = open(Access.CREATE)) {
            SettingStore settings = new SettingStore(database);
            settings.set("units", "metric");
            settings.set("units", "imperial");
        }
        try (Database database = open(Access.READ)) {
            assertThat(new SettingStore(database).value("units")).contains("imperial");
            assertThat(new SettingStore(database).value("colour")).isEmpty();
        }
    }
}
