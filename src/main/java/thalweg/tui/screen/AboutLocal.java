package thalweg.tui.screen;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonName;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.GivenSheet;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.logbook.TripText;
import thalweg.logbook.TripWords;
import thalweg.route.PartialDate;
import thalweg.text.Width;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** What stays with this database, as text to read; a screen never mixes it with what others get. */
final class AboutLocal {

    private static final int MARGIN = 2;

    private AboutLocal() {}

    /**
     * What is said about a thing, with the private note about it in a block of its own below the name: at the end it
     * would fall out of a pane that does not scroll.
     *
     * @param text the name first
     */
    static List<Paragraph> withNote(List<Paragraph> text, LocalRecord local, Uid about, Surroundings around) {
        Optional<String> note = local.noteAbout(about);
        if (note.isEmpty()) {
            return text;
        }
        List<Paragraph> whole = new ArrayList<>(text);
        whole.addAll(
                1,
                List.of(
                        Paragraph.gap(),
                        Paragraph.of(around.say("local.heading"), Style.CAUTION),
                        Paragraph.of(note.get()),
                        Paragraph.gap()));
        return whole;
    }

    /**
     * A name with a sign behind it where there is a private note about what it names.
     *
     * @param room for both [cells]; the name is cut to keep the sign
     */
    static String marked(String name, LocalRecord local, Uid about, int room, Surroundings around) {
        if (local.notesAbout(about).isEmpty()) {
            return name;
        }
        String sign = " " + around.say("local.mark");
        return Width.cut(name, Math.max(0, room - Width.of(sign))) + sign;
    }

    /** A canyon with the private note about it, and how much else stays here. */
    static List<Paragraph> canyon(CanyonRecord record, LocalRecord local, Surroundings around) {
        List<Paragraph> text = new ArrayList<>(About.canyon(record, around));
        text.addAll(counts(local, around));
        return withNote(text, local, record.canyon().uid(), around);
    }

    /** How many trips and sheets given out there are; nothing where there are none. */
    private static List<Paragraph> counts(LocalRecord local, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        if (!local.trips().isEmpty() || !local.countingSheets().isEmpty()) {
            text.add(Paragraph.gap());
        }
        if (!local.trips().isEmpty()) {
            text.add(Paragraph.of(
                    around.phrases().count("local.trips", local.trips().size()), Style.FAINT));
        }
        if (!local.countingSheets().isEmpty()) {
            int sheets = local.countingSheets().size();
            text.add(Paragraph.of(around.phrases().count("local.sheets", sheets), Style.FAINT));
        }
        return text;
    }

    /** The name of a canyon; an invented one says so wherever its name stands. */
    static String name(CanyonName canyon, Surroundings around) {
        return canyon.invented() ? canyon.name() + " " + around.say("canyons.invented") : canyon.name();
    }

