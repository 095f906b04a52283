package thalweg.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonName;
import thalweg.logbook.NotedTime;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.logbook.TripText;
import thalweg.logbook.TripTime;
import thalweg.logbook.WaterLevel;
import thalweg.plan.PacedTrip;
import thalweg.route.PartialDate;
import thalweg.service.FindRecord;
import thalweg.service.KeepLocal;
import thalweg.service.ListTrips;
import thalweg.service.NoteTimes;
import thalweg.service.PlanTrip;
import thalweg.service.Session;

/** Enters, changes or shows one trip. */
@Command(
        name = "trip",
        description = {
            "Enters, changes or shows one trip.",
            "With the name of a canyon it enters a new trip there; with the id of a trip it changes that one,"
                    + " or shows it where no option says what to change. An empty value makes a field unknown again.",
            "Trips stay in this database: no sheet shows them, and no export unless you ask for it."
        })
final class TripAction extends Action {

    @Parameters(paramLabel = "CANYON-OR-TRIP", description = "name of a canyon, part of it, or an id")
    private String where = "";

    @Option(names = "--state", paramLabel = "STATE", description = "planned (of a new trip), done, called-off")
    private @Nullable String state;

    @Option(names = "--on", paramLabel = "DATE", description = "2026-06-14, 2026-06 or 2026")
    private @Nullable String on;

    @Option(names = "--name", paramLabel = "NAME", description = "such as \"club course\"")
    private @Nullable String name;

    @Option(
            names = "--person",
            paramLabel = "PERSON",
            description = "\"Ana, lead, 62 kg\"; the name is enough; again for each, in place of those that are there")
    private @Nullable List<String> people;

    @Option(
            names = "--rope",
            paramLabel = "ROPE",
            description = "\"60 m, 9.5 mm low-stretch\"; again for each, in place of those that are there")
    private @Nullable List<String> ropes;

    @Option(
            names = "--rope-sets",
            paramLabel = "NUMBER",
            description = "how many sets of the ropes leapfrog, 1 to 6; where nobody says, the plan counts 1")
    private @Nullable String ropeSets;

    @Option(
            names = "--pace-from",
            paramLabel = "TRIPS",
            description =
                    "whose noted times the plan goes by: same-name (trips that were done under its name), all (that"
                            + " were done); without it, the figures as they are")
    private @Nullable String paceFrom;

    @Option(names = "--start", paramLabel = "TIME", description = "time of day, such as 8:30")
    private @Nullable String start;

    @Option(names = "--back", paramLabel = "TIME", description = "time of day; before --start it is the next day")
    private @Nullable String back;

    @Option(names = "--water", paramLabel = "LEVEL", description = "dry, low, normal, high, flood")
    private @Nullable String water;

    @Option(names = "--note", paramLabel = "TEXT", description = "what else belongs to it")
    private @Nullable String note;

    @Option(
            names = "--reached",
            paramLabel = "PLACE=TIME",
            description = "when a place was reached: its number or name, and 10:05, now, or nothing to take it back;"
                    + " again for each")
    private @Nullable List<String> reached;

    @Option(names = "--left", paramLabel = "PLACE=TIME", description = "when a place was left, in the same way")
    private @Nullable List<String> left;

    @Option(names = "--take-out", paramLabel = "REASON", description = "take the trip out of use; nothing is erased")
    private @Nullable String reason;

    @Mixin
    private final SettingsOption settings = new SettingsOption();

    TripAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    Optional<Path> settingsFile() {
        return settings.file();
    }

    @Override
    public Integer call() {
        boolean changing = changes();
        if (reason != null && changing) {
            throw new InputException(Sentence.of("--take-out goes alone; change the trip or take it out."));
        }
        if (!changing && reason == null) {
            try (Session session = shared().reading()) {
                return show(session);
            }
        }
        try (Session session = shared().writing()) {
            Optional<TripInCanyon> before = known(session);
            if (reason != null) {
                TripInCanyon out = before.orElseThrow(() -> new InputException(
                        Sentence.of("\"{0}\" is no id of a trip; `trips` lists them with their ids.", where.strip())));
                new KeepLocal(session).remove(out.trip(), reason);
                tell(Sentence.of("Taken out."));
                return ExitCodes.DONE;
            }
            CanyonName canyon = before.map(TripInCanyon::canyon).orElseGet(() -> canyon(session));
            Trip after = after(
                    before.map(TripInCanyon::trip),
                    before.map(shown -> shown.trip().uid()).orElseGet(session::mint),
                    canyon.uid());
            if (before.isEmpty() && (reached != null || left != null)) {
                throw new InputException(Sentence.of("Times are noted of a trip that is entered; name it by its id."));
            }
            new KeepLocal(session).trip(before.map(TripInCanyon::trip), timed(new NoteTimes(session), after));
            tell(
                    before.isPresent()
                            ? Sentence.of(
                                    "Changed: {0}, trip {1}.",
                                    canyon.name(), after.uid().text())
                            : Sentence.of(
                                    "Entered: {0}, trip {1}.",
                                    canyon.name(), after.uid().text()));
        }
        return ExitCodes.DONE;
    }

