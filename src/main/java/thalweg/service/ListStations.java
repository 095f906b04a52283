package thalweg.service;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import thalweg.due.Due;
import thalweg.due.DueRules;
import thalweg.exchange.csv.StationsCsv;
import thalweg.ledger.Uid;
import thalweg.logbook.ListedStation;
import thalweg.logbook.RowOrder;
import thalweg.logbook.StationOrder;
import thalweg.settings.Settings;

/** Lists the stations of all canyons. */
public final class ListStations {

    /** Rows that are read at once where all are wanted. */
    private static final int PIECE = 500;

    private final Session session;

    public ListStations(Session session) {
        this.session = session;
    }

    /**
     * The order of the stations that words find.
     *
     * @param words blank for every station
     */
    public RowOrder keys(String words, StationOrder order) {
        return session.stations().keys(words, order);
    }

    /** The rows of those keys, in their order; one that is gone meanwhile is missing. */
    public Map<Long, ListedStation> rows(RowOrder keys) {
        return session.stations().rows(keys);
    }

    /** The same with how many of their parts are due, by the figures of those settings. */
    public Map<Long, ListedStation> rows(RowOrder keys, Settings settings) {
        return rows(keys, due(keys, settings));
    }

    private Map<Long, ListedStation> rows(RowOrder keys, Map<Uid, List<Due>> due) {
        Map<Long, ListedStation> rows = new LinkedHashMap<>(rows(keys));
        rows.replaceAll(
                (key, row) -> row.withDue(due.getOrDefault(row.uid(), List.of()).size()));
        return rows;
    }

    /** What is due first of each part that is due, by stations that have such parts. */
    private Map<Uid, List<Due>> due(RowOrder keys, Settings settings) {
        DueRules rules = new DueRules(settings, session.today());
        Map<Uid, List<Due>> due = new HashMap<>();
        session.due().each(keys, rules.candidates(0), row -> {
            Due first = rules.of(row.part(), row.state(), row.replacedSince(), row.exposure())
                    .get(0);
            if (first.isDue(session.today())) {
                due.computeIfAbsent(row.station(), station -> new ArrayList<>()).add(first);
            }
        });
        return due;
    }

    /** How many stations there are, whatever is looked for. */
    public int count() {
        return session.stations().count();
    }

    /** Every station that words find, in order, with how many of its parts are due. */
    public List<ListedStation> all(String words, StationOrder order, Settings settings) {
        RowOrder keys = keys(words, order);
        List<ListedStation> all = new ArrayList<>(keys.size());
        for (int from = 0; from < keys.size(); from += PIECE) {
            all.addAll(rows(keys.between(from, from + PIECE), settings).values());
        }
        return all;
    }

    /**
     * Every station that words find, in order, as CSV for a spreadsheet, with what is due of it: how many parts, and what is
     * most urgent.
     *
     * @param out takes piece after piece
     */
    public void csv(String words, StationOrder order, Settings settings, Consumer<String> out) {
        RowOrder keys = keys(words, order);
        out.accept(StationsCsv.head());
        for (int from = 0; from < keys.size(); from += PIECE) {
            RowOrder piece = keys.between(from, from + PIECE);
            Map<Uid, List<Due>> due = due(piece, settings);
            rows(piece, due)
                    .values()
                    .forEach(station -> out.accept(StationsCsv.line(
                            station,
                            due.getOrDefault(station.uid(), List.of()).stream().min(Due.BY_URGENCY))));
        }
    }
}
