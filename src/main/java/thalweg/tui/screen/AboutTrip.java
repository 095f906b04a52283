package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import thalweg.logbook.Entry;
import thalweg.logbook.Round;
import thalweg.logbook.RoundVisit;
import thalweg.logbook.Trip;
import thalweg.plan.PaceWords;
import thalweg.route.PartialDate;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** A trip as its own screen tells of it. */
final class AboutTrip {

    private AboutTrip() {}

    /** The rounds on the day of a trip that count, newest first; none where it has no day. */
    static List<RoundVisit> rounds(Told.TripLoaded told) {
        return RoundVisit.all(told.canyon()).stream()
                .filter(visit -> visit.round().counts())
                .filter(visit -> told.shown()
                        .trip()
                        .on()
                        .filter(day -> overlap(day, visit.round()))
                        .isPresent())
                .toList();
    }

    private static boolean overlap(PartialDate day, Entry<Round> round) {
        PartialDate other = round.content().on();
        return !day.latest().isBefore(other.earliest()) && !other.latest().isBefore(day.earliest());
    }

    /** In one line: day and state, or what is left to do once it is done. */
    static Paragraph standing(Told.TripLoaded told, Surroundings around) {
        Trip trip = told.shown().trip();
        String day = trip.on().map(PartialDate::print).orElse(around.say("trips.no_day"));
        String state = Looks.word(around, "trip_state", trip.state());
        if (trip.state() == Trip.State.DONE && rounds(told).isEmpty()) {
            return Paragraph.of(around.say("trip.not_entered"), Style.MIND);
        }
        boolean overdue = trip.isOverdue(around.today());
        return overdue
                ? Paragraph.of(around.say("trip.standing_over"), Style.MIND)
                : Paragraph.of(around.say("trip.standing", day, state), Style.STRONG);
    }

    /** Everything that is known of it, and what was found on its day. */
    static List<Paragraph> of(Told.TripLoaded told, Surroundings around) {
        List<Paragraph> text = new ArrayList<>(AboutLocal.trip(told.shown(), around));
        PaceWords.of(told.paced(), around.phrases()).ifPresent(line -> text.add(Paragraph.of(line)));
        text.add(Paragraph.gap());
        text.add(Paragraph.of(around.say("trip.found"), Style.STRONG));
        List<RoundVisit> rounds = rounds(told);
        if (rounds.isEmpty()) {
            text.add(Paragraph.of(around.say("trip.found_nothing"), Style.FAINT));
        }
        rounds.forEach(visit -> text.addAll(AboutEntry.round(visit, told.canyon(), around)));
        return text;
    }
}
