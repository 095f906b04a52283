package thalweg.service;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
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
        DueRules rules = new DueRules(settings, session.today());
        Map<Uid, Integer> due = new HashMap<>();
        session.due().each(keys, rules.candidates(0), row -> {
            boolean now = rules.of(row.part(), row.state(), row.replacedSince(), row.exposure())
                    .get(0)
                    .isDue(session.today());
            if (now) {
                due.merge(row.station(), 1, Integer::sum);
            }
        });
        Map<Long, ListedStation> rows = new LinkedHashMap<>(rows(keys));
        rows.replaceAll((key, row) -> row.withDue(due.getOrDefault(row.uid(), 0)));
        return rows;
    }

    /** How many stations there are, whatever is looked for. */
    public int count() {
        return session.stations().count();
    }

    /** Every station that words find, in order. */
    public List<ListedStation> all(String words, StationOrder order) {
        return all(words, order, this::rows);
    }

    /** The same with how many of their parts are due. */
    public List<ListedStation> all(String words, StationOrder order, Settings settings) {
        return all(words, order, keys -> rows(keys, settings));
    }

    private List<ListedStation> all(
            String words, StationOrder order, Function<RowOrder, Map<Long, ListedStation>> rows) {
        RowOrder keys = keys(words, order);
        List<ListedStation> all = new ArrayList<>(keys.size());
        for (int from = 0; from < keys.size(); from += PIECE) {
            all.addAll(rows.apply(keys.between(from, from + PIECE)).values());
        }
        return all;
    }

    /** Stations as CSV for a spreadsheet. */
    public static String csv(List<ListedStation> stations) {
        return StationsCsv.write(stations);
    }
}
