package thalweg.tui.screen;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.logbook.Trip;
import thalweg.logbook.TripText;
import thalweg.logbook.WaterLevel;
import thalweg.route.PartialDate;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * A trip to enter or edit; people and ropes stand one a line.
 *
 * @param go which, and to which canyon
 */
record TripForm(Go.EditTrip go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        String canyon = AboutLocal.name(go.canyon(), around);
        return around.say(go.trip().isPresent() ? "form.trip.edit" : "form.trip.new", canyon);
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(
                DraftKind.TRIP, go.trip().map(Trip::uid), go.canyon().uid()));
    }

    @Override
    public Form form(Surroundings around) {
        Optional<Trip> before = go.trip();
        return Form.of(new Build(around)
                .word(
                        "state",
                        "form.trip.state",
                        "trip_state",
                        Trip.State.class,
                        before.map(Trip::state).orElse(Trip.State.PLANNED))
                .value(
                        "on",
                        "form.trip.on",
                        before.flatMap(Trip::on).map(PartialDate::print).orElse(""),
                        PartialDate::parse)
                .text("name", "form.trip.name", before.map(Trip::name).orElse(""))
                .list(
                        "people",
                        "form.trip.people",
                        lines(before.map(Trip::people).orElse(List.of()), person(around)),
                        reader(around))
                .list(
                        "ropes",
                        "form.trip.ropes",
                        lines(before.map(Trip::ropes).orElse(List.of()), rope(around)),
                        TripText::rope)
                .value("start", "form.trip.start", time(before.flatMap(Trip::start)), TripText::time)
                .value("back", "form.trip.back", time(before.flatMap(Trip::back)), TripText::time)
                .maybe("water", "form.trip.water", "water", WaterLevel.class, before.flatMap(Trip::water))
                .value(
                        "sets",
                        "form.trip.sets",
                        before.flatMap(Trip::ropeSets).map(String::valueOf).orElse(""),
                        TripText::ropeSets)
                .orElse(
                        "pace",
                        "form.trip.pace",
                        "trip_pace",
                        Trip.PaceFrom.class,
                        before.flatMap(Trip::paceFrom),
                        "trip_pace.figures")
                .lines("note", "form.trip.note", before.map(Trip::note).orElse(""))
                .done());
    }

    private static Function<Trip.Person, String> person(Surroundings around) {
        return person -> roles(around).shown(TripText.print(person, around.units()));
    }

    private static Function<String, Trip.Person> reader(Surroundings around) {
        return line -> TripText.person(roles(around).read(line));
    }

    private static TypedWords<Trip.Role> roles(Surroundings around) {
        return TypedWords.listed("trip_role", Trip.Role.class, around);
    }

    private static Function<Trip.Rope, String> rope(Surroundings around) {
        return rope -> TripText.print(rope, around.units());
    }

    private static <T> String lines(List<T> entries, Function<T, String> printer) {
        return entries.stream().map(printer).collect(Collectors.joining("\n"));
    }

    private static String time(Optional<Integer> minutes) {
        return minutes.map(TripText::printTime).orElse("");
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        Trip.State state = filled.word("state", Trip.State.class).orElseThrow();
        Optional<PartialDate> on = filled.value("on", go.trip().flatMap(Trip::on), PartialDate::parse);
        return on.flatMap(day -> Trip.doubt(state, day, around.today())
                        .map(why -> around.say("form.trip.doubt", day.print(), why)))
                .orElse("");
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        Optional<Trip> before = go.trip();
        Trip after = new Trip(
                go.uid(),
                go.canyon().uid(),
                filled.word("state", Trip.State.class).orElseThrow(),
                filled.value("on", before.flatMap(Trip::on), PartialDate::parse),
                filled.text("name"),
                entries(
                        filled.first().value("people"),
                        filled.text("people"),
                        before.map(Trip::people).orElse(List.of()),
                        reader(around)),
                entries(
                        filled.first().value("ropes"),
                        filled.text("ropes"),
                        before.map(Trip::ropes).orElse(List.of()),
                        TripText::rope),
                filled.value("start", before.flatMap(Trip::start), TripText::time),
                filled.value("back", before.flatMap(Trip::back), TripText::time),
                filled.word("water", WaterLevel.class),
                filled.text("note"),
                before.map(Trip::times).orElse(List.of()),
                filled.value("sets", before.flatMap(Trip::ropeSets), TripText::ropeSets),
                filled.word("pace", Trip.PaceFrom.class));
        return new Ask.SaveTrip(before, after);
    }

    /** A line that stands as it was shown means the entry that it was shown from, not the rounded one. */
    private static <T> List<T> entries(String shown, String typed, List<T> before, Function<String, T> parse) {
        Map<String, Deque<T>> known = new HashMap<>();
        List<String> lines = shown.lines().map(String::strip).toList();
        for (int i = 0; i < before.size(); i++) {
            known.computeIfAbsent(lines.get(i), line -> new ArrayDeque<>()).add(before.get(i));
        }
        return TripText.lines(typed, line -> {
            Deque<T> meant = known.getOrDefault(line.strip(), new ArrayDeque<>());
            return meant.isEmpty() ? parse.apply(line) : meant.removeFirst();
        });
    }
}
