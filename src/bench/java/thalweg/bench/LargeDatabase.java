package thalweg.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import thalweg.storage.Access;
import thalweg.storage.Batch;
import thalweg.storage.Database;
import thalweg.storage.LedgerStore;

/**
 * A database with far more in it than any club keeps, the same each time it is made: everything goes through the ledger,
 * and what lists show is derived from it by the code that always does that.
 */
public final class LargeDatabase {

    /** Each transaction waits for the disk; so many canyons are written in one. */
    private static final int AT_ONCE = 200;

    private static final String AT = "2026-11-25T12:00:00Z";

    private LargeDatabase() {}

    /** What the command is told: the file, the canyons, the inspections of each part on average. */
    public static void main(String[] arguments) {
        Path file = Path.of(arguments[0]);
        if (Files.exists(file)) {
            System.err.println("The file " + file + " is there already; name one that is not.");
            System.exit(2);
        }
        long begin = System.nanoTime();
        make(file, Integer.parseInt(arguments[1]), Integer.parseInt(arguments[2]));
        System.err.printf(
                Locale.ROOT, "%s was made in %d s.%n", file, TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - begin));
    }

    /**
     * Makes it.
     *
     * @param file that is not there yet
     * @param canyons how many, 0 or more
     * @param inspections of each part on average, 0 or more
     */
    static void make(Path file, int canyons, int inspections) {
        try (Database database = Database.open(file, Access.CREATE)) {
            LedgerStore ledger = new LedgerStore(database);
            for (int from = 0; from < canyons; from += AT_ONCE) {
                List<ManyThings> some = ManyThings.canyons(from, Math.min(canyons, from + AT_ONCE), inspections);
                ledger.append(new Batch(
                        some.stream().flatMap(one -> one.revisions().stream()).toList(),
                        some.stream().flatMap(one -> one.facts().stream()).toList(),
                        ManyThings.AUTHOR,
                        AT));
                System.err.printf(Locale.ROOT, "%d of %d canyons\r", Math.min(canyons, from + AT_ONCE), canyons);
            }
            ledger.forgetChanges();
        }
    }
}
