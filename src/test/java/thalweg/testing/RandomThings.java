package thalweg.testing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.function.Supplier;
import thalweg.ledger.Hash;
import thalweg.ledger.LedgerPlace;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.logbook.InventoryFingerprint;
import thalweg.logbook.NoteText;
import thalweg.logbook.Photo;
import thalweg.logbook.PrivateNote;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.Trip;
import thalweg.logbook.TripTime;
import thalweg.logbook.WaterLevel;
import thalweg.logbook.Work;
import thalweg.place.Position;
import thalweg.route.AmericanGrade;
import thalweg.route.Anchor;
import thalweg.route.AnchorRole;
import thalweg.route.Canyon;
import thalweg.route.CanyonText;
import thalweg.route.Exposure;
import thalweg.route.FrenchGrade;
import thalweg.route.HoldsAlone;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartPlace;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.route.Side;
import thalweg.route.Station;
import thalweg.route.StationText;
import thalweg.route.Times;
import thalweg.testing.RandomRecords.Fill;
import thalweg.units.Force;
import thalweg.units.Length;
import thalweg.units.Mass;

/** Single things and facts, each field known or not as the fill says. */
public final class RandomThings {

    private static final List<String> WORDS = List.of(
            "Grande",
            "Čertovka",
            "Łomnica",
            "Straße",
            "Ísafoss",
            "\"quoted\"",
            "back\\slash",
            "½ inch",
            "滝",
            "😀",
            "-12",
            "=1+1",
            "naïve",
            "I",
            "ı",
            "x\u0301",
            "<b>",
            "&",
            "/");

    private final Random random;
    private final Fill fill;

    RandomThings(Random random, Fill fill) {
        this.random = random;
        this.fill = fill;
    }

    private boolean known() {
        return fill == Fill.EVERYTHING || (fill == Fill.SOMETHING && random.nextBoolean());
    }

    private <T> Optional<T> perhaps(Supplier<T> value) {
        return known() ? Optional.of(value.get()) : Optional.empty();
    }

    private <E> E oneOf(E[] values) {
        return values[random.nextInt(values.length)];
    }

    /** One or two words. */
    public String name() {
        String word = WORDS.get(random.nextInt(WORDS.size()));
        return random.nextBoolean() ? word : word + " " + WORDS.get(random.nextInt(WORDS.size()));
    }

    private String nameOrEmpty() {
        return known() ? name() : "";
    }

    private String prose() {
        return name() + "\n" + name() + ", " + name();
    }

    private String proseOrEmpty() {
        return known() ? prose() : "";
    }

    private <K extends Enum<K>> Prose<K> prose(Class<K> headings) {
        Map<K, String> texts = new EnumMap<>(headings);
        for (K heading : headings.getEnumConstants()) {
            perhaps(this::prose).ifPresent(text -> texts.put(heading, text));
        }
        return new Prose<>(texts);
    }

    private Length centimetres(int least, int most) {
        return Length.centimetres(least + random.nextInt(most - least + 1));
    }

    private Force newtons() {
        return new Force(1 + random.nextInt(500_000));
    }

    /** A day, month or year from 2010 to 2025. */
    public PartialDate date() {
        int year = 2010 + random.nextInt(16);
        int month = random.nextInt(4) == 0 ? 0 : 1 + random.nextInt(12);
        int day = month == 0 || random.nextInt(4) == 0 ? 0 : 1 + random.nextInt(28);
        return new PartialDate(year, month, day);
    }

    /** A canyon. */
    public Canyon canyon(Uid uid) {
        return new Canyon(
                uid,
                name(),
                known() ? List.of(name(), name()) : List.of(),
                nameOrEmpty(),
                nameOrEmpty(),
                perhaps(() -> new FrenchGrade(
                        1 + random.nextInt(7), 1 + random.nextInt(7), perhaps(() -> 1 + random.nextInt(6)))),
                perhaps(() -> new AmericanGrade(
                        1 + random.nextInt(4),
                        oneOf(AmericanGrade.Water.values()),
                        perhaps(() -> 1 + random.nextInt(6)),
                        perhaps(() -> oneOf(AmericanGrade.Risk.values())))),
                perhaps(() -> new Position(
                        random.nextLong(-900_000_000, 900_000_001),
                        random.nextLong(-1_800_000_000, 1_800_000_000),
                        perhaps(() -> 1 + random.nextInt(100_000)))),
                new Times(perhaps(this::minutes), perhaps(this::minutes), perhaps(this::minutes)),
                perhaps(() -> centimetres(0, 100_000)),
                prose(CanyonText.class),
                known());
    }

    /** Drawn apart, from the record's own name, so that the canyons that tests know by their seeds stay as they are. */
    private Optional<Position> positionOf(Uid uid, Object drawn) {
        Random own = new Random(Objects.hash(uid, drawn));
        boolean known = fill == Fill.EVERYTHING || (fill == Fill.SOMETHING && own.nextBoolean());
        boolean stated = own.nextBoolean() || fill == Fill.EVERYTHING;
        Optional<Integer> accuracy = stated ? Optional.of(1 + own.nextInt(100_000)) : Optional.empty();
        return known
                ? Optional.of(new Position(
                        own.nextLong(-900_000_000, 900_000_001), own.nextLong(-1_800_000_000, 1_800_000_000), accuracy))
                : Optional.empty();
    }

    private int minutes() {
        return 1 + random.nextInt(Times.MOST_MINUTES);
    }

