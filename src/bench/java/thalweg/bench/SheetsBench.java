package thalweg.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.service.DemoDatabase;
import thalweg.service.FindRecord;
import thalweg.service.Folders;
import thalweg.service.LoadPhrases;
import thalweg.service.MakeSheet;
import thalweg.service.Session;
import thalweg.service.SheetOrder;
import thalweg.sheet.Paper;
import thalweg.units.UnitSystem;

/** How long a sheet takes in a program that runs, from the record to the bytes of the file. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SheetsBench {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    /** How many stations the canyon has: 9 are those of the sample, more are the same ones again. */
    @Param({"9", "30"})
    public int stations;

    private Path folder = Path.of("");
    private Session session = Session.inMemory(CLOCK, "bench");
    private List<CanyonRecord> canyons = List.of();

    /** Opens the sample and lays the line of its wet canyon as often as it takes. */
    @Setup
    public void open() throws IOException {
        session.close();
        folder = Files.createTempDirectory("thalweg-bench");
        Folders folders = Folders.of(Map.of("HOME", folder.toString()));
        DemoDatabase.prepare(folders, CLOCK, "bench", true);
        session = Session.writing(folders.demo(), CLOCK, "bench");
        CanyonRecord sample = new FindRecord(session).canyon("éclusaune");
        canyons = List.of(longer(sample, stations));
    }

    private static CanyonRecord longer(CanyonRecord sample, int stations) {
        List<LineRecord> line = new ArrayList<>();
        int left = stations;
        while (left > 0) {
            for (LineRecord place : sample.line()) {
                int here = Math.min(left, place.stations().size());
                line.add(new LineRecord(
                        line.size() + 1, place.obstacle(), place.stations().subList(0, here)));
                left -= here;
            }
        }
        return new CanyonRecord(sample.canyon(), line, sample.rounds());
    }

    /** Takes it away again. */
    @TearDown
    public void clear() throws IOException {
        session.close();
        Folder.delete(folder);
    }

    private byte[] made(MakeSheet.Format format, Paper paper) {
        return new MakeSheet(session, LoadPhrases.english(), "bench")
                .of(
                        canyons.get(0),
                        new SheetOrder(format, paper, UnitSystem.METRIC, Optional.empty(), folder.resolve("fonts")));
    }

    /** As one page for browsers. */
    @Benchmark
    public byte[] html() {
        return made(MakeSheet.Format.HTML, Paper.A4);
    }

    /** As pages of A4. */
    @Benchmark
    public byte[] pdf() {
        return made(MakeSheet.Format.PDF, Paper.A4);
    }

    /** As a booklet. */
    @Benchmark
    public byte[] pocket() {
        return made(MakeSheet.Format.PDF, Paper.POCKET);
    }
}
