package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is asked with each change must not take longer the more there is in the database: no table of records is read from one
 * end to the other.
 */
class ChangePlansTest {

    private static final List<String> TABLES = List.of(
            "r", "q", "p", "c", "o", "s", "a", "i", "t", "revision", "revision_parent", "station_state", "part_state");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                LedgerStore.HEADS,
                Summaries.INSPECTIONS,
                Summaries.KEEP_CANYON,
                Summaries.KEEP_DROP,
                StationSummaries.FORGET,
                StationSummaries.KEEP
            })
    void noTableIsReadFromEndToEnd(String statement) {
        try (Database database = Database.open(folder.resolve("a.db"), Access.CREATE)) {
            List<String> plan =
                    database.read(sql -> sql.all("explain query plan " + statement, row -> row.getString("detail")));

            assertThat(plan)
                    .isNotEmpty()
                    .noneMatch(
                            step -> TABLES.stream().anyMatch(table -> (step + " ").startsWith("SCAN " + table + " ")));
        }
    }
}
