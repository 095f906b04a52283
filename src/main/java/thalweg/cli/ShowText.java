package thalweg.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.place.Position;
import thalweg.route.Canyon;
import thalweg.route.Part;
import thalweg.route.PartPlace;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.route.Times;
import thalweg.sheet.Durations;
import thalweg.text.Phrases;
import thalweg.timeline.Timeline;
import thalweg.timeline.TimelineText;
import thalweg.units.UnitSystem;

/** A canyon or a station as text for a terminal. */
final class ShowText {

    private final Phrases phrases;
    private final UnitSystem units;
    private final LocalDate today;
    private final TextLines out = new TextLines();
    private final ShowEntries entries;

    /**
     * @param today the day up to which the years go
     * @param ids whether the ids of things and entries are shown
     */
    ShowText(Phrases phrases, UnitSystem units, LocalDate today, boolean ids) {
        this.phrases = phrases;
        this.today = today;
        this.units = units;
        this.entries = new ShowEntries(out, phrases, units, ids);
    }

    String canyon(CanyonRecord record) {
        Canyon canyon = record.canyon();
        heading(canyon);
        line("id " + canyon.uid().text());
        grades(canyon);
        line("Longest drop: "
                + record.longestDrop().map(drop -> drop.print(units)).orElse(phrases.say("unknown")));
        times(canyon.times());
        canyon.position().ifPresent(this::position);
        prose("canyon_text", canyon.prose());
        line("");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("NO", "WHAT", "HEIGHT", "STATION", "ROPE", "WORST", "OLDEST LOOK", "ID"));
        record.line().forEach(place -> rows.addAll(rows(place)));
        out.add(record.line().isEmpty() ? "The line is not entered yet.\n" : Columns.of(rows));
        positions(record);
        record.line().forEach(this::details);
        record.line().forEach(this::placeId);
        entries.rounds(record);
        closing();
        return out.text();
    }

    /** The table holds the ids of stations; a place has its own. */
    private void placeId(LineRecord place) {
        entries.id(place.obstacle().uid(), "place " + place.number() + ": ");
    }

    private void heading(Canyon canyon) {
        line(canyon.name()
                + (canyon.otherNames().isEmpty() ? "" : " (" + String.join(", ", canyon.otherNames()) + ")"));
        if (canyon.invented()) {
            line("** " + phrases.say("invented") + " **");
        }
        line(canyon.whereabouts());
    }

    private void position(Position position) {
        line(position.print() + "   " + position.printMinutes());
    }

    private void grades(Canyon canyon) {
        String french = canyon.french().map(grade -> grade.print()).orElse(phrases.say("unknown"));
        String american = canyon.american().map(grade -> grade.print()).orElse(phrases.say("unknown"));
        line("Grades: French " + french + ", American " + american);
    }

    /** Where places and stations are, for those of which that is known. */
    private void positions(CanyonRecord record) {
        List<List<String>> rows = new ArrayList<>();
        for (LineRecord place : record.line()) {
            String number = Integer.toString(place.number());
            place.obstacle().position().ifPresent(at -> rows.add(List.of(number, what(place), at.print())));
            for (StationRecord station : place.stations()) {
                String name = "station " + station.station().name();
                station.station().position().ifPresent(at -> rows.add(List.of(number, name, at.print())));
            }
        }
        if (!rows.isEmpty()) {
            rows.add(0, List.of("NO", "WHAT", "COORDINATES"));
            line("");
            out.add(Columns.of(rows));
        }
    }

    private String what(LineRecord place) {
        String name = place.obstacle().name();
        return Words.word(phrases, "obstacle", place.obstacle().kind()) + (name.isEmpty() ? "" : " " + name);
    }

    private void times(Times times) {
        line(phrases.say(
                "about.times",
                duration(times.approachMinutes()),
                duration(times.descentMinutes()),
                duration(times.exitMinutes())));
    }

    private String duration(Optional<Integer> minutes) {
        return minutes.map(known -> Durations.print(known, phrases)).orElse(phrases.say("unknown"));
    }

    /** What a table has no room for. */
    private void details(LineRecord place) {
        String distance = place.obstacle()
                .distance()
                .map(known -> phrases.say("about.distance", known.print(units)))
                .orElse("");
        String note = place.obstacle().note();
        if (!distance.isEmpty() || !note.isEmpty()) {
            line("");
            wrapped(place.number() + ": " + distance, "");
            wrapped(note, "  ");
        }
    }

    private List<List<String>> rows(LineRecord place) {
        String what = what(place);
        String height = place.obstacle()
                .height()
                .map(known -> known.print(units))
                .orElse(place.obstacle().kind().goesDown() ? phrases.say("unknown") : "");
        String number = Integer.toString(place.number());
        if (place.stations().isEmpty()) {
            return List.of(List.of(number, what, height, "", "", "", "", ""));
        }
        List<List<String>> rows = new ArrayList<>();
        for (StationRecord station : place.stations()) {
            boolean first = rows.isEmpty();
            rows.add(List.of(
                    first ? number : "",
                    first ? what : "",
                    first ? height : "",
                    station.station().name() + (station.hasOldAnalysis() ? " (rig out of date)" : ""),
                    station.station()
                            .ropeNeeded()
                            .map(rope -> rope.print(units))
                            .orElse(phrases.say("unknown")),
                    ConditionWords.told(station.standing(), phrases),
                    station.oldestLook().map(PartialDate::print).orElse(""),
                    station.station().uid().text()));
        }
        return rows;
    }

    String station(CanyonRecord canyon, StationRecord record) {
        heading(canyon.canyon());
        line("");
        String place = canyon.placeOf(record.station().uid())
                .map(at -> Words.word(phrases, "obstacle", at.obstacle().kind()) + " " + at.number()
                        + at.obstacle()
                                .height()
                                .map(height -> ", " + height.print(units))
                                .orElse(""))
                .orElse("");
        line("Station " + record.station().name() + ": " + place);
        line("id " + record.station().uid().text());
        record.station().side().ifPresent(side -> line("Side: " + Words.word(phrases, "side", side)));
        line("Rope needed: "
                + record.station().ropeNeeded().map(rope -> rope.print(units)).orElse(phrases.say("unknown")));
        record.station().position().ifPresent(this::position);
        record.station()
                .exposure()
                .ifPresent(exposure -> line("Exposure: " + Words.word(phrases, "exposure", exposure)));
        prose("station_text", record.station().prose());
        record.anchors().forEach(this::anchor);
        if (record.anchors().isEmpty()) {
            line("");
            line("No anchor is entered yet.");
        }
        overTheYears(record);
        record.notes().forEach(entry -> entries.note(entry, record));
        record.analyses().forEach(entry -> entries.analysis(entry, record));
        closing();
        return out.text();
    }

    private void overTheYears(StationRecord record) {
        Timeline timeline = Timeline.of(record.parts(), today);
        if (timeline.canBeDrawn()) {
            line("");
            line(phrases.say("timeline.heading"));
            TimelineText.lines(timeline, TextLines.WIDTH, phrases).forEach(this::line);
        }
    }

    private void anchor(AnchorRecord anchor) {
        line("");
        line(Words.word(phrases, "role", anchor.anchor().role())
                + (anchor.anchor().name().isEmpty()
                        ? ""
                        : ": " + anchor.anchor().name()));
        entries.id(anchor.anchor().uid(), "  ");
        wrapped(anchor.anchor().note(), "  ");
        anchor.parts().forEach(this::part);
    }

    private void part(PartRecord record) {
        Part part = record.part();
        Part.Hardware made = part.hardware();
        String facts = List.of(
                        Words.word(phrases, "part", part.kind()),
                        made.material(),
                        made.size(),
                        made.standard(),
                        made.maker(),
                        made.batch(),
                        part.placed().map(date -> "placed " + date.print()).orElse(""),
                        "strength "
                                + part.strength()
                                        .map(force -> force.print(units))
                                        .orElse(phrases.say("unknown"))
                                + part.axialStrength()
                                        .map(force -> ", axial " + force.print(units))
                                        .orElse(""),
                        part.kind().isPoint() || part.holdsAlone().isPresent()
                                ? part.holdsAlone()
                                        .map(belief -> Words.word(phrases, "holds", belief))
                                        .orElse(phrases.say("holds.unknown"))
                                : "",
                        part.place().map(this::place).orElse(""))
                .stream()
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
        String state = ConditionWords.told(record.state().condition(), phrases)
                + record.state().seenOn().map(date -> " on " + date.print()).orElse("")
                + (record.state().contradictory() ? ", " + phrases.say("condition.contradictory") : "")
                + record.state()
                        .notSeenSince()
                        .map(date -> ", " + phrases.say("condition.not_seen") + " on " + date.print())
                        .orElse("");
        line("  " + phrases.labelled(part.label(), state));
        wrapped(facts, "      ");
        wrapped(part.note(), "      ");
        entries.id(part.uid(), "      ");
        record.inspections().forEach(entry -> entries.inspection(entry, record));
    }

    /** Where it is, seen from the first point. */
    private String place(PartPlace place) {
        return phrases.labelled(phrases.say("about.place"), "")
                + phrases.say(
                        "about.place_value",
                        place.right().printFine(units),
                        place.up().printFine(units),
                        place.out().printFine(units));
    }

    private <K extends Enum<K>> void prose(String list, Prose<K> prose) {
        prose.texts()
                .forEach((heading, text) -> wrapped(phrases.labelled(Words.word(phrases, list, heading), text), "  "));
    }

    private void closing() {
        line("");
        wrapped(phrases.caution("caution.record"), "");
        wrapped(phrases.caution("caution.aid"), "");
    }

    private void wrapped(String text, String margin) {
        out.wrapped(text, margin);
    }

    private void line(String text) {
        out.line(text);
    }
}
