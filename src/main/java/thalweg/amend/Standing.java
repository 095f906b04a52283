package thalweg.amend;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import thalweg.body.FactBody;
import thalweg.body.ThingBody;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Correction;
import thalweg.logbook.Entry;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;

/**
 * A canyon taken apart into its things and the entries that count.
 *
 * @param things along the line, parents before what is in them
 * @param entries that count, by their names
 * @param lines what is in each thing, in order
 * @param stations names of the stations at which anchors and parts are
 */
record Standing(
        Map<Uid, ThingBody> things, Map<Uid, Noted> entries, Map<Uid, List<Uid>> lines, Map<Uid, String> stations) {

    /**
     * An entry as it was written.
     *
     * @param said what, and about which thing
     * @param corrects the entry in whose place it stands
     */
    record Noted(FactBody said, Optional<Uid> corrects) {}

    static Standing of(CanyonRecord canyon) {
        Standing standing =
                new Standing(new LinkedHashMap<>(), new LinkedHashMap<>(), new HashMap<>(), new HashMap<>());
        standing.take(ThingBody.of(canyon.canyon()), "");
        standing.note(canyon.rounds(), FactBody::of);
        canyon.line().forEach(standing::place);
        return standing;
    }

    /** The name of the station at which an anchor or a part is; else empty text. */
    String stationOf(Uid thing) {
        return stations.getOrDefault(thing, "");
    }

    private void take(ThingBody thing, String station) {
        things.put(thing.uid(), thing);
        thing.parent()
                .ifPresent(parent ->
                        lines.computeIfAbsent(parent, key -> new ArrayList<>()).add(thing.uid()));
        if (!station.isEmpty()) {
            stations.put(thing.uid(), station);
        }
    }

    private <T> void note(List<Entry<T>> all, Function<T, FactBody> said) {
        for (Entry<T> entry : all) {
            if (entry.counts()) {
                entries.put(
                        entry.uid(),
                        new Noted(
                                said.apply(entry.content()), entry.correction().map(Correction::of)));
            }
        }
    }

    private void place(LineRecord place) {
        take(ThingBody.of(place.obstacle()), "");
        place.stations().forEach(this::station);
    }

    private void station(StationRecord record) {
        String name = record.station().name();
        take(ThingBody.of(record.station()), "");
        note(record.notes(), FactBody::of);
        note(record.analyses(), FactBody::of);
        for (AnchorRecord anchor : record.anchors()) {
            take(ThingBody.of(anchor.anchor()), name);
            for (PartRecord part : anchor.parts()) {
                take(ThingBody.of(part.part()), name);
                note(part.inspections(), FactBody::of);
            }
        }
    }
}
