package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.route.Canyon;

/** A place in the few words that are read with wet hands: how high, which rope, where the anchor is and what it is like. */
final class PocketPart {

    private final Wording wording;
    private final Places places;
    private final PlacePart stations;
    private final AnchorPart anchors;
    private final NotePart notes;
    private final AnalysisPart analyses;

    PocketPart(Wording wording, Map<Uid, AnalysisFigures> figures) {
        this.wording = wording;
        this.places = new Places(wording);
        this.stations = new PlacePart(wording, figures);
        this.anchors = new AnchorPart(wording);
        this.notes = new NotePart(wording);
        this.analyses = new AnalysisPart(wording, figures);
    }

    Section of(LineRecord place) {
        List<Fact> facts = new ArrayList<>();
        if (place.obstacle().kind().goesDown() || place.obstacle().height().isPresent()) {
            facts.add(wording.fact(
                    "sheet.line.height", wording.length(place.obstacle().height())));
        }
        if (!place.obstacle().note().isBlank()) {
            facts.add(wording.fact("sheet.place.note", Words.of(place.obstacle().note())));
        }
        wording.privateNote(place.obstacle().uid()).ifPresent(facts::add);
        if (place.stations().isEmpty() && place.obstacle().kind().usuallyRigged()) {
            facts.add(wording.fact("sheet.line.station", wording.noneEntered()));
        }
        List<Block> blocks = facts.isEmpty() ? List.of() : List.of(new Block.Facts(facts));
        List<Section> inner = IntStream.range(0, place.stations().size())
                .mapToObj(number ->
                        station(Places.id(place, number), place.stations().get(number)))
                .toList();
        return new Section(Places.id(place), places.shortName(place), blocks, inner);
    }

    private Section station(String id, StationRecord record) {
        List<Fact> facts = new ArrayList<>(stations.facts(record));
        IntStream.range(0, record.anchors().size())
                .forEach(number -> facts.add(anchor(number + 1, record.anchors().get(number), record)));
        facts.addAll(notes.latest(record.countingNotes()));
        analyses.latestInBrief(record).ifPresent(brief -> facts.add(wording.fact("sheet.analysis", brief)));
        String heading = wording.say("sheet.station.heading", record.station().name());
        return Section.of(id, heading, List.of(new Block.Facts(facts)));
    }

    private Fact anchor(int number, AnchorRecord anchor, StationRecord record) {
        List<Words> lines = new ArrayList<>();
        if (!anchor.anchor().note().isBlank()) {
            lines.add(Words.of(anchor.anchor().note()));
        }
        anchor.parts().forEach(part -> lines.addAll(part(part, record)));
        if (anchor.parts().isEmpty()) {
            lines.add(wording.toned(Tone.UNKNOWN, "sheet.part.none"));
        }
        return new Fact(anchors.heading(number, anchor.anchor()), lines);
    }

    private List<Words> part(PartRecord part, StationRecord record) {
        List<Words> told = anchors.told(part, record.station().exposure());
        List<Words> lines = new ArrayList<>();
        String condition = wording.labelled(part.part().label(), told.get(0).text());
        // When it was seen stands on the same line; what calls for care gets one of its own.
        boolean dated = told.size() > 1 && told.get(1).tone() == Tone.PLAIN;
        String first =
                dated ? wording.say("sheet.pocket.seen", condition, told.get(1).text()) : condition;
        lines.add(Words.of(first, told.get(0).tone()));
        lines.addAll(told.subList(dated ? 2 : 1, told.size()));
        return lines;
    }

    /** So that nobody takes the few words for all there is. */
    Section leftOut(Canyon canyon) {
        return Section.of(
                "left-out",
                wording.say("sheet.pocket.left_out"),
                List.of(
                        new Block.Paragraph(wording.words("sheet.pocket.left_out.what")),
                        new Block.Facts(List.of(wording.fact(
                                "sheet.record", Words.of(canyon.uid().text()))))));
    }
}
