package thalweg.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.logbook.Trip;
import thalweg.logbook.TripTime;
import thalweg.logbook.WaterLevel;
import thalweg.units.Mass;

/** A trip as a body: weights in grams, ropes in centimetres, times in minutes after midnight. */
public final class TripBody {

    /** The key of the canyon it goes to. */
    public static final String PARENT = "canyon";

    private static final double GRAMS = 1000;

    private TripBody() {}

    /** Its fields, what is unknown left out. */
    public static Json.Fields write(Trip trip) {
        Json.Fields fields = Json.fields()
                .put(PARENT, trip.canyon().text())
                .put("state", trip.state())
                .putKnown("on", trip.on().map(date -> Json.of(date.print())))
                .put("name", trip.name())
                .putKnown("start_min", Fields.whole(trip.start()))
                .putKnown("back_min", Fields.whole(trip.back()))
                .putWord("water", trip.water())
                .put("note", trip.note())
                .putKnown("rope_sets", Fields.whole(trip.ropeSets()))
                .putWord("pace_from", trip.paceFrom())
                .done();
        fields = withList(fields, "people", trip.people(), TripBody::write);
        fields = withList(fields, "ropes", trip.ropes(), TripBody::write);
        return withList(fields, "times", trip.times(), TripBody::write);
    }

    private static <T> Json.Fields withList(Json.Fields fields, String key, List<T> values, Function<T, Json> writer) {
        return values.isEmpty()
                ? fields
                : fields.with(key, new Json.Items(values.stream().map(writer).toList()));
    }

    private static Json write(Trip.Person person) {
        return Json.fields()
                .put("name", person.name())
                .putWord("role", person.role())
                .putKnown("weight_g", person.weight().map(mass -> Json.of(Math.round(mass.kilograms() * GRAMS))))
                .done();
    }

    private static Json write(Trip.Rope rope) {
        return Json.fields()
                .put("length_cm", rope.length().inCentimetres())
                .put("kind", rope.kind())
                .done();
    }

    private static Json write(TripTime time) {
        return Json.fields()
                .put("place", time.place().text())
                .put("label", time.label())
                .putKnown("reached_min", Fields.whole(time.reached()))
                .putKnown("left_min", Fields.whole(time.left()))
                .done();
    }

    /** The trip; empty where a rule was broken. */
    public static Optional<Trip> read(Uid uid, Uid canyon, FieldReader in) {
        Trip.State state = in.requiredWord("state", Trip.State.class);
        var on = Fields.date(in, "on");
        String name = in.textOrEmpty("name", Limits.NAME);
        var start = Fields.whole(in, "start_min", 0, Trip.DAY - 1L);
        var back = Fields.whole(in, "back_min", 0, Trip.DAY - 1L);
        var water = in.word("water", WaterLevel.class);
        String note = in.linesOrEmpty("note", Limits.PROSE);
        List<Trip.Person> people = list(in, "people", Limits.LIST, TripBody::person);
        List<Trip.Rope> ropes = list(in, "ropes", Limits.LIST, TripBody::rope);
        List<TripTime> times = list(in, "times", Limits.TIMES, TripBody::time);
        var sets = Fields.whole(in, "rope_sets", 1, Trip.MOST_SETS);
        var pace = in.word("pace_from", Trip.PaceFrom.class);
        if (times.stream().map(TripTime::place).distinct().count() < times.size()) {
            in.refuse("times", Sentence.of("has a place twice; state when it was reached and left in one."));
        }
        return in.sound()
                ? Optional.of(new Trip(
                        uid, canyon, state, on, name, people, ropes, start, back, water, note, times, sets, pace))
                : Optional.empty();
    }

    private static <T> List<T> list(FieldReader in, String key, int most, Function<FieldReader, Optional<T>> reader) {
        List<FieldReader> inner = in.objects(key);
        if (inner.size() > most) {
            in.refuse(key, Sentence.of("are {0}; at most {1} go with one trip.", inner.size(), most));
            return List.of();
        }
        List<T> values = new ArrayList<>();
        inner.forEach(one -> reader.apply(one).ifPresent(values::add));
        return values;
    }

    private static Optional<Trip.Person> person(FieldReader in) {
        String name = in.text("name", Limits.NAME);
        var role = in.word("role", Trip.Role.class);
        var weight = in.whole("weight_g", Trip.LEAST_WEIGHT_G, Trip.MOST_WEIGHT_G);
        in.refuseUnasked();
        return in.sound()
                ? Optional.of(new Trip.Person(
                        name,
                        role,
                        weight.isPresent() ? Optional.of(new Mass(weight.getAsLong() / GRAMS)) : Optional.empty()))
                : Optional.empty();
    }

    private static Optional<Trip.Rope> rope(FieldReader in) {
        var length = Fields.centimetres(in, "length_cm", Trip.LEAST_ROPE_CM, Trip.MOST_ROPE_CM);
        String kind = in.textOrEmpty("kind", Limits.NAME);
        in.refuseUnasked();
        if (in.sound() && length.isEmpty()) {
            in.refuse("length_cm", Sentence.of("is missing; it should be the length of the rope in centimetres."));
        }
        return in.sound() ? Optional.of(new Trip.Rope(length.orElseThrow(), kind)) : Optional.empty();
    }

    private static Optional<TripTime> time(FieldReader in) {
        Optional<Uid> place = Uid.parse(in.text("place", Limits.NAME));
        String label = in.text("label", Limits.NAME);
        var reached = Fields.whole(in, "reached_min", 0, Trip.DAY - 1L);
        var left = Fields.whole(in, "left_min", 0, Trip.DAY - 1L);
        in.refuseUnasked();
        if (in.sound() && place.isEmpty()) {
            in.refuse("place", Sentence.of("is no id; it is that of a place on the line."));
        }
        if (in.sound() && reached.isEmpty() && left.isEmpty()) {
            in.refuse(
                    "reached_min",
                    Sentence.of("is missing, and left_min too; state one of them, or leave the place out."));
        }
        if (TripTime.isBackwards(reached, left)) {
            in.refuse("left_min", Sentence.of("lies before reached_min, and more than half a day after it."));
        }
        return in.sound() ? Optional.of(new TripTime(place.orElseThrow(), label, reached, left)) : Optional.empty();
    }
}
