package thalweg.service;

import java.util.List;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsWriter;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;

/** Writes canyons as a text that another database can import. */
public final class ExportRecords {

    private final Session session;

    public ExportRecords(Session session) {
        this.session = session;
    }

    /**
     * Those canyons as a file of records; all there are where none is named.
     *
     * @param withPrivate whether trips, private notes and to whom sheets were given go along
     */
    public String json(List<CanyonRecord> canyons, boolean withPrivate) {
        return RecordsWriter.write((canyons.isEmpty() ? all() : canyons)
                .stream()
                        .map(canyon -> withPrivate
                                ? new Parcel(
                                        canyon,
                                        session.records().local(canyon.canyon().uid()))
                                : Parcel.of(canyon))
                        .toList());
    }

    private List<CanyonRecord> all() {
        List<Uid> uids = session.records().canyons();
        return uids.stream()
                .flatMap(uid -> session.records().canyon(uid).stream())
                .toList();
    }
}
