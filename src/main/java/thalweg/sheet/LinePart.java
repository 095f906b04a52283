package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.Standing;
import thalweg.logbook.StationRecord;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;

/** The whole line on one table: every place in order, and what each station needs and is like. */
final class LinePart {

    private static final List<String> COLUMNS = List.of("place", "distance", "height", "station", "rope", "worst");

    private final Wording wording;
    private final Places places;
    private final DueLines due;

    LinePart(Wording wording) {
        this.wording = wording;
        this.places = new Places(wording);
        this.due = new DueLines(wording);
    }

    Section of(CanyonRecord record) {
        List<List<Cell>> rows = record.line().stream().flatMap(this::rows).toList();
        Block block = rows.isEmpty()
                ? new Block.Paragraph(wording.noneEntered())
                : new Block.Table(
                        wording.say("sheet.line.caption"),
                        COLUMNS.stream()
                                .map(column -> wording.say("sheet.line." + column))
                                .toList(),
                        rows);
        return Section.of("line", wording.say("sheet.line"), List.of(block));
    }

    private Stream<List<Cell>> rows(LineRecord place) {
        if (place.stations().isEmpty()) {
            return Stream.of(withoutStation(place));
        }
        return IntStream.range(0, place.stations().size()).mapToObj(number -> withStation(place, number));
    }

    private List<Cell> withoutStation(LineRecord place) {
        List<Words> name = new ArrayList<>();
        name.add(Words.of(places.shortName(place)));
        if (place.obstacle().kind() == ObstacleKind.ESCAPE) {
            name.add(wording.wayOut(place.obstacle()));
        }
        place.obstacle().position().ifPresent(at -> name.add(PositionWords.link(at)));
        if (!place.obstacle().note().isBlank()) {
            name.add(Words.of(place.obstacle().note()));
        }
        wording.privateNote(place.obstacle().uid())
                .ifPresent(note -> name.add(Words.of(
                        wording.labelled(note.label(), note.lines().get(0).text()), Tone.CAUTION)));
        // Where a rope is usually rigged, a missing station is news; on a walk it is not.
        Tone tone = place.obstacle().kind().usuallyRigged() ? Tone.UNKNOWN : Tone.QUIET;
        Cell none = Cell.of(wording.toned(tone, "sheet.none_entered"));
        return List.of(new Cell(name), distance(place), height(place), none, Cell.NONE, Cell.NONE);
    }

    private List<Cell> withStation(LineRecord place, int number) {
        StationRecord station = place.stations().get(number);
        return List.of(
                Cell.of(Words.of(places.shortName(place)).to("#" + Places.id(place))),
                distance(place),
                height(place),
                Cell.of(Words.of(station.station().name()).to("#" + Places.id(place, number))),
                Cell.of(wording.length(station.station().ropeNeeded())),
                new Cell(worst(station)));
    }

    private Cell distance(LineRecord place) {
        return Cell.of(wording.length(place.obstacle().distance()));
    }

    private Cell height(LineRecord place) {
        Obstacle obstacle = place.obstacle();
        boolean asked = obstacle.kind().goesDown() || obstacle.height().isPresent();
        return asked ? Cell.of(wording.length(obstacle.height())) : Cell.NONE;
    }

    private List<Words> worst(StationRecord station) {
        int parts = station.parts().size();
        if (parts == 0) {
            return List.of(wording.toned(Tone.UNKNOWN, "sheet.part.none"));
        }
        List<Words> lines = new ArrayList<>();
        Standing standing = station.standing();
        if (standing.gone() > 0 && standing.worst().isPresent()) {
            lines.add(wording.toned(
                    Tone.GONE, "sheet.line.gone", Integer.toString(standing.gone()), Integer.toString(parts)));
        }
        lines.add(standing.condition().map(wording::condition).orElseGet(() -> wording.unseen(station.parts())));
        if (station.anchors().size() > 1) {
            station.anchors().forEach(anchor -> lines.add(worst(anchor)));
        }
        due.of(station).ifPresent(lines::add);
        if (station.hasOldAnalysis()) {
            lines.add(wording.toned(Tone.CAUTION, "sheet.line.rig_old"));
        }
        if (station.hasContradiction()) {
            lines.add(wording.toned(Tone.CAUTION, "condition.contradictory"));
        }
        station.oldestLook()
                .ifPresent(oldest -> lines.add(
                        wording.words("sheet.line.oldest", wording.ages().ago(oldest))));
        if (standing.neverSeen() > 0 && standing.condition().isPresent()) {
            lines.add(wording.toned(
                    Tone.UNKNOWN,
                    "sheet.line.unseen",
                    Integer.toString(standing.neverSeen()),
                    Integer.toString(parts)));
        }
        return lines;
    }

    private Words worst(AnchorRecord anchor) {
        String role = wording.of("role", anchor.anchor().role());
        Standing standing = anchor.standing();
        if (standing.worst().isPresent() && standing.gone() > 0) {
            Words told = wording.condition(standing.worst().get());
            return wording.toned(
                    Tone.GONE,
                    "sheet.line.anchor.gone",
                    role,
                    Integer.toString(standing.gone()),
                    Integer.toString(anchor.parts().size()),
                    told.text());
        }
        Words told = anchor.parts().isEmpty()
                ? wording.toned(Tone.UNKNOWN, "sheet.part.none")
                : standing.condition().map(wording::condition).orElseGet(() -> wording.unseen(anchor.parts()));
        return wording.toned(told.tone(), "sheet.line.anchor", role, told.text());
    }
}
