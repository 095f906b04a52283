package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.fault.Sentence;
import thalweg.progress.StoppedException;

final class BackUpProgressTest {

    @TempDir
    private Path folder;

    private Database large() {
        Database database = Database.open(folder.resolve("large.db"), Access.CREATE);
        database.write(sql -> {
            sql.run("create table ballast (number integer primary key, text text)");
            return sql.run("""
                    insert into ballast (text)
                    with recursive counted (number) as (
                      select 1 union all select number + 1 from counted where number < 60000
                    )
                    select hex(randomblob(100)) from counted
                    """);
        });
        return database;
    }

    @Test
    void aCopyTellsHowFarItIsAndNeverGoesBack() {
        List<Long> done = new ArrayList<>();
        try (Database database = large()) {
            database.backUp(folder.resolve("copy.db"), (so, all) -> {
                assertThat(so).isBetween(0L, all);
                done.add(so);
            });
        }

        assertThat(done).isSorted().hasSizeGreaterThan(5);
        assertThat(done.get(done.size() - 1)).isPositive();
    }

    @Test
    void aCopyThatIsStoppedHalfwayLeavesNoFileAndTheDatabaseAsItWas() {
        Path copy = folder.resolve("copy.db");
        try (Database database = large()) {
            assertThatThrownBy(() -> database.backUp(copy, (so, all) -> {
                        if (so > all / 3) {
                            throw new StoppedException(Sentence.of("Stopped."));
                        }
                    }))
                    .isInstanceOf(StoppedException.class);
            assertThat(copy).doesNotExist();
            assertThat(folder).isDirectoryNotContaining("glob:**-journal");

            database.backUp(copy);
            assertThat(copy).exists();
        }
    }
}
