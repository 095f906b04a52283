package thalweg.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.LineRecord;
import thalweg.logbook.NoteText;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.StationRecord;
import thalweg.logbook.WaterLevel;
import thalweg.logbook.Work;
import thalweg.place.PositionText;
import thalweg.route.Anchor;
import thalweg.route.AnchorRole;
import thalweg.route.HoldsAlone;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartPlace;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.route.Side;
import thalweg.route.Station;
import thalweg.route.StationText;
import thalweg.units.Force;
import thalweg.units.Length;

/** Short ways to write down records; each thing gets the next name in line. */
final class Things {

    private int next;

    Uid uid() {
        next++;
        return new Uid(new UUID(0x0193_0000_0000_7000L, 0x8000_0000_0000_0000L + next));
    }

    <T> Entry<T> entry(T content) {
        return new Entry<>(uid(), content, "keeper", "2026-11-20T10:00:00Z");
    }

    LineRecord place(
            int number, ObstacleKind kind, String name, String distance, String height, StationRecord... stations) {
        return place(number, kind, name, distance, height, "", stations);
    }

    LineRecord place(
            int number,
            ObstacleKind kind,
            String name,
            String distance,
            String height,
            String note,
            StationRecord... stations) {
        Obstacle obstacle = new Obstacle(
                uid(), uid(), "V" + number, kind, name, length(distance), length(height), Optional.empty(), note);
        return new LineRecord(number, obstacle, Arrays.asList(stations));
    }

    Station station(String name, Optional<Side> side, String rope, Map<StationText, String> prose) {
        return new Station(
                uid(), uid(), "V", name, side, length(rope), Optional.empty(), Optional.empty(), new Prose<>(prose));
    }

    /** The same place, of which the coordinates are known. */
    static LineRecord at(LineRecord place, String coordinates) {
        Obstacle known = place.obstacle();
        Obstacle obstacle = new Obstacle(
                known.uid(),
                known.canyon(),
                known.order(),
                known.kind(),
                known.name(),
                known.distance(),
                known.height(),
                Optional.of(PositionText.parse(coordinates)),
                known.note());
        return new LineRecord(place.number(), obstacle, place.stations());
    }

    /** The same station, of which the coordinates are known. */
    static Station at(Station known, String coordinates) {
        return new Station(
                known.uid(),
                known.obstacle(),
                known.order(),
                known.name(),
                known.side(),
                known.ropeNeeded(),
                Optional.of(PositionText.parse(coordinates)),
                Optional.empty(),
                known.prose());
    }

    AnchorRecord anchor(AnchorRole role, String name, String note, PartRecord... parts) {
        return new AnchorRecord(new Anchor(uid(), uid(), "V", role, name, note), Arrays.asList(parts));
    }

    /** A part of which nothing is known but what it is. */
    Part part(String label, PartKind kind) {
        return new Part(
                uid(),
                uid(),
                "V",
                label,
                kind,
                Part.Hardware.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    /** The part with what is known of it; empty texts stand for what is not. */
    Part known(
            Part part,
            Part.Hardware hardware,
            String placed,
            Optional<PartPlace> place,
            String across,
            String along,
            Optional<HoldsAlone> holdsAlone,
            String note) {
        return new Part(
                part.uid(),
                part.anchor(),
                part.order(),
                part.label(),
                part.kind(),
                hardware,
                some(placed).map(PartialDate::parse),
                place,
                some(across).map(Force::parse),
                some(along).map(Force::parse),
                holdsAlone,
                note);
    }

    PartRecord record(Part part, Inspection... inspections) {
        return PartRecord.of(part, Arrays.stream(inspections).map(this::entry).toList());
    }

    Inspection seen(Part part, String on, String by, Condition found, String note) {
        return inspection(part, on, by, Optional.of(found), Optional.empty(), List.of(), note);
    }

    Inspection notSeen(Part part, String on, String by, String note) {
        return inspection(part, on, by, Optional.empty(), Optional.empty(), List.of(), note);
    }

    Inspection worked(Part part, String on, String by, Condition found, Condition left, List<Work> work, String note) {
        return inspection(part, on, by, Optional.of(found), Optional.of(left), work, note);
    }

    private Inspection inspection(
            Part part,
            String on,
            String by,
            Optional<Condition> found,
            Optional<Condition> left,
            List<Work> work,
            String note) {
        Optional<WaterLevel> water = by.isEmpty() ? Optional.empty() : Optional.of(WaterLevel.LOW);
        return new Inspection(part.uid(), PartialDate.parse(on), by, found, left, water, work, note);
    }

    Entry<RiggingNote> note(String on, String by, Map<NoteText, String> prose) {
        return entry(new RiggingNote(uid(), PartialDate.parse(on), by, new Prose<>(prose)));
    }

    static Optional<PartPlace> at(double right, double up, double out) {
        return Optional.of(new PartPlace(new Length(right), new Length(up), new Length(out)));
    }

    static Optional<Length> length(String text) {
        return some(text).map(Length::parse);
    }

    private static Optional<String> some(String text) {
        return Optional.of(text).filter(known -> !known.isEmpty());
    }
}
