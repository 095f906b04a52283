package thalweg.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.route.AnchorRole;
import thalweg.route.Canyon;
import thalweg.route.CanyonText;
import thalweg.route.ObstacleKind;
import thalweg.route.Times;
import thalweg.units.Length;

/** The figures by which a group decides whether to go and what to carry. */
final class GlancePart {

    private final Wording wording;
    private final Places places;
    private final GradeWords grades;

    GlancePart(Wording wording) {
        this.wording = wording;
        this.places = new Places(wording);
        this.grades = new GradeWords(wording);
    }

    Section of(CanyonRecord record) {
        Canyon canyon = record.canyon();
        List<Fact> facts = new ArrayList<>();
        facts.add(wording.fact("sheet.french", grades.french(canyon.french())));
        facts.add(wording.fact("sheet.american", grades.american(canyon.american())));
        facts.add(wording.fact("sheet.times", ofWhole(times(canyon.times()))));
        facts.add(wording.fact("sheet.longest_drop", longestDrop(record)));
        facts.add(wording.fact("sheet.longest_rope", longestRope(record)));
        facts.add(wording.fact("canyon_text.ropes", ropes(canyon)));
        facts.add(wording.fact("sheet.ways_out", waysOut(record)));
        facts.add(wording.fact("sheet.high_water", highWater(record)));
        facts.add(wording.fact(
                "canyon_text.catchment", wording.orUnknown(canyon.prose().under(CanyonText.CATCHMENT))));
        facts.add(wording.fact("sheet.start", new PositionWords(wording).orUnknown(canyon.position())));
        return Section.of("glance", wording.say("sheet.glance"), List.of(new Block.Facts(facts)));
    }

    /** What still matters once a group is in the canyon. */
    Section inBrief(CanyonRecord record) {
        Canyon canyon = record.canyon();
        List<Fact> facts = new ArrayList<>(List.of(
                wording.fact("sheet.times", ofWhole(times(canyon.times()))),
                wording.fact("sheet.longest_rope", longestRope(record)),
                wording.fact("canyon_text.ropes", ropes(canyon)),
                wording.fact("sheet.ways_out", waysOut(record)),
                wording.fact("sheet.high_water", highWater(record)),
                wording.fact(
                        "canyon_text.catchment",
                        wording.orUnknown(canyon.prose().under(CanyonText.CATCHMENT)))));
        wording.privateNote(canyon.uid()).ifPresent(facts::add);
        return Section.of("glance", wording.say("sheet.glance"), List.of(new Block.Facts(facts)));
    }

    private List<Words> ropes(Canyon canyon) {
        return ofWhole(List.of(wording.orUnknown(canyon.prose().under(CanyonText.ROPES))));
    }

    /** What is stated of a canyon as a whole says so on a sheet about a part of it. */
    private List<Words> ofWhole(List<Words> lines) {
        return wording.options().contents().stretch().isEmpty()
                ? lines
                : Stream.concat(lines.stream(), Stream.of(wording.toned(Tone.CAUTION, "sheet.stretch.whole")))
                        .toList();
    }

    private List<Words> times(Times times) {
        return List.of(
                time("sheet.times.approach", times.approachMinutes()),
                time("sheet.times.descent", times.descentMinutes()),
                time("sheet.times.exit", times.exitMinutes()));
    }

    private Words time(String key, Optional<Integer> minutes) {
        return minutes.map(known -> wording.words(key, wording.duration(known)))
                .orElseGet(() -> wording.toned(Tone.UNKNOWN, key, wording.say("unknown")));
    }

    private List<Words> longestDrop(CanyonRecord record) {
        if (record.canyon().longestDrop().isPresent()) {
            return List.of(wording.words(
                    "sheet.stated", wording.length(record.canyon().longestDrop().get())));
        }
        List<Words> lines = new ArrayList<>();
        lines.add(record.longestDrop()
                .map(known -> wording.words(
                        wording.options().contents().stretch().isPresent() ? "sheet.from_part" : "sheet.from_line",
                        wording.length(known)))
                .orElseGet(wording::unknown));
        long without = record.line().stream()
                .filter(place -> place.obstacle().kind() == ObstacleKind.DROP)
                .filter(place -> place.obstacle().height().isEmpty())
                .count();
        if (without > 0) {
            lines.add(wording.toned(Tone.UNKNOWN, "sheet.drops_unknown", Long.toString(without)));
        }
        return lines;
    }

    private List<Words> longestRope(CanyonRecord record) {
        List<StationRecord> stations = record.stations();
        if (stations.isEmpty()) {
            return List.of(wording.toned(Tone.UNKNOWN, "sheet.no_station"));
        }
        List<Words> lines = new ArrayList<>();
        stations.stream()
                .flatMap(station -> station.station().ropeNeeded().stream()
                        .map(rope -> new Needed(rope, station.station().name())))
                .max(Comparator.comparing(Needed::rope))
                .ifPresent(most ->
                        lines.add(wording.words("sheet.longest_rope.at", wording.length(most.rope()), most.station())));
        long without = stations.stream()
                .filter(station -> station.station().ropeNeeded().isEmpty())
                .count();
        if (without > 0) {
            lines.add(wording.toned(
                    Tone.UNKNOWN, "sheet.ropes_unknown", Long.toString(without), Integer.toString(stations.size())));
        }
        return lines;
    }

    private record Needed(Length rope, String station) {}

    private List<Words> waysOut(CanyonRecord record) {
        return orNone(record.line().stream()
                .filter(place -> place.obstacle().kind() == ObstacleKind.ESCAPE)
                .map(place -> Words.of(wording.labelled(
                        places.shortName(place),
                        wording.wayOut(place.obstacle()).text()))));
    }

    private List<Words> highWater(CanyonRecord record) {
        return orNone(record.line().stream().flatMap(this::highWaterAt));
    }

    private Stream<Words> highWaterAt(LineRecord place) {
        return place.stations().stream()
                .filter(station -> station.anchors().stream()
                        .anyMatch(anchor -> anchor.anchor().role() == AnchorRole.HIGH_WATER))
                .map(station -> Words.of(wording.labelled(
                        places.shortName(place), station.station().name())));
    }

    private List<Words> orNone(Stream<Words> lines) {
        List<Words> found = lines.toList();
        return found.isEmpty() ? List.of(wording.noneEntered()) : found;
    }
}
