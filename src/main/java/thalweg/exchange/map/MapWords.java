package thalweg.exchange.map;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.route.PartialDate;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** What places and stations are called on a map, and what is said of them. */
final class MapWords {

    private final Phrases phrases;
    private final UnitSystem units;

    MapWords(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** "3 drop, 18 m, the long one". */
    String place(LineRecord place) {
        return Stream.of(
                        place.number() + " "
                                + phrases.say("obstacle."
                                        + place.obstacle().kind().name().toLowerCase(Locale.ROOT)),
                        place.obstacle()
                                .height()
                                .map(height -> height.print(units))
                                .orElse(""),
                        place.obstacle().name())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** "3 Left ledge". */
    String station(LineRecord place, StationRecord station) {
        return place.number() + " " + station.station().name();
    }

    /** Condition and when anybody looked last, with the place that it is at. */
    String about(LineRecord place, StationRecord station) {
        return phrases.say(
                "map.station",
                place(place),
                station.parts().isEmpty()
                        ? phrases.say("map.no_parts")
                        : phrases.say(
                                "map.condition",
                                ConditionWords.told(station.standing(), phrases),
                                station.oldestLook().map(PartialDate::print).orElse(phrases.say("unknown"))));
    }

    /** What everybody has to know who takes a point from a file for a place to hang on. */
    String caution(boolean invented) {
        return phrases.say("map.caution") + (invented ? " " + phrases.say("map.invented") : "");
    }

    /** A condition as files have it. */
    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
