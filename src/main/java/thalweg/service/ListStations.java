package thalweg.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import thalweg.exchange.csv.StationsCsv;
import thalweg.logbook.ListedStation;
import thalweg.logbook.RowOrder;
import thalweg.logbook.StationOrder;

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

    /** How many stations there are, whatever is looked for. */
    public int count() {
        return session.stations().count();
    }

    /** Every station that words find, in order. */
    public List<ListedStation> all(String words, StationOrder order) {
        RowOrder keys = keys(words, order);
        List<ListedStation> all = new ArrayList<>(keys.size());
        for (int from = 0; from < keys.size(); from += PIECE) {
            all.addAll(rows(keys.between(from, from + PIECE)).values());
        }
        return all;
    }

    /** Stations as CSV for a spreadsheet. */
    public static String csv(List<ListedStation> stations) {
        return StationsCsv.write(stations);
    }
}
