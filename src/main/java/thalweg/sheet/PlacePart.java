package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import thalweg.ledger.Uid;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.place.Position;
import thalweg.route.ObstacleKind;
import thalweg.route.Station;
import thalweg.route.StationText;

/** A place where ropes are rigged, with its stations and all that is known of them. */
final class PlacePart {

    private final Wording wording;
    private final Places places;
    private final AnchorPart anchors;
    private final VisitPart visits;
    private final NotePart notes;
    private final AnalysisPart analyses;

    PlacePart(Wording wording, Map<Uid, AnalysisFigures> figures) {
        this.wording = wording;
        this.places = new Places(wording);
        this.anchors = new AnchorPart(wording);
        this.visits = new VisitPart(wording);
        this.notes = new NotePart(wording);
        this.analyses = new AnalysisPart(wording, figures);
    }

    Section of(LineRecord place) {
        List<Fact> facts = new ArrayList<>();
        facts.add(wording.fact(
                "sheet.line.distance", wording.length(place.obstacle().distance())));
        if (place.obstacle().kind().goesDown() || place.obstacle().height().isPresent()) {
            facts.add(wording.fact(
                    "sheet.line.height", wording.length(place.obstacle().height())));
        }
        if (place.obstacle().kind() == ObstacleKind.ESCAPE) {
            facts.add(wording.fact(
                    "sheet.place.way_out",
                    wording.orUnknown(place.obstacle().wayOut().map(wording::duration))));
        }
        place.obstacle().position().ifPresent(at -> facts.add(position(at)));
        if (!place.obstacle().note().isBlank()) {
            facts.add(wording.fact("sheet.place.note", Words.of(place.obstacle().note())));
        }
        wording.privateNote(place.obstacle().uid()).ifPresent(facts::add);
        List<Section> stations = IntStream.range(0, place.stations().size())
                .mapToObj(number ->
                        station(Places.id(place, number), place.stations().get(number)))
                .toList();
        return new Section(Places.id(place), places.heading(place), List.of(new Block.Facts(facts)), stations);
    }

    private Section station(String id, StationRecord record) {
        List<Section> inner = new ArrayList<>();
        IntStream.range(0, record.anchors().size())
                .forEach(number -> inner.add(anchors.of(
                        id,
                        number + 1,
                        record.anchors().get(number),
                        record.station().exposure())));
        visits.of(id, record).ifPresent(inner::add);
        notes.of(id, record.countingNotes()).ifPresent(inner::add);
        analyses.of(id, record).ifPresent(inner::add);
        String heading = wording.say("sheet.station.heading", record.station().name());
        return new Section(id, heading, List.of(new Block.Facts(facts(record))), inner);
    }

    /** What a station is and where; what it lacks says so. */
    List<Fact> facts(StationRecord record) {
        Station station = record.station();
        List<Fact> facts = new ArrayList<>();
        facts.add(wording.fact(
                "sheet.station.side", wording.orUnknown(station.side().map(side -> wording.of("side", side)))));
        facts.add(wording.fact("sheet.line.rope", wording.length(station.ropeNeeded())));
        station.position().ifPresent(at -> facts.add(position(at)));
        station.exposure()
                .ifPresent(exposure ->
                        facts.add(wording.fact("sheet.station.exposure", Words.of(wording.of("exposure", exposure)))));
        for (StationText heading : List.of(StationText.FINDING, StationText.RUB_POINTS, StationText.LANDING)) {
            facts.add(fact(station, heading));
        }
        if (station.prose().under(StationText.NOTES).isPresent()) {
            facts.add(fact(station, StationText.NOTES));
        }
        wording.privateNote(station.uid()).ifPresent(facts::add);
        addIfNone(facts, "sheet.station.anchors", record.anchors().isEmpty());
        addIfNone(
                facts,
                "sheet.station.inspections",
                record.parts().stream().allMatch(part -> part.counting().isEmpty()));
        addIfNone(facts, "sheet.station.notes", record.countingNotes().isEmpty());
        addIfNone(
                facts,
                "sheet.station.analyses",
                wording.options().contents().analyses()
                        && record.countingAnalyses().isEmpty());
        return facts;
    }

    private Fact position(Position at) {
        return wording.fact("sheet.position", new PositionWords(wording).of(at));
    }

    private Fact fact(Station station, StationText heading) {
        return new Fact(
                wording.of("station_text", heading),
                List.of(wording.orUnknown(station.prose().under(heading))));
    }

    /** What a station lacks is one line here instead of a section with nothing in it. */
    private void addIfNone(List<Fact> facts, String key, boolean none) {
        if (none) {
            facts.add(wording.fact(key, wording.noneEntered()));
        }
    }
}
