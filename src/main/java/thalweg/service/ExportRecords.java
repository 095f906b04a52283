package thalweg.service;

import java.util.List;
import thalweg.exchange.json.RecordsWriter;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;

/** Writes canyons as a text that another database can import. */
public final class ExportRecords {

    private final Session session;

    public ExportRecords(Session session) {
        this.session = session;
    }

    /** Those canyons as a file of records; all there are where none is named. */
    public String json(List<CanyonRecord> canyons) {
        return RecordsWriter.write(canyons.isEmpty() ? all() : canyons);
    }

    private List<CanyonRecord> all() {
        List<Uid> uids = session.records().canyons();
        return uids.stream()
                .flatMap(uid -> session.records().canyon(uid).stream())
                .toList();
    }
}
