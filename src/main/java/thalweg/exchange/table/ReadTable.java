package thalweg.exchange.table;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.body.FactBody;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.exchange.PlanBuilder;
import thalweg.exchange.PlanBuilder.Outcome;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;

/** Makes of the rows of a table what an import would change, row by row; what cannot be understood is refused by its line. */
public final class ReadTable {

    private final Here here;
    private final Supplier<Uid> mint;
    private final String author;
    private final String at;
    private final LocalDate today;
    private final TableWords words;

    /**
     * @param mint gives a new id to a thing that has none
     * @param author signs changes, and entries that do not say who wrote them down
     * @param at stands on them, RFC 3339 in UTC
     * @param today nothing that was seen or placed can be later
     * @param words in which values may be written
     */
    public ReadTable(Here here, Supplier<Uid> mint, String author, String at, LocalDate today, TableWords words) {
        this.here = here;
        this.mint = mint;
        this.author = author;
        this.at = at;
        this.today = today;
        this.words = words;
    }

    /** A row while it is read. */
    private record Draft(RowCells cells, Optional<Node> node, Optional<Entry<Inspection>> entry) {}

    /** What taking in that table would change. */
    public TablePlan plan(Table table, Columns columns) {
        Forest forest = new Forest(here, mint);
        RowThings things = new RowThings(columns.kind(), forest, today);
        RowEntry entries = new RowEntry(author, at, today);
        Cells cells = new Cells(words);
        List<Draft> drafts = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            drafts.add(draft(new RowCells(row, table.headings(), columns, cells), things, entries, columns.kind()));
        }
        if (columns.kind() == TableKind.INSPECTIONS) {
            refuseLoose(drafts, forest);
        }
        placeInLine(forest, drafts);
        PlanBuilder plan = new PlanBuilder(new KnownLooks(here, forest), author, at);
        boolean refused =
                drafts.stream().anyMatch(draft -> !draft.cells().wrong().isEmpty());
        List<RowReport> reports = report(drafts, forest, plan);
        int canyons = (int) forest.canyons().stream().filter(Node::isUsed).count();
        return new TablePlan(
                refused ? new PlanBuilder(here, author, at).done(canyons) : plan.done(canyons),
                reports,
                columns.leftOut(table.headings()));
    }

    /** The first rows of a table, as they are understood; a cell that cannot be read is left out. */
    public List<Understood> first(Table table, Columns columns, int most) {
        Cells cells = new Cells(words);
        List<Understood> first = new ArrayList<>();
        for (Table.Row row : table.rows().subList(0, Math.min(most, table.rows().size()))) {
            RowCells read = new RowCells(row, table.headings(), columns, cells);
            List<Understood.Value> values = new ArrayList<>();
            for (Field field : columns.kind().fields()) {
                read.values(EnumSet.of(field))
                        .values()
                        .forEach(value -> values.add(new Understood.Value(field, value)));
            }
            first.add(new Understood(row.line(), values));
        }
        return first;
    }

    private static Draft draft(RowCells row, RowThings things, RowEntry entries, TableKind kind) {
        try {
            Optional<Node> node = things.of(row);
            node.ifPresent(Node::use);
            Optional<Entry<Inspection>> entry =
                    kind == TableKind.INSPECTIONS ? node.flatMap(part -> entries.of(part, row)) : Optional.empty();
            return new Draft(row, node, entry);
        } catch (InputException e) {
            row.refuse(e.saying());
            return new Draft(row, Optional.empty(), Optional.empty());
        }
    }

    /** Corrections of what nobody knows, and entries that no longer count without a reason: such rows say too little. */
    private static void refuseLoose(List<Draft> drafts, Forest forest) {
        Set<Uid> written = new HashSet<>();
        Set<Uid> corrected = new HashSet<>();
        drafts.stream().flatMap(draft -> draft.entry().stream()).forEach(entry -> {
            written.add(entry.uid());
            entry.correction().ifPresent(correction -> corrected.add(correction.of()));
        });
        for (Draft draft : drafts) {
            boolean counts = draft.cells()
                    .text(Field.COUNTS)
                    .flatMap(text -> draft.cells()
                            .reading(Field.COUNTS, () -> draft.cells().cells().flag(text)))
                    .orElse(true);
            if (draft.entry().isEmpty()
                    || (counts && draft.entry().get().correction().isEmpty())) {
                continue;
            }
            Entry<Inspection> entry = draft.entry().get();
            List<Entry<Inspection>> known = draft.node().flatMap(part -> forest.part(part.uid())).stream()
                    .flatMap(part -> part.inspections().stream())
                    .toList();
            if (entry.correction()
                    .filter(one -> !written.contains(one.of())
                            && known.stream().noneMatch(other -> other.uid().equals(one.of())))
                    .isPresent()) {
                draft.cells()
                        .refuse(
                                Field.CORRECTS_UID,
                                Sentence.of("names an entry that is neither here nor in the file."));
            }
            boolean out = corrected.contains(entry.uid())
                    || !entry.counts()
                    || known.stream().anyMatch(one -> one.uid().equals(entry.uid()) && !one.counts());
            if (!counts && !out) {
                draft.cells()
                        .refuse(
                                Field.COUNTS,
                                Sentence.of("says that the entry no longer counts, and nothing says why; give"
                                        + " withdrawn_because, or leave the row out."));
            }
        }
    }

    /** Gives new things their places in line; a number that the line has no place for is refused. */
    private static void placeInLine(Forest forest, List<Draft> drafts) {
        forest.canyons().forEach(Node::sortNewPlaces);
        for (Draft draft : drafts) {
            Optional<Node> place = draft.node().flatMap(ReadTable::placeOf).filter(Node::isFresh);
            place.ifPresent(node -> {
                int stands = node.parent()
                        .map(canyon -> canyon.children().indexOf(node) + 1)
                        .orElse(0);
                if (node.number() > stands) {
                    draft.cells()
                            .refuse(
                                    Field.PLACE,
                                    Sentence.of(
                                            "is {0}, and it would be number {1} on the line: places before it are missing in"
                                                    + " the file and here.",
                                            node.number(), stands));
                }
            });
        }
        forest.canyons().stream().filter(Node::isUsed).forEach(ReadTable::order);
    }

    private static void order(Node node) {
        node.orderChildren();
        node.children().forEach(ReadTable::order);
    }

    private static Optional<Node> placeOf(Node node) {
        return node.type() == ThingType.OBSTACLE
                ? Optional.of(node)
                : node.parent().flatMap(ReadTable::placeOf);
    }

    private List<RowReport> report(List<Draft> drafts, Forest forest, PlanBuilder plan) {
        Set<Node> mains = drafts.stream()
                .filter(draft -> draft.entry().isEmpty())
                .flatMap(draft -> draft.node().stream())
                .collect(Collectors.toSet());
        Map<Node, Outcome> outcomes = new HashMap<>();
        forest.canyons().forEach(canyon -> add(canyon, mains, plan, outcomes));
        List<RowReport> reports = new ArrayList<>();
        for (Draft draft : drafts) {
            reports.add(new RowReport(
                    draft.cells().line(),
                    state(draft, plan, outcomes),
                    what(draft),
                    draft.cells().wrong()));
        }
        return reports;
    }

    private void add(Node node, Set<Node> mains, PlanBuilder plan, Map<Node, Outcome> outcomes) {
        if (!node.isUsed()) {
            return;
        }
        if (node.isFresh() || node.differs() || mains.contains(node)) {
            outcomes.put(node, plan.thing(thing(node)));
            if (node.isFresh() && node.type() == ThingType.CANYON) {
                plan.remark(
                        here.hasOtherCanyonNamed(node.name(), node.uid())
                                ? Sentence.of(
                                        "There is another canyon named \"{0}\" here already; both would stand side by side.",
                                        node.name())
                                : Sentence.of("The canyon \"{0}\" is not here yet and would be new.", node.name()));
            }
        }
        node.children().forEach(child -> add(child, mains, plan, outcomes));
    }

    private ThingBody thing(Node node) {
        ThingBody thing = node.thing();
        Optional<Revision> head = node.isFresh() ? Optional.empty() : here.head(node.uid());
        return head.map(stored -> new ThingBody(
                        thing.type(),
                        thing.uid(),
                        thing.label(),
                        thing.keepingUnknown(stored.body(), node.before().orElseThrow())))
                .orElse(thing);
    }

    private static RowReport.State state(Draft draft, PlanBuilder plan, Map<Node, Outcome> outcomes) {
        if (!draft.cells().wrong().isEmpty()) {
            return RowReport.State.REFUSED;
        }
        if (draft.entry().isPresent()) {
            Entry<Inspection> entry = draft.entry().get();
            return plan.facts(FactBody.of(entry.content()), entry) == Outcome.NEW
                    ? RowReport.State.NEW
                    : RowReport.State.SAME;
        }
        Optional<Node> node = draft.node();
        if (node.map(outcomes::get).filter(Outcome.NEW::equals).isPresent()) {
            return RowReport.State.NEW;
        }
        return Stream.iterate(node, Optional::isPresent, at -> at.flatMap(Node::parent))
                        .flatMap(Optional::stream)
                        .anyMatch(at -> outcomes.getOrDefault(at, Outcome.SAME) != Outcome.SAME
                                && at.isSetOn(draft.cells().line()))
                ? RowReport.State.CHANGED
                : RowReport.State.SAME;
    }

    private static String what(Draft draft) {
        return draft.node()
                .map(Forest::where)
                .orElseGet(() -> Stream.of(Field.CANYON, Field.PLACE, Field.STATION, Field.PART)
                        .flatMap(field -> draft.cells().text(field).stream())
                        .collect(Collectors.joining("/")));
    }
}
