package thalweg.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import thalweg.exchange.table.Table;
import thalweg.exchange.table.TableKind;
import thalweg.exchange.table.TablePlan;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.progress.Progress;
import thalweg.service.ExportRecords;
import thalweg.service.ImportRecords;
import thalweg.service.ImportTable;
import thalweg.service.Session;

/** How long a table of 10,000 inspections takes, from its bytes to the file of the database. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class TableBench {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    private static final int ROWS = 10_000;

    /** A database with the sample four times, made anew before each time, because looks stay. */
    @State(Scope.Thread)
    public static class Filled {

        private Path folder = Path.of("");
        private Path kept = Path.of("");
        private byte[] csv = {};
        private Session session = Session.inMemory(CLOCK, "bench");

        /** Fills a file to copy from, and writes the table. */
        @Setup
        public void fill() throws IOException {
            folder = Files.createTempDirectory("thalweg-bench");
            kept = folder.resolve("kept.db");
            ManyCanyons.fill(kept, 4, CLOCK);
            try (Session filled = Session.reading(kept, CLOCK, "bench")) {
                csv = rows(new ExportRecords(filled).orAll(List.of()));
            }
        }

        private static byte[] rows(List<CanyonRecord> canyons) {
            List<Uid> parts = canyons.stream()
                    .flatMap(canyon -> canyon.stations().stream())
                    .flatMap(station -> station.parts().stream())
                    .map(part -> part.part().uid())
                    .toList();
            StringBuilder csv = new StringBuilder("part_uid,on,by,found,note\r\n");
            for (int i = 0; i < ROWS; i++) {
                LocalDate day = LocalDate.of(2000, 1, 1).plusDays(13L * (i / parts.size()));
                csv.append(parts.get(i % parts.size()).text())
                        .append(',')
                        .append(day)
                        .append(",Ada,worn,\"what was seen, ")
                        .append(i)
                        .append("\"\r\n");
            }
            return csv.toString().getBytes(StandardCharsets.UTF_8);
        }

        /** A copy on which nothing was taken in yet. */
        @Setup(Level.Invocation)
        public void open() throws IOException {
            session.close();
            Path file = folder.resolve("records.db");
            Files.deleteIfExists(file);
            Files.copy(kept, file);
            session = Session.writing(file, CLOCK, "bench");
        }

        /** Takes it away again. */
        @TearDown
        public void clear() throws IOException {
            session.close();
            Folder.delete(folder);
        }

        private TablePlan plan() {
            Table table = ImportTable.read(csv, Optional.empty()).table();
            TablePlan plan = new ImportTable(session)
                    .preview(table, ImportTable.guess(table, TableKind.INSPECTIONS), Progress.UNWATCHED)
                    .plan();
            if (plan.plan().facts().size() != ROWS) {
                throw new IllegalStateException("rows were refused");
            }
            return plan;
        }
    }

    /** What would become of each row: read, matched, compared with what is there. */
    @Benchmark
    public TablePlan previewInspections(Filled database) {
        return database.plan();
    }

    /** The same, and all of it taken in. */
    @Benchmark
    public TablePlan importInspections(Filled database) {
        TablePlan plan = database.plan();
        new ImportRecords(database.session).accept(plan.plan());
        return plan;
    }
}
