package thalweg.service;

import java.util.List;
import thalweg.exchange.Parcel;
import thalweg.exchange.csv.CanyonsCsv;
import thalweg.exchange.csv.InspectionsCsv;
import thalweg.exchange.csv.InventoryCsv;
import thalweg.exchange.csv.PlacesCsv;
import thalweg.exchange.json.RecordsWriter;
import thalweg.exchange.map.GeoJsonText;
import thalweg.exchange.map.GpxText;
import thalweg.exchange.map.Located;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

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
        return RecordsWriter.write(orAll(canyons).stream()
                .map(canyon -> withPrivate
                        ? new Parcel(
                                canyon, session.records().local(canyon.canyon().uid()))
                        : Parcel.of(canyon))
                .toList());
    }

    /** Where things are, as GPX. */
    public String gpx(List<CanyonRecord> canyons, Phrases phrases, UnitSystem units) {
        return GpxText.write(canyons, phrases, units, session.instant());
    }

    /** Where things are, as GeoJSON. */
    public static String geoJson(List<CanyonRecord> canyons, Phrases phrases, UnitSystem units) {
        return GeoJsonText.write(canyons, phrases, units);
    }

    /** How much of them a map can show. */
    public static Located located(List<CanyonRecord> canyons) {
        return Located.of(canyons);
    }

    /** The canyons as CSV. */
    public static String canyonsCsv(List<CanyonRecord> canyons) {
        return CanyonsCsv.write(canyons);
    }

    /** All that was found on their parts, as CSV. */
    public static String inspectionsCsv(List<CanyonRecord> canyons) {
        return InspectionsCsv.write(canyons);
    }

    /** Their lines, a station or a place without one a row, as CSV. */
    public static String stationsCsv(List<CanyonRecord> canyons) {
        return PlacesCsv.write(canyons);
    }

    /** Their anchors, a part or an anchor without one a row, as CSV. */
    public static String partsCsv(List<CanyonRecord> canyons) {
        return InventoryCsv.write(canyons);
    }

    /** Those canyons, or all there are where none is named. */
    public List<CanyonRecord> orAll(List<CanyonRecord> canyons) {
        return canyons.isEmpty() ? all() : canyons;
    }

    private List<CanyonRecord> all() {
        List<Uid> uids = session.records().canyons();
        return uids.stream()
                .flatMap(uid -> session.records().canyon(uid).stream())
                .toList();
    }
}
