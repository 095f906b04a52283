package thalweg.sheet;

import thalweg.logbook.LineRecord;

/** How places of the line, stations and their sections are called, so that every reference finds its target. */
final class Places {

    private final Wording wording;

    Places(Wording wording) {
        this.wording = wording;
    }

    /** "3. drop, Black Pot". */
    String shortName(LineRecord place) {
        return named("sheet.place", "sheet.place.named", place);
    }

    /** "Place 3: drop, Black Pot". */
    String heading(LineRecord place) {
        return named("sheet.place.heading", "sheet.place.heading.named", place);
    }

    private String named(String nameless, String named, LineRecord place) {
        String number = Integer.toString(place.number());
        String kind = wording.of("obstacle", place.obstacle().kind());
        String name = place.obstacle().name();
        return name.isBlank() ? wording.say(nameless, number, kind) : wording.say(named, number, kind, name);
    }

    /** The id of the section about a place. */
    static String id(LineRecord place) {
        return "place-" + place.number();
    }

    /** The id of the section about a station, counted from 0 at its place. */
    static String id(LineRecord place, int station) {
        return "station-" + place.number() + "-" + (station + 1);
    }
}