    private boolean changes() {
        return state != null
                || on != null
                || name != null
                || people != null
                || ropes != null
                || start != null
                || back != null
                || water != null
                || note != null
                || reached != null
                || left != null
                || ropeSets != null
                || paceFrom != null;
    }

    private Optional<TripInCanyon> known(Session session) {
        return Uid.parse(where).flatMap(new ListTrips(session)::byId);
    }

    private CanyonName canyon(Session session) {
        FindRecord find = new FindRecord(session);
        Optional<Uid> uid = Uid.parse(where);
        if (uid.flatMap(find::byId).isEmpty() && uid.isPresent()) {
            throw new InputException(Sentence.of(
                    "There is no canyon and no trip with the id {0}; `list` and `trips` show what there is.",
                    uid.get().text()));
        }
        return find.canyon(where).named();
    }

    private Integer show(Session session) {
        TripInCanyon shown = known(session)
                .orElseThrow(() -> new InputException(Sentence.of(
                        "Say what to enter, as in: trip CANYON --on 2026-06-14 --person \"Ana, lead\"; or name a"
                                + " trip by its id to see it, as `trips` lists them.")));
        Optional<PacedTrip> paced = new FindRecord(session)
                .byId(shown.canyon().uid())
                .map(canyon ->
                        new PlanTrip(session, settings.read(surrounds(), phrases())).paced(shown.trip(), canyon));
        print(new TripReport(phrases(), shared().units()).of(shown, paced));
        return ExitCodes.DONE;
    }

    private Trip after(Optional<Trip> before, Uid uid, Uid canyon) {
        return new Trip(
                uid,
                canyon,
                state == null ? before.map(Trip::state).orElse(Trip.State.PLANNED) : state(state),
                changed(on, before.flatMap(Trip::on), PartialDate::parse),
                name == null ? before.map(Trip::name).orElse("") : name,
                changed(people, before.map(Trip::people), TripText::person),
                changed(ropes, before.map(Trip::ropes), TripText::rope),
                changed(start, before.flatMap(Trip::start), TripText::time),
                changed(back, before.flatMap(Trip::back), TripText::time),
                changed(water, before.flatMap(Trip::water), word -> word(word, WaterLevel.class, "water level")),
                note == null ? before.map(Trip::note).orElse("") : note,
                before.map(Trip::times).orElse(List.of()),
                changed(ropeSets, before.flatMap(Trip::ropeSets), TripText::ropeSets),
                changed(
                        paceFrom,
                        before.flatMap(Trip::paceFrom),
                        word -> word(word, Trip.PaceFrom.class, "choice of trips")));
    }

    private Trip timed(NoteTimes note, Trip trip) {
        Trip timed = trip;
        for (String one : reached == null ? List.<String>of() : reached) {
            Uid place = place(note, trip, one);
            Optional<Integer> other = timed.timeAt(place).flatMap(TripTime::left);
            timed = note.noted(timed, place, time(one), NotedTime.of(other));
        }
        for (String one : left == null ? List.<String>of() : left) {
            Uid place = place(note, trip, one);
            Optional<Integer> other = timed.timeAt(place).flatMap(TripTime::reached);
            timed = note.noted(timed, place, NotedTime.of(other), time(one));
        }
        return timed;
    }

    private static Uid place(NoteTimes note, Trip trip, String typed) {
        int at = typed.lastIndexOf('=');
        if (at < 1) {
            throw new InputException(Sentence.of(
                    "\"{0}\" is no place with its time; write it as 5=10:05, or Rideau=now.", typed.strip()));
        }
        return note.place(trip, typed.substring(0, at));
    }

    private NotedTime time(String typed) {
        return NotedTime.parse(
                typed.substring(typed.lastIndexOf('=') + 1), phrases().say("form.times.now"));
    }

    private static <T> Optional<T> changed(@Nullable String typed, Optional<T> before, Function<String, T> parse) {
        if (typed == null) {
            return before;
        }
        return typed.isBlank() ? Optional.empty() : Optional.of(parse.apply(typed.strip()));
    }

    private static <T> List<T> changed(
            @Nullable List<String> typed, Optional<List<T>> before, Function<String, T> parse) {
        if (typed == null) {
            return before.orElse(List.of());
        }
        return typed.stream().filter(line -> !line.isBlank()).map(parse).toList();
    }

    private static Trip.State state(String typed) {
        return word(typed, Trip.State.class, "state");
    }

    private static <E extends Enum<E>> E word(String typed, Class<E> words, String what) {
        String plain = typed.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
        List<E> all = Arrays.asList(words.getEnumConstants());
        return all.stream()
                .filter(one -> written(one).equals(plain))
                .findFirst()
                .orElseThrow(() -> new InputException(Sentence.of(
                        "The {0} \"{1}\" is not known; it is one of {2}.",
                        Sentence.word(what),
                        typed.strip(),
                        all.stream().map(TripAction::written).collect(Collectors.joining(", ")))));
    }

    private static String written(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
