package thalweg.logbook;

import java.util.Locale;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** Who goes on a trip, in words; what nobody said is called unknown. */
public final class TripWords {

    private TripWords() {}

    /** "Ana, lead, 62 kg"; "Bo, role unknown, weight unknown". */
    public static String person(Trip.Person person, Phrases phrases, UnitSystem units) {
        String role = person.role()
                .map(known -> phrases.say("trip_role." + known.name().toLowerCase(Locale.ROOT)))
                .orElse(phrases.say("trip.role_unknown"));
        String weight = person.weight().map(known -> known.print(units)).orElse(phrases.say("trip.weight_unknown"));
        return String.join(", ", person.name(), role, weight);
    }

    /** "5 Rideau: reached 10:05, left 10:31"; what nobody noted is called unknown. */
    public static String time(TripTime time, Phrases phrases) {
        return phrases.say(
                "trip.time",
                time.label(),
                time.reached().map(TripText::printTime).orElse(phrases.say("unknown")),
                time.left().map(TripText::printTime).orElse(phrases.say("unknown")));
    }

    /** The weights together, with how many of them are in the sum; without any there is no sum. */
    public static String weights(Trip trip, Phrases phrases, UnitSystem units) {
        int all = trip.people().size();
        String sum = trip.weightKnown().print(units);
        if (trip.weighed() == all) {
            return phrases.count("trip.weight.all", all, sum);
        }
        return trip.weighed() == 0
                ? phrases.count("trip.weight.none", all)
                : phrases.say("trip.weight.some", trip.weighed(), all, sum);
    }
}
