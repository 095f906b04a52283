package thalweg.profile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.LineRecord;
import thalweg.logbook.Standing;
import thalweg.text.Phrases;
import thalweg.text.Shown;
import thalweg.text.Width;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** What stands beside the places of a picture, from a bare number to everything that fits a line. */
final class Captions {

    /** Of a place's name [cells]. */
    private static final int LONGEST_NAME = 24;

    private final Phrases phrases;
    private final UnitSystem units;

    Captions(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** From the shortest to the longest; each says what the one before it says. */
    List<String> of(Stop stop) {
        LineRecord place = stop.place();
        String number = place.number() + mark(List.of(place));
        String kind = word("obstacle", place.obstacle().kind());
        String height = height(stop).map(text -> " " + text).orElse("");
        String name = Shown.safe(place.obstacle().name());
        String named = name.isBlank() ? "" : ", " + Width.cut(name, LONGEST_NAME);
        List<String> texts = new ArrayList<>();
        if (stop.fall() != Fall.UNKNOWN) {
            texts.add(number);
        }
        texts.add(number + height);
        texts.add(number + " " + kind + height);
        texts.add(place.number() + " " + kind + height + state(place));
        texts.add(place.number() + " " + kind + height + named + state(place));
        return texts.stream().distinct().toList();
    }

    /** Places that share a number: "7-9!", with the worst of their marks. */
    String of(List<Stop> stops) {
        List<LineRecord> places = stops.stream().map(Stop::place).toList();
        return stops.get(0).number() + "-" + stops.get(stops.size() - 1).number() + mark(places);
    }

    /** How much the line goes down there, or that nobody knows; empty where nothing goes down. */
    Optional<String> height(Stop stop) {
        if (stop.fall() == Fall.UNKNOWN) {
            return Optional.of(phrases.say("profile.unknown." + units.name().toLowerCase(Locale.ROOT)));
        }
        return stop.height() > 0 ? Optional.of(new Length(stop.height()).print(units)) : Optional.empty();
    }

    /**
     * The mark of the worst condition at the stations of those places, and that of what is gone; empty text where there is
     * no station. The mark of what nobody has seen is a dot, which right behind a number would be taken for its own.
     */
    private String mark(List<LineRecord> places) {
        if (places.stream().allMatch(place -> place.stations().isEmpty())) {
            return "";
        }
        Standing standing = places.stream().map(LineRecord::standing).reduce(Standing.NOTHING, Standing::and);
        String mark = ConditionWords.mark(standing.condition(), phrases);
        boolean more = standing.worst().isPresent() && standing.gone() > 0;
        return (more ? ConditionWords.mark(Optional.of(Condition.GONE), phrases) : "")
                + (standing.condition().isPresent() ? mark : " " + mark);
    }

    private String state(LineRecord place) {
        if (place.stations().isEmpty()) {
            return place.obstacle().kind().usuallyRigged() ? ", " + phrases.say("profile.no_station") : "";
        }
        return ", " + ConditionWords.told(place.standing(), phrases);
    }

    /** Mark and word for every condition that marks some place, from good to bad, the unknown one last. */
    List<String> conditions(List<LineRecord> places) {
        Set<Optional<Condition>> marked = new HashSet<>();
        for (LineRecord place : places) {
            if (!place.stations().isEmpty()) {
                marked.add(place.standing().condition());
                if (place.standing().gone() > 0) {
                    marked.add(Optional.of(Condition.GONE));
                }
            }
        }
        return Stream.concat(
                        Arrays.stream(Condition.values()).map(Optional::of), Stream.of(Optional.<Condition>empty()))
                .filter(marked::contains)
                .map(condition -> ConditionWords.told(condition, phrases))
                .toList();
    }

    String word(String list, Enum<?> value) {
        return phrases.say(list + "." + value.name().toLowerCase(Locale.ROOT));
    }
}