    /** A trip in full; what was not said is unknown. */
    static List<Paragraph> trip(TripInCanyon shown, Surroundings around) {
        Trip trip = shown.trip();
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(trip.name().isEmpty() ? around.say("trip.unnamed") : trip.name(), Style.STRONG));
        canyon(shown.canyon(), around, text);
        text.add(Paragraph.of(around.say("local.heading"), Style.CAUTION));
        text.add(Paragraph.gap());
        text.add(fact(around, "trip.state", Optional.of(Looks.word(around, "trip_state", trip.state()))));
        text.add(fact(around, "trip.on", trip.on().map(day -> when(day, around))));
        if (trip.isOverdue(around.today())) {
            text.add(Paragraph.of(around.say("trip.overdue"), Style.MIND));
        }
        text.add(fact(around, "trip.start", trip.start().map(TripText::printTime)));
        text.add(fact(around, "trip.back", trip.back().map(minutes -> back(trip, minutes, around))));
        text.add(fact(around, "trip.water", trip.water().map(level -> Looks.word(around, "water", level))));
        people(trip, around, text);
        ropes(trip, around, text);
        trip.ropeSets().ifPresent(sets -> text.add(fact(around, "trip.sets", Optional.of(Integer.toString(sets)))));
        trip.paceFrom()
                .ifPresent(from ->
                        text.add(fact(around, "trip.pace", Optional.of(Looks.word(around, "trip_pace", from)))));
        times(trip, around, text);
        if (!trip.note().isEmpty()) {
            text.add(Paragraph.gap());
            text.add(Paragraph.of(trip.note()));
        }
        return text;
    }

    private static void canyon(CanyonName canyon, Surroundings around, List<Paragraph> text) {
        String where = canyon.whereabouts().isEmpty() ? "" : ", " + canyon.whereabouts();
        text.add(Paragraph.of(name(canyon, around) + where));
    }

    /** With how far ahead it lies, or how long ago it was; a month or year that is not over says neither. */
    private static String when(PartialDate day, Surroundings around) {
        LocalDate today = around.today();
        if (day.latest().isBefore(today)) {
            return Looks.ago(around, day);
        }
        if (!day.isExact()) {
            return day.print();
        }
        long days = ChronoUnit.DAYS.between(today, day.earliest());
        return day.print() + ", "
                + (days == 0 ? around.say("trip.today") : around.phrases().count("trip.in", days));
    }

    private static String back(Trip trip, int minutes, Surroundings around) {
        String time = TripText.printTime(minutes);
        return trip.start().filter(start -> start > minutes).isPresent() ? around.say("trip.next_day", time) : time;
    }

    private static void people(Trip trip, Surroundings around, List<Paragraph> text) {
        text.add(Paragraph.gap());
        if (trip.people().isEmpty()) {
            text.add(fact(around, "trip.people", Optional.empty()));
            return;
        }
        int all = trip.people().size();
        text.add(Paragraph.of(around.labelled(around.say("trip.people"), Integer.toString(all)), Style.STRONG));
        trip.people()
                .forEach(person -> text.add(new Paragraph(
                        MARGIN, TripWords.person(person, around.phrases(), around.units()), Style.NORMAL)));
        text.add(Paragraph.of(TripWords.weights(trip, around.phrases(), around.units())));
    }

    private static void ropes(Trip trip, Surroundings around, List<Paragraph> text) {
        text.add(Paragraph.gap());
        if (trip.ropes().isEmpty()) {
            text.add(fact(around, "trip.ropes", Optional.empty()));
            return;
        }
        text.add(Paragraph.of(
                around.labelled(
                        around.say("trip.ropes"), Integer.toString(trip.ropes().size())),
                Style.STRONG));
        trip.ropes()
                .forEach(rope -> text.add(new Paragraph(MARGIN, TripText.print(rope, around.units()), Style.NORMAL)));
    }

    /** Where nothing was noted, nothing is said: most trips are only planned. */
    private static void times(Trip trip, Surroundings around, List<Paragraph> text) {
        if (trip.times().isEmpty()) {
            return;
        }
        text.add(Paragraph.gap());
        text.add(Paragraph.of(around.say("trip.times"), Style.STRONG));
        trip.times()
                .forEach(time -> text.add(new Paragraph(MARGIN, TripWords.time(time, around.phrases()), Style.NORMAL)));
    }

    /** A sheet that was given out, and whether the records say something else since. */
    static List<Paragraph> sheet(GivenSheet shown, Surroundings around) {
        SheetGiven given = shown.entry().content();
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(around.say("given.number", given.mark().print()), Style.STRONG));
        canyon(shown.canyon(), around, text);
        text.add(Paragraph.of(around.say("local.heading"), Style.CAUTION));
        text.add(Paragraph.gap());
        text.add(fact(around, "given.on", Optional.of(Looks.ago(around, given.on()))));
        text.add(fact(around, "given.to", Optional.of(given.to()).filter(to -> !to.isEmpty())));
        text.add(fact(around, "given.file", Optional.of(given.file())));
        text.add(Paragraph.of(state(shown, around), shown.changedSince() ? Style.MIND : Style.NORMAL));
        if (!shown.entry().counts()) {
            text.add(Paragraph.of(around.say("given.withdrawn"), Style.MIND));
        }
        return text;
    }

    private static String state(GivenSheet shown, Surroundings around) {
        return around.say(shown.changedSince() ? "given.changed" : "given.unchanged");
    }

    private static Paragraph fact(Surroundings around, String key, Optional<String> value) {
        return Paragraph.of(around.labelled(around.say(key), Looks.orUnknown(around, value)));
    }
}
