package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.body.TripBody;
import thalweg.json.Json;
import thalweg.logbook.CanyonName;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.logbook.TripText;
import thalweg.logbook.TripWords;
import thalweg.plan.PaceWords;
import thalweg.plan.PacedTrip;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** Trips as text for a terminal and as JSON. */
final class TripReport {

    private final Phrases phrases;
    private final UnitSystem units;

    TripReport(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** Day, state, name, canyon, whereabouts, people, id. */
    List<String> row(TripInCanyon shown) {
        Trip trip = shown.trip();
        return List.of(
                trip.on().map(day -> day.print()).orElse(phrases.say("trips.no_day")),
                Words.word(phrases, "trip_state", trip.state()),
                name(trip),
                name(shown.canyon()),
                shown.canyon().whereabouts(),
                trip.people().isEmpty()
                        ? phrases.say("unknown")
                        : Integer.toString(trip.people().size()),
                trip.uid().text());
    }

    private String name(Trip trip) {
        return trip.name().isEmpty() ? phrases.say("trip.unnamed") : trip.name();
    }

    /** The name of a canyon; an invented one says so wherever its name stands. */
    static String name(CanyonName canyon) {
        return canyon.invented() ? canyon.name() + " (invented)" : canyon.name();
    }

    /**
     * A trip in full; what was not said is unknown.
     *
     * @param paced how it went against the figures; empty where its canyon is gone
     */
    String of(TripInCanyon shown, Optional<PacedTrip> paced) {
        Trip trip = shown.trip();
        CanyonName canyon = shown.canyon();
        List<String> lines = new ArrayList<>();
        lines.add(name(trip));
        lines.add(name(canyon) + (canyon.whereabouts().isEmpty() ? "" : ", " + canyon.whereabouts()));
        lines.add("id " + trip.uid().text());
        lines.add(fact("trip.state", Optional.of(Words.word(phrases, "trip_state", trip.state()))));
        lines.add(fact("trip.on", trip.on().map(day -> day.print())));
        lines.add(fact("trip.start", trip.start().map(TripText::printTime)));
        lines.add(fact("trip.back", trip.back().map(TripText::printTime)));
        lines.add(fact("trip.water", trip.water().map(level -> Words.word(phrases, "water", level))));
        lines.add(fact("trip.people", count(trip.people().size())));
        trip.people().forEach(person -> lines.add("  " + TripWords.person(person, phrases, units)));
        if (!trip.people().isEmpty()) {
            lines.add("  " + TripWords.weights(trip, phrases, units));
        }
        lines.add(fact("trip.ropes", count(trip.ropes().size())));
        trip.ropes().forEach(rope -> lines.add("  " + TripText.print(rope, units)));
        trip.ropeSets().ifPresent(sets -> lines.add(fact("trip.sets", Optional.of(Integer.toString(sets)))));
        trip.paceFrom()
                .ifPresent(from -> lines.add(fact("trip.pace", Optional.of(Words.word(phrases, "trip_pace", from)))));
        if (!trip.times().isEmpty()) {
            lines.add(phrases.say("trip.times") + ":");
            trip.times().forEach(time -> lines.add("  " + TripWords.time(time, phrases)));
        }
        paced.flatMap(went -> PaceWords.of(went, phrases)).ifPresent(lines::add);
        if (!trip.note().isEmpty()) {
            lines.add("");
            lines.addAll(trip.note().lines().toList());
        }
        return String.join("\n", lines) + "\n";
    }

    private static Optional<String> count(int size) {
        return size == 0 ? Optional.empty() : Optional.of(Integer.toString(size));
    }

    private String fact(String key, Optional<String> value) {
        return phrases.labelled(phrases.say(key), value.orElse(phrases.say("unknown")));
    }

    /** The fields of a trip as a file of records has them, with its id and what its canyon is called. */
    static Json json(TripInCanyon shown) {
        Json.Fields fields = TripBody.write(shown.trip())
                .with("uid", Json.of(shown.trip().uid().text()))
                .with("canyon_name", Json.of(shown.canyon().name()));
        return shown.canyon().whereabouts().isEmpty()
                ? fields
                : fields.with("where", Json.of(shown.canyon().whereabouts()));
    }
}
