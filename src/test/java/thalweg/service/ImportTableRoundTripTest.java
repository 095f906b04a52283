package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsWriter;
import thalweg.exchange.table.Columns;
import thalweg.exchange.table.RowReport;
import thalweg.exchange.table.Table;
import thalweg.exchange.table.TableKind;
import thalweg.exchange.table.TablePlan;
import thalweg.logbook.CanyonRecord;
import thalweg.progress.Progress;
import thalweg.testing.RandomRecords;
import thalweg.testing.SampleRecords;

/** Tables that were exported come back: into an empty database as they were, into the same one without a change. */
final class ImportTableRoundTripTest {

    private static Session session() {
        return Session.inMemory(Desk.CLOCK, "ada");
    }

    private static Session with(List<CanyonRecord> canyons) {
        Session session = session();
        ImportRecords records = new ImportRecords(session);
        String json = RecordsWriter.write(canyons.stream().map(Parcel::of).toList());
        ImportRecords.Preview preview = records.preview("records", json.getBytes(StandardCharsets.UTF_8));
        assertThat(preview.findings()).isEmpty();
        records.accept(preview.plan());
        return session;
    }

    private static String export(Session session, TableKind kind) {
        List<CanyonRecord> canyons = new ExportRecords(session).orAll(List.of());
        return switch (kind) {
            case CANYONS -> ExportRecords.canyonsCsv(canyons);
            case STATIONS -> ExportRecords.stationsCsv(canyons);
            case PARTS -> ExportRecords.partsCsv(canyons);
            case INSPECTIONS -> ExportRecords.inspectionsCsv(canyons);
        };
    }

    private static TablePlan plan(Session session, TableKind kind, String csv) {
        ImportTable.Read read = ImportTable.read(csv.getBytes(StandardCharsets.UTF_8), Optional.empty());
        assertThat(read.findings()).isEmpty();
        Table table = read.table();
        Columns columns = ImportTable.guess(table, kind);
        return new ImportTable(session)
                .preview(table, columns, Progress.UNWATCHED)
                .plan();
    }

    private static List<String> refusals(TablePlan plan) {
        return plan.rows().stream()
                .flatMap(row -> row.said().stream().map(why -> row.line() + ": " + why))
                .toList();
    }

    private static void comesBack(List<CanyonRecord> canyons) {
        try (Session from = with(canyons);
                Session into = session()) {
            Map<TableKind, String> exported = new EnumMap<>(TableKind.class);
            for (TableKind kind : TableKind.values()) {
                String csv = export(from, kind);
                exported.put(kind, csv);
                TablePlan plan = plan(into, kind, csv);
                assertThat(refusals(plan)).as("%s", kind).isEmpty();
                new ImportRecords(into).accept(plan.plan());
            }
            for (TableKind kind : TableKind.values()) {
                assertThat(export(into, kind)).as("%s", kind).isEqualTo(exported.getOrDefault(kind, ""));

                TablePlan again = plan(from, kind, exported.getOrDefault(kind, ""));
                assertThat(refusals(again)).isEmpty();
                assertThat(again.plan().isEmpty()).as("%s", kind).isTrue();
                assertThat(again.rows()).allMatch(row -> row.state() == RowReport.State.SAME);
            }
        }
    }

    @Test
    void theSampleRecordsComeBack() {
        comesBack(SampleRecords.CANYONS);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void whateverWasEnteredComesBack(long seed) {
        for (RandomRecords.Fill fill : RandomRecords.Fill.values()) {
            RandomRecords random = new RandomRecords(seed, fill);
            comesBack(List.of(random.canyon(), random.canyon(), random.canyon()));
        }
    }

    @Test
    void everyColumnThatIsExportedIsKnown() {
        try (Session from = with(SampleRecords.CANYONS)) {
            for (TableKind kind : TableKind.values()) {
                Table table = ImportTable.read(export(from, kind).getBytes(StandardCharsets.UTF_8), Optional.empty())
                        .table();
                Columns columns = ImportTable.guess(table, kind);

                assertThat(ImportTable.kind(table)).contains(kind);
                assertThat(columns.leftOut(table.headings()).stream()
                                .filter(heading -> !kind.worksOut(heading))
                                .collect(Collectors.toList()))
                        .isEmpty();
            }
        }
    }
}
