package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thalweg.fault.StoreException;

@Timeout(60)
final class PatienceTest {

    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("records.db");
    }

    /** Holds the database until it is let go. */
    private CompletableFuture<Integer> holding(Database database, CountDownLatch held, CountDownLatch letGo) {
        return CompletableFuture.supplyAsync(() -> database.write(sql -> {
            sql.run("update canyon set name = name");
            held.countDown();
            try {
                letGo.await(30, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return 0;
        }));
    }

    @Test
    void workWaitsForAnotherProgramSaysSoOnceAndIsDoneThen() throws Exception {
        AtomicInteger told = new AtomicInteger();
        CountDownLatch held = new CountDownLatch(1);
        CountDownLatch letGo = new CountDownLatch(1);
        try (Database one = Database.open(file(), Access.CREATE);
                Database other = Database.open(file(), Access.WRITE)) {
            CompletableFuture<Integer> holds = holding(one, held, letGo);
            held.await(30, TimeUnit.SECONDS);
            other.onWaiting(() -> {
                told.incrementAndGet();
                letGo.countDown();
            });

            int rows = other.write(sql -> sql.run("update canyon set name = name"));

            assertThat(rows).isZero();
            assertThat(told).hasValue(1);
            holds.get(30, TimeUnit.SECONDS);
        }
    }

    @Test
    void afterItsTimeItSaysWhyNothingWasWritten() throws Exception {
        CountDownLatch held = new CountDownLatch(1);
        CountDownLatch letGo = new CountDownLatch(1);
        Database.Setup hasty = new Database.Setup(Migrations.OURS, 100);
        try (Database one = Database.open(file(), Access.CREATE);
                Database other = Database.open(file(), Access.WRITE, hasty)) {
            CompletableFuture<Integer> holds = holding(one, held, letGo);
            held.await(30, TimeUnit.SECONDS);

            assertThatThrownBy(() -> other.write(sql -> sql.run("update canyon set name = name")))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("is being written by another program");
            letGo.countDown();
            holds.get(30, TimeUnit.SECONDS);
        }
    }

    @Test
    void aChangeFromElsewhereIsNoticedAndAnOwnOneIsNot() {
        try (Database one = Database.open(file(), Access.CREATE);
                Database other = Database.open(file(), Access.WRITE)) {
            long before = one.changedElsewhere();
            one.write(sql -> sql.run("insert into setting (name, value) values ('a', 'b')"));
            assertThat(one.changedElsewhere()).isEqualTo(before);

            other.write(sql -> sql.run("insert into setting (name, value) values ('c', 'd')"));
            assertThat(one.changedElsewhere()).isNotEqualTo(before);
        }
    }
}
