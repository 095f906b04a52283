package thalweg.logbook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;
import thalweg.units.Length;
import thalweg.units.Mass;

/**
 * A descent that is planned or was done. It stays with the database in which it was entered: who goes with whom and what
 * they weigh is nobody else's business.
 *
 * @param uid its name in this database
 * @param canyon where it goes
 * @param state how far it has come
 * @param on the day; empty where it is not fixed yet
 * @param name such as "club course"; empty text where it has none
 * @param people who go, in the order in which they were entered
 * @param ropes that are carried
 * @param start time of day at which the party sets out [minutes after midnight, 0 to 1439]; empty where unknown
 * @param back time of day at which it is back, or was [minutes after midnight, 0 to 1439]; empty where unknown
 * @param water how much water there was; empty where nobody said
 * @param note empty text where there is none
 * @param times noted at places, in the order of the line as it was then; each place once
 * @param ropeSets that leapfrog, 1 to 6; empty where nobody said
 * @param paceFrom whose noted times its plan goes by; empty for the figures as they are
 */
public record Trip(
        Uid uid,
        Uid canyon,
        State state,
        Optional<PartialDate> on,
        String name,
        List<Person> people,
        List<Rope> ropes,
        Optional<Integer> start,
        Optional<Integer> back,
        Optional<WaterLevel> water,
        String note,
        List<TripTime> times,
        Optional<Integer> ropeSets,
        Optional<PaceFrom> paceFrom) {

    /** Minutes of a day. */
    public static final int DAY = 24 * 60;

    /** Least weight of somebody with clothes and gear that is believed [g]: 10 kg. */
    public static final long LEAST_WEIGHT_G = 10_000;

    /** Most weight of somebody with clothes and gear that is believed [g]: 300 kg. */
    public static final long MOST_WEIGHT_G = 300_000;

    /** Shortest rope that is believed [cm]: 1 m. */
    public static final long LEAST_ROPE_CM = 100;

    /** Longest rope that is believed [cm]: 1,000 m. */
    public static final long MOST_ROPE_CM = 100_000;

    /** Most sets of ropes that leapfrog. */
    public static final int MOST_SETS = 6;

    private static final int YEARS_AHEAD = 5;

    /**
     * As people look for them: what is planned, the nearest day first and what has no day yet last; then what was done,
     * newest first; then what was called off, newest first.
     */
    public static final Comparator<Trip> IN_TURN =
            Comparator.comparing(Trip::state).thenComparing(Trip::byDay).thenComparing(Trip::uid);

    /** How far a trip has come. */
    public enum State {
        PLANNED,
        DONE,
        CALLED_OFF
    }

    /** The trips whose noted times teach the pace of another: all that were done under its name, or all that were done. */
    public enum PaceFrom {
        SAME_NAME,
        ALL
    }

    /** What somebody can be relied on for. */
    public enum Role {
        BEGINNER,
        ABLE,
        LEAD
    }

    /**
     * Somebody who goes.
     *
     * @param name not blank
     * @param role empty where nobody said
     * @param weight with clothes and gear, above 0; empty where unknown
     */
    public record Person(String name, Optional<Role> role, Optional<Mass> weight) {
        public Person {
            if (name.isBlank() || weight.filter(mass -> mass.kilograms() <= 0).isPresent()) {
                throw new IllegalArgumentException("a person has a name, and a weight above 0 where it is known");
            }
        }
    }

    /**
     * A rope that is carried.
     *
     * @param length above 0
     * @param kind such as "9.5 mm low-stretch"; empty text where unknown
     */
    public record Rope(Length length, String kind) {
        public Rope {
            if (length.metres() <= 0) {
                throw new IllegalArgumentException("a rope has a length");
            }
        }
    }

    public Trip {
        people = List.copyOf(people);
        ropes = List.copyOf(ropes);
        times = List.copyOf(times);
        if (start.filter(Trip::isNoTime).isPresent()
                || back.filter(Trip::isNoTime).isPresent()) {
            throw new IllegalArgumentException("a time of day is 0 to 1439 minutes");
        }
        if (ropeSets.filter(sets -> sets < 1 || sets > MOST_SETS).isPresent()) {
            throw new IllegalArgumentException("1 to " + MOST_SETS + " sets of ropes leapfrog");
        }
    }

    /** A trip of which nobody said how it is to be planned. */
    public Trip(
            Uid uid,
            Uid canyon,
            State state,
            Optional<PartialDate> on,
            String name,
            List<Person> people,
            List<Rope> ropes,
            Optional<Integer> start,
            Optional<Integer> back,
            Optional<WaterLevel> water,
            String note,
            List<TripTime> times) {
        this(
                uid,
                canyon,
                state,
                on,
                name,
                people,
                ropes,
                start,
                back,
                water,
                note,
                times,
                Optional.empty(),
                Optional.empty());
    }

    /** A trip on which no time was noted. */
    public Trip(
            Uid uid,
            Uid canyon,
            State state,
            Optional<PartialDate> on,
            String name,
            List<Person> people,
            List<Rope> ropes,
            Optional<Integer> start,
            Optional<Integer> back,
            Optional<WaterLevel> water,
            String note) {
        this(uid, canyon, state, on, name, people, ropes, start, back, water, note, List.of());
    }

    static boolean isNoTime(int minutes) {
        return minutes < 0 || minutes >= DAY;
    }

    /** The same with other times. */
    public Trip withTimes(List<TripTime> others) {
        return new Trip(
                uid, canyon, state, on, name, people, ropes, start, back, water, note, others, ropeSets, paceFrom);
    }

    /** The same in another state. */
    public Trip withState(State other) {
        return new Trip(
                uid, canyon, other, on, name, people, ropes, start, back, water, note, times, ropeSets, paceFrom);
    }

    /** The times noted at a place, if there are any. */
    public Optional<TripTime> timeAt(Uid place) {
        return times.stream().filter(time -> time.place().equals(place)).findFirst();
    }

    private static int byDay(Trip one, Trip other) {
        if (one.on.isEmpty() || other.on.isEmpty()) {
            return Boolean.compare(one.on.isEmpty(), other.on.isEmpty());
        }
        int order = PartialDate.BY_LAST_DAY.compare(one.on.get(), other.on.get());
        return one.state == State.PLANNED ? order : -order;
    }

    /**
     * Why that day is not believed of a trip in that state, as the end of a sentence; empty where it is.
     *
     * @param today from which on a day lies ahead
     */
    public static Optional<Sentence> doubt(State state, PartialDate on, LocalDate today) {
        if (on.tooEarlyToBeSeen().isPresent()) {
            return on.tooEarlyToBeSeen();
        }
        if (state == State.DONE && !on.hasBegunBy(today)) {
            return Optional.of(Sentence.of("has not come yet, so the trip is not done; today is {0}", today));
        }
        if (on.earliest().isAfter(today.plusYears(YEARS_AHEAD))) {
            return Optional.of(Sentence.of("lies more than {0} years ahead; today is {1}", YEARS_AHEAD, today));
        }
        return Optional.empty();
    }

    /** Whether it is still planned although its day, as far as that is known, is over. */
    public boolean isOverdue(LocalDate today) {
        return state == State.PLANNED
                && on.filter(day -> day.latest().isBefore(today)).isPresent();
    }

    /** How many of the people have a weight that is known. */
    public long weighed() {
        return people.stream().filter(person -> person.weight().isPresent()).count();
    }

    /** The known weights together [kg]; what nobody said is not in it. */
    public Mass weightKnown() {
        return new Mass(people.stream()
                .flatMap(person -> person.weight().stream())
                .mapToDouble(Mass::kilograms)
                .sum());
    }
}
