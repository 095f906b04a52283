package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Standing;
import thalweg.logbook.StationRecord;
import thalweg.place.Position;
import thalweg.route.Canyon;
import thalweg.route.Part;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.route.Times;
import thalweg.sheet.Durations;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** What is known of a record, as text to read beside a list or by itself. */
final class About {

    private static final int MARGIN = 2;

    private About() {}

    /** A canyon in short: grades, age of the news, what somebody wrote about it. */
    static List<Paragraph> canyon(CanyonRecord record, Surroundings around) {
        Canyon canyon = record.canyon();
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(canyon.name(), Style.STRONG));
        if (canyon.invented()) {
            text.add(Paragraph.of(around.say("invented"), Style.CAUTION));
        }
        if (!canyon.otherNames().isEmpty()) {
            text.add(Paragraph.of(String.join(", ", canyon.otherNames()), Style.FAINT));
        }
        if (!canyon.whereabouts().isEmpty()) {
            text.add(Paragraph.of(canyon.whereabouts()));
        }
        text.add(Paragraph.gap());
        text.add(fact(around, "about.french", canyon.french().map(grade -> grade.print())));
        text.add(fact(around, "about.american", canyon.american().map(grade -> grade.print())));
        text.add(fact(around, "about.longest_drop", record.longestDrop().map(drop -> drop.print(around.units()))));
        text.add(fact(around, "about.newest", record.newestInspection().map(date -> Looks.ago(around, date))));
        text.add(fact(around, "about.oldest", record.oldestLastSeen().map(date -> Looks.ago(around, date))));
        Standing standing = record.standing();
        if (standing.gone() > 0) {
            text.add(Paragraph.of(around.say("about.gone", standing.gone()), Style.BAD));
        }
        if (standing.neverSeen() > 0) {
            text.add(Paragraph.of(around.say("about.never_seen", standing.neverSeen()), Style.MIND));
        }
        text.add(Paragraph.of(times(canyon.times(), around)));
        canyon.position().ifPresent(at -> text.add(position(at)));
        text.addAll(prose(around, "canyon_text", canyon.prose()));
        return text;
    }

    private static String times(Times times, Surroundings around) {
        return around.say(
                "about.times",
                duration(times.approachMinutes(), around),
                duration(times.descentMinutes(), around),
                duration(times.exitMinutes(), around));
    }

    private static String duration(Optional<Integer> minutes, Surroundings around) {
        return Looks.orUnknown(around, minutes.map(known -> Durations.print(known, around.phrases())));
    }

    /** A place on the line. */
    static List<Paragraph> place(LineRecord record, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(placeName(record, around), Style.STRONG));
        record.obstacle()
                .distance()
                .ifPresent(distance ->
                        text.add(Paragraph.of(around.say("about.distance", distance.print(around.units())))));
        record.obstacle().position().ifPresent(at -> text.add(position(at)));
        if (!record.obstacle().note().isEmpty()) {
            text.add(Paragraph.of(record.obstacle().note()));
        }
        for (StationRecord station : record.stations()) {
            text.add(Paragraph.gap());
            text.addAll(station(station, around));
        }
        return text;
    }

    /** "3 drop, 18 m, the long one". */
    static String placeName(LineRecord record, Surroundings around) {
        return placeName(record, "", around);
    }

    /** The same where a height that nobody entered is called unknown. */
    static String placeOnLine(LineRecord record, Surroundings around) {
        return placeName(record, record.obstacle().kind().goesDown() ? around.say("about.no_height") : "", around);
    }

    private static String placeName(LineRecord record, String noHeight, Surroundings around) {
        return Stream.of(
                        record.number() + " "
                                + Looks.word(
                                        around, "obstacle", record.obstacle().kind()),
                        record.obstacle()
                                .height()
                                .map(height -> height.print(around.units()))
                                .orElse(noHeight),
                        record.obstacle().name())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** A station with the state of each of its parts. */
    static List<Paragraph> station(StationRecord record, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(around.say("about.station", record.station().name()), Style.STRONG));
        text.add(fact(around, "about.side", record.station().side().map(side -> Looks.word(around, "side", side))));
        text.add(fact(around, "about.rope", record.station().ropeNeeded().map(rope -> rope.print(around.units()))));
        record.station().position().ifPresent(at -> text.add(position(at)));
        record.station()
                .exposure()
                .ifPresent(exposure -> text.add(
                        fact(around, "about.exposure", Optional.of(Looks.word(around, "exposure", exposure)))));
        text.addAll(prose(around, "station_text", record.station().prose()));
        for (AnchorRecord anchor : record.anchors()) {
            text.add(Paragraph.of(anchorName(anchor, around), Style.STRONG));
            anchor.parts().forEach(part -> text.add(partLine(part, around)));
        }
        if (record.anchors().isEmpty()) {
            text.add(Paragraph.of(around.say("about.no_anchor"), Style.MIND));
        }
        record.countingNotes().stream().findFirst().ifPresent(entry -> text.addAll(note(entry, around)));
        return text;
    }

    private static Paragraph partLine(PartRecord part, Surroundings around) {
        String line = around.labelled(part.part().label(), Looks.state(around, part.state()));
        return new Paragraph(MARGIN, line, Looks.style(part.state().condition()));
    }

    /** The role of an anchor, and its name where it has one. */
    static String anchorName(AnchorRecord record, Surroundings around) {
        String role = Looks.word(around, "role", record.anchor().role());
        return record.anchor().name().isEmpty()
                ? role
                : around.labelled(role, record.anchor().name());
    }

    /** A part with everything that was found on it. */
    static List<Paragraph> part(PartRecord record, Surroundings around) {
        Part part = record.part();
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(part.label(), Style.STRONG));
        text.add(Paragraph.of(
                Looks.state(around, record.state()), Looks.style(record.state().condition())));
        text.add(Paragraph.of(hardware(part, around)));
        text.add(fact(around, "about.placed", part.placed().map(date -> Looks.ago(around, date))));
        record.replacedSince()
                .ifPresent(date -> text.add(
                        Paragraph.of(around.say("parts.replaced_since", Looks.ago(around, date)), Style.CAUTION)));
        text.add(fact(around, "about.strength", part.strength().map(force -> force.print(around.units()))));
        part.axialStrength()
                .ifPresent(force -> text.add(fact(around, "about.axial", Optional.of(force.print(around.units())))));
        if (part.kind().isPoint() || part.holdsAlone().isPresent()) {
            text.add(Paragraph.of(part.holdsAlone()
                    .map(belief -> Looks.word(around, "holds", belief))
                    .orElse(around.say("holds.unknown"))));
        }
        if (part.kind().isPoint() || part.place().isPresent()) {
            text.add(fact(
                    around,
                    "about.place",
                    part.place()
                            .map(place -> around.say(
                                    "about.place_value",
                                    place.right().printFine(around.units()),
                                    place.up().printFine(around.units()),
                                    place.out().printFine(around.units())))));
        }
        if (!part.note().isEmpty()) {
            text.add(Paragraph.of(part.note()));
        }
        text.add(Paragraph.gap());
        text.add(Paragraph.of(around.say("about.inspections"), Style.STRONG));
        if (record.inspections().isEmpty()) {
            text.add(Paragraph.of(around.say("about.no_inspections"), Style.FAINT));
        }
        record.inspections().forEach(entry -> text.addAll(AboutEntry.inspection(entry, record, around)));
        return text;
    }

    /** What it is made of, in one line. */
    static String hardware(Part part, Surroundings around) {
        Part.Hardware made = part.hardware();
        return Stream.of(
                        Looks.word(around, "part", part.kind()),
                        made.material(),
                        made.size(),
                        made.standard(),
                        made.maker(),
                        made.batch())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** A rigging note in full. */
    static List<Paragraph> note(Entry<RiggingNote> entry, Surroundings around) {
        RiggingNote note = entry.content();
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(
                around.say("about.note", Looks.ago(around, note.on()), name(around, note.by())), Style.STRONG));
        text.addAll(prose(around, "note_text", note.prose()));
        return text;
    }

    /** A person's name, or that it is unknown. */
    static String name(Surroundings around, String by) {
        return by.isEmpty() ? around.say("unknown") : by;
    }

    private static <K extends Enum<K>> List<Paragraph> prose(Surroundings around, String list, Prose<K> prose) {
        List<Paragraph> text = new ArrayList<>();
        prose.texts()
                .forEach((heading, words) ->
                        text.add(Paragraph.of(around.labelled(Looks.word(around, list, heading), words))));
        return text;
    }

    private static Paragraph position(Position at) {
        return Paragraph.of(at.print(), Style.FAINT);
    }

    private static Paragraph fact(Surroundings around, String key, Optional<String> value) {
        return Paragraph.of(around.labelled(around.say(key), Looks.orUnknown(around, value)));
    }

    /** How old the news of a canyon is, in one line, with what is missing first, as a narrow line cuts its end. */
    static String news(CanyonRecord record, Surroundings around) {
        Standing standing = record.standing();
        String gone = standing.gone() == 0 ? "" : around.phrases().count("canyon.parts_gone", standing.gone());
        String unseen = standing.neverSeen() == 0 ? "" : around.phrases().count("canyon.unseen", standing.neverSeen());
        Optional<PartialDate> newest = record.newestInspection();
        Optional<PartialDate> oldest = record.oldestLastSeen();
        if (newest.isEmpty() || oldest.isEmpty()) {
            return gone + unseen + around.say("canyon.no_news");
        }
        return gone
                + unseen
                + around.say("canyon.news", Looks.ago(around, newest.get()), Looks.ago(around, oldest.get()));
    }
}
