package thalweg.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsReader;
import thalweg.json.Finding;
import thalweg.json.Findings;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.StationRecord;

/** The sample data of the project, read by the program. */
public final class SampleRecords {

    /** Where it is. */
    public static final Path FILE = Path.of("sample-data", "records.json");

    /** The day on which the story ends; nothing in it is later. */
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    /** All of it, in the order of the file. */
    public static final List<Parcel> PARCELS = read(bytes());

    /** The same without what stays with one database. */
    public static final List<CanyonRecord> CANYONS =
            PARCELS.stream().map(Parcel::canyon).toList();

    /** The two that are described under every heading; of the others less is known. */
    public static final List<CanyonRecord> FULLY_KNOWN = CANYONS.subList(0, 2);

    private SampleRecords() {}

    /** The canyons in a file in which every thing states its own id. */
    public static List<Parcel> read(byte[] bytes) {
        Findings findings = new Findings();
        RecordsReader reader = new RecordsReader(SampleRecords::noId, "nobody", "never", TODAY);
        List<Parcel> canyons = reader.read("sample data", bytes, findings);
        assertThat(findings.all()).extracting(Finding::print).isEmpty();
        return canyons;
    }

    private static Uid noId() {
        throw new AssertionError("every thing in the sample data states its own id");
    }

    /** The file as it is. */
    public static byte[] bytes() {
        try {
            return Files.readAllBytes(FILE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every place on every line. */
    public static Stream<LineRecord> places() {
        return CANYONS.stream().flatMap(record -> record.line().stream());
    }

    /** Every station. */
    public static Stream<StationRecord> stations() {
        return CANYONS.stream().flatMap(record -> record.stations().stream());
    }

    /** Every anchor. */
    public static Stream<AnchorRecord> anchors() {
        return stations().flatMap(record -> record.anchors().stream());
    }

    /** Every part. */
    public static Stream<PartRecord> parts() {
        return anchors().flatMap(record -> record.parts().stream());
    }

    /** Every inspection, without who wrote it down. */
    public static Stream<Inspection> inspections() {
        return parts().flatMap(record -> record.inspections().stream()).map(Entry::content);
    }

    /** Every rigging note. */
    public static Stream<Entry<RiggingNote>> notes() {
        return stations().flatMap(record -> record.notes().stream());
    }

    /** Every rig analysis. */
    public static Stream<Entry<RigAnalysis>> analyses() {
        return stations().flatMap(record -> record.analyses().stream());
    }
}
