package thalweg.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyons;
import thalweg.service.DemoDatabase;
import thalweg.service.FindRecord;
import thalweg.service.Folders;
import thalweg.service.ListCanyons;
import thalweg.service.Session;

/** How long the records take, on files in the folder for temporary ones, with their pages warm. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RecordsBench {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    /** A folder of its own. */
    @State(Scope.Thread)
    public static class Empty {

        private Path folder = Path.of("");

        /** Makes the folder. */
        @Setup
        public void make() throws IOException {
            folder = Files.createTempDirectory("thalweg-bench");
        }

        /** Takes it away again with everything in it. */
        @TearDown
        public void clear() throws IOException {
            Folder.delete(folder);
        }
    }

    /** A database in which there is much. */
    @State(Scope.Thread)
    public static class Filled {

        /** Copies of the sample: 480 canyons, more than any one club keeps. */
        private static final int COPIES = 60;

        /** What a person types until the canyon is found, letter by letter. */
        private static final String TYPED = "eclusaune";

        private Path folder = Path.of("");
        private Session session = Session.inMemory(CLOCK, "bench");
        private List<Uid> canyons = List.of();
        private int turn;

        /** Fills it and opens it. */
        @Setup
        public void fill() throws IOException {
            session.close();
            folder = Files.createTempDirectory("thalweg-bench");
            Path file = folder.resolve("records.db");
            ManyCanyons.fill(file, COPIES, CLOCK);
            session = Session.writing(file, CLOCK, "bench");
            canyons = new ListCanyons(session)
                    .found(Finding.ALL).canyons().stream()
                            .map(found -> found.row().uid())
                            .toList();
        }

        /** Takes it away again. */
        @TearDown
        public void clear() throws IOException {
            session.close();
            Folder.delete(folder);
        }

        private Uid next() {
            turn = (turn + 1) % canyons.size();
            return canyons.get(turn);
        }

        private String typed() {
            turn = turn % TYPED.length() + 1;
            return TYPED.substring(0, turn);
        }
    }

    /** One canyon after the other, with its line, stations, anchors, parts and everything that was found on them. */
    @Benchmark
    public CanyonRecord openCanyon(Filled database) {
        return new FindRecord(database.session).byId(database.next()).orElseThrow();
    }

    /** What the list shows after one more letter was typed. */
    @Benchmark
    public FoundCanyons searchAsTyped(Filled database) {
        return new ListCanyons(database.session).found(Finding.of(database.typed()));
    }

    /** The copy of the sample data, made anew in a file: read, checked, written, indexed. */
    @Benchmark
    public void importSample(Empty empty) {
        DemoDatabase.prepare(Folders.of(Map.of("HOME", empty.folder.toString())), CLOCK, "bench", true);
    }
}
