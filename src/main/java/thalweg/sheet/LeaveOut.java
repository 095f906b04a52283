package thalweg.sheet;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.StationRecord;
import thalweg.route.Canyon;
import thalweg.route.Station;

/**
 * The records as somebody chose to show them. It works on the records and not on the sheet, so that what is left out is in
 * no picture, total or list of changes that is made from them. Texts in which people wrote such things stay as they are:
 * {@link Reword} goes over those once the sheet is made.
 */
public final class LeaveOut {

    private final SheetContents contents;

    /**
     * @param contents what is to be shown
     */
    public LeaveOut(SheetContents contents) {
        this.contents = contents;
    }

    /** The records without what is not to be shown; places keep their numbers. */
    public CanyonRecord from(CanyonRecord whole) {
        return new CanyonRecord(
                canyon(whole.canyon()),
                whole.line().stream().filter(this::isShown).map(this::place).toList(),
                whole.rounds());
    }

    /**
     * The records at an earlier time in the same way. Places count as shown unless they are left out now, so that what was
     * taken out of a part of the line since is not passed over.
     *
     * @param now the records at the later time, with everything in them
     */
    public CanyonRecord earlier(CanyonRecord then, CanyonRecord now) {
        Set<Uid> leftOut = new HashSet<>();
        now.line().stream()
                .filter(place -> !isShown(place))
                .forEach(place -> leftOut.add(place.obstacle().uid()));
        return new CanyonRecord(
                canyon(then.canyon()),
                then.line().stream()
                        .filter(place -> !leftOut.contains(place.obstacle().uid()))
                        .map(this::place)
                        .toList(),
                then.rounds());
    }

    private boolean isShown(LineRecord place) {
        return contents.stretch().map(stretch -> stretch.holds(place.number())).orElse(true);
    }

    /** The drop that is stated is that of the whole canyon. */
    private Canyon canyon(Canyon whole) {
        return new Canyon(
                whole.uid(),
                whole.name(),
                whole.otherNames(),
                whole.region(),
                whole.country(),
                whole.french(),
                whole.american(),
                whole.position().filter(at -> contents.places()),
                whole.times(),
                whole.longestDrop().filter(drop -> contents.stretch().isEmpty()),
                whole.prose(),
                whole.invented());
    }

    /** A place of the line, with its stations, without what is not to be shown. */
    LineRecord place(LineRecord whole) {
        return new LineRecord(
                whole.number(),
                contents.places() ? whole.obstacle() : whole.obstacle().withPosition(Optional.empty()),
                whole.stations().stream().map(this::station).toList());
    }

    private StationRecord station(StationRecord record) {
        Station whole = record.station();
        Station station = new Station(
                whole.uid(),
                whole.obstacle(),
                whole.order(),
                whole.name(),
                whole.side(),
                whole.ropeNeeded(),
                whole.position().filter(at -> contents.places()),
                whole.exposure(),
                whole.prose());
        return new StationRecord(
                station,
                record.anchors().stream().map(this::anchor).toList(),
                record.notes().stream().map(this::note).toList(),
                contents.analyses()
                        ? record.analyses().stream().map(this::analysis).toList()
                        : List.of());
    }

    private AnchorRecord anchor(AnchorRecord record) {
        return new AnchorRecord(
                record.anchor(),
                record.parts().stream()
                        .map(part -> new PartRecord(
                                part.part(),
                                part.state(),
                                part.inspections().stream()
                                        .map(this::inspection)
                                        .toList()))
                        .toList());
    }

    private Entry<Inspection> inspection(Entry<Inspection> entry) {
        Inspection whole = entry.content();
        return with(
                entry,
                new Inspection(
                        whole.part(),
                        whole.on(),
                        by(whole.by()),
                        whole.found(),
                        whole.left(),
                        whole.water(),
                        whole.work(),
                        whole.note(),
                        whole.round(),
                        whole.photos()));
    }

    private Entry<RiggingNote> note(Entry<RiggingNote> entry) {
        RiggingNote whole = entry.content();
        return with(entry, new RiggingNote(whole.station(), whole.on(), by(whole.by()), whole.prose()));
    }

    private Entry<RigAnalysis> analysis(Entry<RigAnalysis> entry) {
        RigAnalysis whole = entry.content();
        return with(
                entry,
                new RigAnalysis(
                        whole.station(),
                        whole.on(),
                        by(whole.by()),
                        whole.program(),
                        whole.input(),
                        whole.result(),
                        whole.inventory()));
    }

    /** Who wrote an entry down stays in it; no sheet shows that. */
    private static <T> Entry<T> with(Entry<T> entry, T content) {
        return new Entry<>(
                entry.uid(),
                content,
                entry.author(),
                entry.at(),
                entry.correction(),
                entry.withdrawals(),
                entry.corrected());
    }

    private String by(String name) {
        return contents.names() ? name : "";
    }

    /** Figures of analyses without what is not to be shown. */
    Map<Uid, AnalysisFigures> figures(Map<Uid, AnalysisFigures> whole) {
        Map<Uid, AnalysisFigures> shown = new LinkedHashMap<>();
        if (contents.analyses()) {
            whole.forEach((entry, known) -> shown.put(entry, known.signed(by(known.by()))));
        }
        return shown;
    }
}
