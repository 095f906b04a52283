package thalweg.service;

import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonKeys;
import thalweg.logbook.CanyonList;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyon;
import thalweg.logbook.FoundCanyons;
import thalweg.logbook.InView;
import thalweg.logbook.RowOrder;
import thalweg.logbook.StationRow;
import thalweg.storage.CanyonStore;

/** Lists canyons, all or those that are looked for. */
public final class ListCanyons {

    private final Session session;

    public ListCanyons(Session session) {
        this.session = session;
    }

    /** Canyons that are looked for, and stations that the words find. */
    public FoundCanyons found(Finding finding) {
        CanyonFilter filter = finding.filter();
        List<FoundCanyon> canyons = session.canyons().canyons(finding);
        List<StationRow> stations = session.canyons().stations(finding, CanyonStore.MOST_STATIONS + 1);
        return new FoundCanyons(
                canyons.stream()
                        .filter(canyon -> filter.unknownToo() || canyon.fits())
                        .toList(),
                (int) canyons.stream().filter(canyon -> !canyon.fits()).count(),
                stations.stream().limit(CanyonStore.MOST_STATIONS).toList(),
                stations.size() > CanyonStore.MOST_STATIONS);
    }

    /** The same, but of the canyons no more rows than can be in view soon. */
    public CanyonList list(Finding finding, InView view) {
        CanyonStore store = session.canyons();
        CanyonKeys keys = store.keys(finding);
        OptionalLong awaited = view.awaited().map(store::key).orElseGet(OptionalLong::empty);
        List<StationRow> stations = store.stations(finding, CanyonStore.MOST_STATIONS + 1);
        return new CanyonList(
                keys,
                store.rows(view.of(keys.order(), awaited), finding.filter()),
                awaited,
                stations.stream().limit(CanyonStore.MOST_STATIONS).toList(),
                stations.size() > CanyonStore.MOST_STATIONS);
    }

    /**
     * The canyons of those keys; one that is gone meanwhile is missing.
     *
     * @param filter by which it is told of each whether it surely fits
     */
    public Map<Long, FoundCanyon> rows(RowOrder keys, CanyonFilter filter) {
        return session.canyons().rows(keys, filter);
    }

    /** How many there are in all. */
    public int count() {
        return session.canyons().count();
    }
}
