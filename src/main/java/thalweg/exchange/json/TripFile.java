package thalweg.exchange.json;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Finding;
import thalweg.json.Findings;
import thalweg.json.JsonDocument;
import thalweg.logbook.Trip;
import thalweg.logbook.TripText;
import thalweg.plan.ChooseRopes;
import thalweg.plan.Flood;
import thalweg.plan.RopeAtHand;
import thalweg.plan.RopeMargin;
import thalweg.plan.TripRequest;
import thalweg.plan.Watercourse;
import thalweg.plan.Way;
import thalweg.route.PartialDate;
import thalweg.settings.TripFigure;
import thalweg.settings.TripFigures;
import thalweg.units.Length;

/** Reads the file that states a trip to plan. */
public final class TripFile {

    private static final int LONGEST = 200;
    private static final int MOST_PEOPLE = 60;
    private static final int MOST_CALL_OUT = 24 * 60;
    private static final double MOST_METRES = 100_000;
    private static final double MOST_HEIGHT = 9_000;
    private static final double MOST_SHRINKAGE = 0.3;
    private static final double MOST_RESERVE = 50;

    private final FieldReader in;

    private TripFile(FieldReader in) {
        this.in = in;
    }

    /**
     * The trip in a file.
     *
     * @param name of the file, for messages
     * @throws InputException when it is none that can be planned, with every reason
     */
    public static TripRequest read(String name, byte[] bytes) {
        Findings findings = new Findings();
        Optional<TripRequest> trip = new TripFile(JsonDocument.read(name, bytes).reader(findings)).trip();
        if (trip.isPresent() && findings.none()) {
            return trip.get();
        }
        throw new InputException(Sentence.reasons(
                Sentence.of("{0} is no trip that can be planned:", name),
                findings.all().stream().map(Finding::saying).toList()));
    }

    private Optional<TripRequest> trip() {
        String canyon = in.text("canyon", LONGEST);
        Optional<LocalDate> on = parsed("on", in.text("on", LONGEST), TripFile::day);
        Optional<ZoneId> zone = in.optionalText("zone", LONGEST).flatMap(text -> parsed("zone", text, TripFile::zone));
        Optional<Integer> start =
                in.optionalText("start", LONGEST).flatMap(text -> parsed("start", text, TripText::time));
        List<Trip.Person> people = list("people", TripText::person);
        List<RopeAtHand> ropes = list("ropes", text -> RopeAtHand.of(TripText.rope(text)));
        if ((people.isEmpty() && in.texts("people", LONGEST).isEmpty()) || people.size() > MOST_PEOPLE) {
            in.refuse(
                    "people",
                    Sentence.of("names nobody, or more than {0}; write one such as \"Ana, lead, 62 kg\"", MOST_PEOPLE));
        }
        if (ropes.size() > ChooseRopes.MOST_ROPES) {
            in.refuse(
                    "ropes",
                    Sentence.of("has more than {0} ropes; leave out what stays at home", ChooseRopes.MOST_ROPES));
        }
        int sets = (int) in.whole("rope_sets", 1, Trip.MOST_SETS).orElse(1);
        RopeMargin margin = margin();
        Map<TripFigure, Double> figures = new EnumMap<>(TripFigure.class);
        figures.putAll(TripFigures.read(in, "paces"));
        figures.putAll(TripFigures.read(in, "figures"));
        Way approach = in.object("approach").map(this::way).orElse(Way.UNKNOWN);
        Way exit = in.object("exit").map(this::way).orElse(Way.UNKNOWN);
        Optional<Flood> flood = in.word("flood_potential", Flood.class);
        Optional<Watercourse> watercourse = in.object("catchment").map(this::watercourse);
        int callOut = (int) in.whole("call_out_min", 0, MOST_CALL_OUT).orElse(TripRequest.CALL_OUT_MINUTES);
        String tell = in.textOrEmpty("tell", LONGEST);
        Optional<List<String>> paceFrom =
                in.has("pace_from") ? Optional.of(in.texts("pace_from", LONGEST)) : Optional.empty();
        in.refuseUnasked();
        if (!in.sound() || on.isEmpty() || people.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new TripRequest(
                canyon,
                on.get(),
                zone,
                start,
                people,
                ropes,
                sets,
                margin,
                figures,
                approach,
                exit,
                flood,
                watercourse,
                callOut,
                tell,
                paceFrom));
    }

    private RopeMargin margin() {
        double shrinkage = number(in, "shrinkage", 0, MOST_SHRINKAGE).orElse(RopeMargin.STANDARD.shrinkage());
        double reserve = number(in, "reserve_m", 0, MOST_RESERVE)
                .orElse(RopeMargin.STANDARD.reserve().metres());
        return new RopeMargin(shrinkage, new Length(reserve));
    }

    private Way way(FieldReader inner) {
        OptionalDouble metres = number(inner, "distance_m", 0, MOST_METRES);
        OptionalDouble up = number(inner, "up_m", 0, MOST_HEIGHT);
        OptionalDouble down = number(inner, "down_m", 0, MOST_HEIGHT);
        if (metres.isEmpty()) {
            inner.refuse("distance_m", Sentence.of("is missing; state how long the way is [m], or leave the way out"));
        }
        inner.refuseUnasked();
        return new Way(
                metres.isPresent() ? Optional.of(metres.getAsDouble()) : Optional.empty(),
                up.orElse(0),
                down.orElse(0),
                Optional.empty());
    }

    private Watercourse watercourse(FieldReader inner) {
        OptionalDouble length = number(inner, "length_m", 1, MOST_METRES);
        OptionalDouble fall = number(inner, "fall_m", 1, MOST_HEIGHT);
        if (length.isEmpty() || fall.isEmpty()) {
            inner.refuse(
                    "length_m",
                    Sentence.of("and fall_m are both needed for the estimate; state both, or leave catchment out"));
        }
        inner.refuseUnasked();
        return new Watercourse(length.orElse(1), fall.orElse(1));
    }

    /** The number where it is believed; else it is refused and left out. */
    private static OptionalDouble number(FieldReader in, String key, double least, double most) {
        OptionalDouble value = in.real(key);
        if (value.isPresent() && !(value.getAsDouble() >= least && value.getAsDouble() <= most)) {
            in.refuse(key, Sentence.of("is out of range; it should be {0} to {1}", plain(least), plain(most)));
            return OptionalDouble.empty();
        }
        return value;
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString(Math.round(number)) : Double.toString(number);
    }

    private <T> List<T> list(String key, Function<String, T> parse) {
        List<T> entries = new ArrayList<>();
        for (String text : in.texts(key, LONGEST)) {
            parsed(key, text, parse).ifPresent(entries::add);
        }
        return entries;
    }

    private <T> Optional<T> parsed(String key, String text, Function<String, T> parse) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(parse.apply(text));
        } catch (InputException e) {
            in.refuse(key, Sentence.of("cannot be used: {0}", e.saying()));
            return Optional.empty();
        }
    }

    private static LocalDate day(String text) {
        PartialDate date = PartialDate.parse(text);
        if (!date.isExact()) {
            throw new InputException(Sentence.of("A trip is planned for a day, such as 2027-05-08."));
        }
        return date.earliest();
    }

    private static ZoneId zone(String text) {
        try {
            return ZoneId.of(text.strip());
        } catch (DateTimeException e) {
            throw new InputException(
                    Sentence.of("There is no time zone \"{0}\"; write one such as Europe/Paris.", text), e);
        }
    }
}
