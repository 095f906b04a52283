package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.StationRecord;
import thalweg.text.Phrases;

/** What stays with this database, as far as `show` tells of it. */
final class LocalReport {

    private final Phrases phrases;
    private final LocalRecord local;

    LocalReport(Phrases phrases, LocalRecord local) {
        this.phrases = phrases;
        this.local = local;
    }

    /** "2 trips, 1 sheet given out: see `trips`, `given`"; empty text where there is nothing. */
    String counts() {
        List<String> counts = new ArrayList<>();
        List<String> commands = new ArrayList<>();
        int trips = local.trips().size();
        int sheets = local.countingSheets().size();
        int notes = local.notes().size();
        add(counts, commands, trips, phrases.count("show.trips", trips), "`trips`");
        add(counts, commands, sheets, phrases.count("show.sheets", sheets), "`given`");
        add(counts, commands, notes, phrases.count("show.notes", notes), "`show --with-private`");
        return counts.isEmpty()
                ? ""
                : phrases.say("show.local", String.join(", ", counts), String.join(", ", commands)) + "\n";
    }

    private static void add(List<String> counts, List<String> commands, int number, String words, String command) {
        if (number > 0) {
            counts.add(words);
            commands.add(command);
        }
    }

    /** The private notes about the canyon and what is in it, each under what it is about; empty text where there is none. */
    String notes(CanyonRecord canyon) {
        StringBuilder out = new StringBuilder();
        note(out, canyon.canyon().name(), canyon.canyon().uid());
        for (LineRecord place : canyon.line()) {
            String kind = Words.word(phrases, "obstacle", place.obstacle().kind());
            note(out, place.number() + " " + kind, place.obstacle().uid());
            place.stations().forEach(station -> station(out, station));
        }
        return out.isEmpty() ? "" : heading() + out;
    }

    /** The private note about a station; empty text where there is none. */
    String note(StationRecord station) {
        StringBuilder out = new StringBuilder();
        station(out, station);
        return out.isEmpty() ? "" : heading() + out;
    }

    private String heading() {
        return phrases.say("local.heading") + "\n";
    }

    private void station(StringBuilder out, StationRecord station) {
        note(out, station.station().name(), station.station().uid());
    }

    private void note(StringBuilder out, String name, Uid about) {
        local.noteAbout(about).ifPresent(text -> {
            out.append("  ").append(name).append(":\n");
            text.lines().forEach(line -> out.append("    ").append(line).append('\n'));
        });
    }
}
