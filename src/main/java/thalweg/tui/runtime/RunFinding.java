package thalweg.tui.runtime;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import thalweg.draft.DraftKey;
import thalweg.due.DueCount;
import thalweg.due.FoundDue;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonList;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.PartFinding;
import thalweg.logbook.RowOrder;
import thalweg.progress.Progress;
import thalweg.service.AnalyzeRig;
import thalweg.service.ExportRecords;
import thalweg.service.FindParts;
import thalweg.service.FindRecord;
import thalweg.service.FindThing;
import thalweg.service.ListCanyons;
import thalweg.service.ListDue;
import thalweg.service.ListStations;
import thalweg.service.PlanTrip;
import thalweg.service.Session;
import thalweg.service.WriteFile;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Message;
import thalweg.tui.screen.Ask;
import thalweg.tui.screen.Told;

/** Does what screens ask of the search, and writes what was found to files. */
final class RunFinding {

    /** More parts than anybody scrolls through; the file and the command have them all. */
    private static final int MOST_PARTS = 500;

    /** Rows that are read above and below those that may be in view. */
    private static final int NEAR = 40;

    private final Session session;
    private final Progress progress;

    RunFinding(Session session) {
        this(session, Progress.UNWATCHED);
    }

    /**
     * @param progress of what is written to a file
     */
    RunFinding(Session session, Progress progress) {
        this.session = session;
        this.progress = progress;
    }

    /** The answer, if this is such work. */
    Optional<Message> answer(Effect effect) {
        if (effect instanceof Ask.FindCanyons find) {
            ListCanyons list = new ListCanyons(session);
            CanyonList found = list.list(find.finding(), find.view());
            return Optional.of(new Told.CanyonsFound(find, found, list.count(), session.mint()));
        }
        if (effect instanceof Ask.ReadCanyons read) {
            return Optional.of(new Told.CanyonsRead(read, new ListCanyons(session).rows(read.rows(), read.filter())));
        }
        if (effect instanceof Ask.FindParts find) {
            PartFinding finding = PartFinding.of(find.words());
            return Optional.of(new Told.PartsFound(find.words(), new FindParts(session).some(finding, MOST_PARTS)));
        }
        if (effect instanceof Ask.FindStations find) {
            return Optional.of(stations(find));
        }
        if (effect instanceof Ask.ReadStations read) {
            return Optional.of(new Told.StationsRead(new ListStations(session).rows(read.rows(), read.settings())));
        }
        if (effect instanceof Ask.WriteStations write) {
            ListStations list = new ListStations(session);
            Path target = RunAsk.target(write.target());
            WriteFile.whole(
                    target, out -> list.csv(write.words(), write.order(), write.settings(), out), write.overwrite());
            return Optional.of(new Told.SheetWritten(target.toString(), Optional.empty()));
        }
        if (effect instanceof Ask.FindDue find) {
            return Optional.of(new Told.DueFound(find, due(find, find.most())));
        }
        if (effect instanceof Ask.CountDue count) {
            DueCount counted = new ListDue(session, count.find().settings())
                    .count(count.find().days());
            return Optional.of(new Told.DueCounted(count.find(), counted));
        }
        if (effect instanceof Ask.PlanTrip plan) {
            return Optional.of(new Told.Planned(new PlanTrip(session, plan.settings()).of(plan.trip())));
        }
        if (effect instanceof Ask.WriteDue write) {
            Path target = RunAsk.target(write.target());
            WriteFile.whole(target, out -> due(write.due(), out), write.overwrite());
            return Optional.of(new Told.SheetWritten(target.toString(), Optional.empty()));
        }
        if (effect instanceof Ask.FindSurrounding find) {
            return Optional.of(surrounded(find.key()));
        }
        if (effect instanceof Ask.WriteCanyons write) {
            return Optional.of(written(write.target(), records(write), write.overwrite()));
        }
        if (effect instanceof Ask.WriteParts write) {
            String csv = FindParts.csv(new FindParts(session).all(PartFinding.of(write.words())));
            return Optional.of(written(write.target(), csv, write.overwrite()));
        }
        return Optional.empty();
    }

    private Told stations(Ask.FindStations find) {
        ListStations list = new ListStations(session);
        RowOrder order = list.keys(find.words(), find.order());
        int chosen = find.kept().stream()
                .flatMap(key -> order.rowOf(key).stream().asLongStream())
                .mapToInt(row -> (int) row)
                .findFirst()
                .orElse(0);
        RowOrder near = order.between(chosen - find.height() - NEAR, chosen + find.height() + NEAR);
        return new Told.StationsFound(find, order, chosen, list.rows(near, find.settings()), list.count());
    }

    private void due(Ask.FindDue find, Consumer<String> out) {
        LocalDate today = session.today();
        out.accept(ListDue.csvHead());
        if (find.canyon().isPresent()) {
            due(find, Integer.MAX_VALUE).parts().forEach(part -> out.accept(ListDue.csv(part, today)));
            return;
        }
        PartFinding finding = PartFinding.of(find.words());
        new ListDue(session, find.settings())
                .each(
                        finding,
                        CanyonFilter.NONE,
                        find.days(),
                        part -> out.accept(ListDue.csv(part, today)),
                        unknown -> {});
    }

    private FoundDue due(Ask.FindDue find, int most) {
        ListDue list = new ListDue(session, find.settings());
        PartFinding finding = PartFinding.of(find.words());
        return find.canyon()
                .map(canyon -> list.within(finding, canyon, find.days(), most))
                .orElseGet(() -> list.within(finding, CanyonFilter.NONE, find.days(), most));
    }

    private Told surrounded(DraftKey key) {
        Optional<Told.CanyonLoaded> canyon =
                key.about().flatMap(new FindThing(session)::canyonAround).flatMap(this::loaded);
        return new Told.Surrounded(key, canyon, session.mint());
    }

    /** The canyon of that id, if it is in use, with what goes with it. */
    Optional<Told.CanyonLoaded> loaded(Uid canyon) {
        FindRecord find = new FindRecord(session);
        return find.byId(canyon)
                .map(record ->
                        new Told.CanyonLoaded(record, find.local(canyon), AnalyzeRig.kept(record), session.mint()));
    }

    private String records(Ask.WriteCanyons write) {
        FindRecord find = new FindRecord(session);
        List<CanyonRow> rows = new ListCanyons(session).found(write.finding()).rows();
        List<CanyonRecord> canyons = new ArrayList<>();
        for (CanyonRow row : rows) {
            progress.at(canyons.size(), rows.size());
            find.byId(row.uid()).ifPresent(canyons::add);
        }
        if (canyons.isEmpty()) {
            throw new InputException(Sentence.of("No canyon is found any more; nothing was written."));
        }
        return new ExportRecords(session).json(canyons, false);
    }

    private static Told written(String typed, String text, boolean overwrite) {
        Path target = RunAsk.target(typed);
        WriteFile.whole(target, text, overwrite);
        return new Told.SheetWritten(target.toString(), Optional.empty());
    }
}
