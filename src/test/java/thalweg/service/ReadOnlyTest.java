package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.amend.Located;
import thalweg.body.ThingBody;
import thalweg.fault.StoreException;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Round;
import thalweg.route.PartialDate;

/** A database that is open for reading only says so, whatever is to be put right in it, and stays as it is. */
final class ReadOnlyTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void everythingThatWouldChangeItIsRefusedWithASentence() {
        Path file = folder.resolve("records.db");
        try (Desk desk = new Desk(new TickingClock());
                Session session = Session.creating(file, new TickingClock(), "ada")) {
            byte[] records =
                    new ExportRecords(desk.session()).json(List.of(), false).getBytes(StandardCharsets.UTF_8);
            ImportRecords imports = new ImportRecords(session);
            imports.accept(imports.preview("probe", records).plan());
            new SaveThing(session)
                    .removed(ThingBody.of(part(session, 1).part()), "a change to take back and to bring again");
        }
        try (Session session = Session.reading(file, new TickingClock(), "ada")) {
            CanyonRecord canyon = new FindRecord(session).canyon("Probe");
            PartRecord part = part(session, 0);
            Inspection inspection = part.inspections().get(0).content();
            Uid entry = part.inspections().get(0).uid();
            Located located = Located.in(canyon, part.part().uid()).orElseThrow();
            AddEntries add = new AddEntries(session);
            Inspection other = new Inspection(
                    inspection.part(),
                    inspection.on(),
                    "Bo",
                    inspection.found(),
                    inspection.left(),
                    inspection.water(),
                    inspection.work(),
                    inspection.note());
            List<ThrowingCallable> changes = List.of(
                    () -> add.inspections(List.of(inspection)),
                    () -> add.correct(entry, other, "why"),
                    () -> add.withdraw(entry, "why"),
                    () -> add.round(
                            new Round(canyon.canyon().uid(), PartialDate.parse("2026"), "", Optional.empty(), "")),
                    () -> new SaveThing(session).removed(located.thing(), "why"),
                    () -> new SaveThing(session)
                            .changed(
                                    located.thing(),
                                    located.thing()
                                            .placed(located.thing().parent().orElseThrow(), "zz")),
                    () -> new TakeBack(session).undo());

            String before = new ExportRecords(session).json(List.of(), false);
            for (ThrowingCallable change : changes) {
                assertThatThrownBy(change)
                        .isInstanceOf(StoreException.class)
                        .hasMessageContaining("is open for reading only; nothing was changed");
            }
            assertThat(new ExportRecords(session).json(List.of(), false)).isEqualTo(before);
            assertThat(new ListChanges(session).latest(9)).hasSize(2);
        }
    }

    private static PartRecord part(Session session, int at) {
        return new FindRecord(session).canyon("Probe").stations().get(0).parts().get(at);
    }
}
