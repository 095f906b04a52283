package thalweg.profile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.logbook.Condition;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
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
     * The mark of the worst condition at the stations of those places; empty text where there is no station. The mark of
     * what nobody has seen is a dot, which right behind a number would be taken for its own.
     */
    private String mark(List<LineRecord> places) {
        List<StationRecord> stations =
                places.stream().flatMap(place -> place.stations().stream()).toList();
        Optional<Condition> worst = worst(stations);
        return stations.isEmpty() ? "" : worst.isPresent() ? mark(worst) : " " + mark(worst);
    }

    private String state(LineRecord place) {
        if (place.stations().isEmpty()) {
            return place.obstacle().kind().usuallyRigged() ? ", " + phrases.say("profile.no_station") : "";
        }
        Optional<Condition> worst = worst(place.stations());
        long unseen =
                place.stations().stream().mapToLong(StationRecord::neverSeen).sum();
        String more = worst.isPresent() && unseen > 0 ? " " + phrases.say("profile.unseen", unseen) : "";
        return ", " + told(worst) + more;
    }

    /** Mark and word for every condition that is the worst of some place, from good to bad, the unknown one last. */
    List<String> conditions(List<LineRecord> places) {
        List<Optional<Condition>> worst = places.stream()
                .filter(place -> !place.stations().isEmpty())
                .map(place -> worst(place.stations()))
                .toList();
        return Stream.concat(
                        Arrays.stream(Condition.values()).map(Optional::of), Stream.of(Optional.<Condition>empty()))
                .filter(worst::contains)
                .map(this::told)
                .toList();
    }

    private static Optional<Condition> worst(List<StationRecord> stations) {
        return stations.stream().flatMap(station -> station.worst().stream()).reduce(Condition::worse);
    }

    private String told(Optional<Condition> condition) {
        return mark(condition) + " " + phrases.say("condition." + key(condition));
    }

    private String mark(Optional<Condition> condition) {
        return phrases.say("condition.mark." + key(condition));
    }

    private static String key(Optional<Condition> condition) {
        return condition.map(known -> known.name().toLowerCase(Locale.ROOT)).orElse("unknown");
    }

    String word(String list, Enum<?> value) {
        return phrases.say(list + "." + value.name().toLowerCase(Locale.ROOT));
    }
}