    /** A place on the line. */
    public Obstacle obstacle(Uid uid, Uid canyon, String order) {
        ObstacleKind kind = oneOf(ObstacleKind.values());
        String name = nameOrEmpty();
        Optional<Length> distance = perhaps(() -> centimetres(0, 10_000_000));
        Optional<Length> height = perhaps(() -> centimetres(0, 100_000));
        String note = proseOrEmpty();
        Optional<Integer> wayOut = kind == ObstacleKind.ESCAPE ? perhaps(this::minutes) : Optional.empty();
        return new Obstacle(
                uid, canyon, order, kind, name, distance, height, positionOf(uid, name + note), note, wayOut);
    }

    /** A station. */
    public Station station(Uid uid, Uid obstacle, String order) {
        String name = name();
        Optional<Side> side = perhaps(() -> oneOf(Side.values()));
        Optional<Length> rope = perhaps(() -> centimetres(0, 100_000));
        Prose<StationText> prose = prose(StationText.class);
        Optional<Exposure> exposure = perhaps(() -> oneOf(Exposure.values()));
        return new Station(uid, obstacle, order, name, side, rope, positionOf(uid, name), exposure, prose);
    }

    /** An anchor. */
    public Anchor anchor(Uid uid, Uid station, String order) {
        return new Anchor(uid, station, order, oneOf(AnchorRole.values()), nameOrEmpty(), proseOrEmpty());
    }

    /** A part. */
    public Part part(Uid uid, Uid anchor, String order) {
        return new Part(
                uid,
                anchor,
                order,
                name(),
                oneOf(PartKind.values()),
                new Part.Hardware(nameOrEmpty(), nameOrEmpty(), nameOrEmpty(), nameOrEmpty(), nameOrEmpty()),
                perhaps(this::date),
                perhaps(() ->
                        new PartPlace(centimetres(-5_000, 5_000), centimetres(-5_000, 5_000), centimetres(-50, 50))),
                perhaps(this::newtons),
                perhaps(this::newtons),
                perhaps(() -> oneOf(HoldsAlone.values())),
                proseOrEmpty());
    }

    /** An inspection; where nothing is known, one that says only that the part was not seen. */
    public Inspection inspection(Uid part) {
        Optional<Condition> found = perhaps(() -> oneOf(Condition.values()));
        Optional<Condition> left = perhaps(() -> oneOf(Condition.values()));
        List<Work> work = new ArrayList<>();
        if (found.isPresent() || left.isPresent()) {
            for (Work one : Work.values()) {
                perhaps(() -> one).ifPresent(work::add);
            }
        }
        return new Inspection(
                part,
                date(),
                nameOrEmpty(),
                found,
                left,
                perhaps(() -> oneOf(WaterLevel.values())),
                work,
                proseOrEmpty(),
                perhaps(() -> Uid.of(hash())),
                perhaps(() -> new Photo(name().replace("/", "-"), hash(), nameOrEmpty())).stream()
                        .toList());
    }

    /** The hash of something. */
    public Hash hash() {
        return Hash.of(Long.toString(random.nextLong()));
    }

    /** A round. */
    public Round round(Uid canyon) {
        return new Round(canyon, date(), nameOrEmpty(), perhaps(() -> oneOf(WaterLevel.values())), proseOrEmpty());
    }

    /** A sheet that was given out. */
    public SheetGiven sheetGiven(Uid canyon) {
        return new SheetGiven(
                canyon,
                date(),
                name(),
                1 + random.nextInt(1000),
                name(),
                hash(),
                perhaps(() -> new LedgerPlace(random.nextInt(9_999), random.nextInt(9_999))));
    }

    /** A trip with up to three people and ropes. */
    public Trip trip(Uid uid, Uid canyon) {
        List<Trip.Person> people = new ArrayList<>();
        List<Trip.Rope> ropes = new ArrayList<>();
        List<TripTime> times = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            people.add(new Trip.Person(
                    name(),
                    perhaps(() -> oneOf(Trip.Role.values())),
                    perhaps(() -> new Mass((10_000 + random.nextInt(290_001)) / 1000.0))));
            int reached = random.nextInt(Trip.DAY);
            times.add(new TripTime(
                    new Uid(new UUID(0x0193_0000_0000_7000L + i, 0x8000_0000_0000_0001L)),
                    name(),
                    Optional.of(reached),
                    perhaps(() -> (reached + random.nextInt(600)) % Trip.DAY)));
            ropes.add(new Trip.Rope(centimetres(100, 100_000), nameOrEmpty()));
        }
        return new Trip(
                uid,
                canyon,
                oneOf(Trip.State.values()),
                perhaps(this::date),
                nameOrEmpty(),
                people,
                ropes,
                perhaps(() -> random.nextInt(Trip.DAY)),
                perhaps(() -> random.nextInt(Trip.DAY)),
                perhaps(() -> oneOf(WaterLevel.values())),
                proseOrEmpty(),
                times,
                perhaps(() -> 1 + random.nextInt(Trip.MOST_SETS)),
                perhaps(() -> oneOf(Trip.PaceFrom.values())));
    }

    /** A private note. */
    public PrivateNote privateNote(Uid uid, Uid about) {
        return new PrivateNote(uid, about, prose());
    }

    /** A rigging note; it always says something. */
    public RiggingNote note(Uid station) {
        return new RiggingNote(
                station, date(), nameOrEmpty(), prose(NoteText.class).with(NoteText.OTHER, prose()));
    }

    /** A rig analysis with made-up texts. */
    public RigAnalysis analysis(Uid station, InventoryFingerprint inventory) {
        return new RigAnalysis(
                station,
                date(),
                nameOrEmpty(),
                "0.1.0",
                "{\n  \"input\": " + random.nextInt() + "\n}\n",
                prose(),
                inventory);
    }
}
