package thalweg.service;

import java.util.List;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyon;
import thalweg.logbook.FoundCanyons;
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

    /** How many there are in all. */
    public int count() {
        return session.canyons().count();
    }
}
