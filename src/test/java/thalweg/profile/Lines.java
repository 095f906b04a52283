package thalweg.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.route.Anchor;
import thalweg.route.AnchorRole;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.route.Station;
import thalweg.route.Times;
import thalweg.units.Length;

/** Invented canyons written down as lines of text. */
public final class Lines {

    /** "unseen" stands for a station of whose part no inspection exists. */
    private static final String UNSEEN = "unseen";

    private static final List<String> NAMES = List.of(
            "", "", "Black Pot", "滝の上の長い名前の場所", "the very long name of a place that nobody can fit anywhere", "Ł");

    private static int counter;

    private Lines() {}

    /**
     * A canyon with a line.
     *
     * @param places each of kind, distance, height, name, and the condition of a part at a station there, with bars
     *     between; "-" or nothing where it is unknown or missing: {@code drop|60 m|8 m|Porte|worn}
     */
    public static CanyonRecord of(String... places) {
        List<LineRecord> line = new ArrayList<>();
        for (String place : places) {
            line.add(place(line.size() + 1, List.of((place + "||||").split("\\|", -1))));
        }
        return new CanyonRecord(canyon(), line);
    }

    /**
     * Any line, as people enter them: mostly in order, much unknown, large falls beside small ones.
     *
     * @param places how many
     */
    public static CanyonRecord random(long seed, int places) {
        Random random = new Random(seed);
        double known = random.nextInt(5) / 4.0;
        boolean inOrder = random.nextInt(8) > 0;
        double along = 0;
        List<String> line = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            ObstacleKind kind = oneOf(ObstacleKind.values(), random);
            along += random.nextInt(4) == 0 ? 0 : random.nextInt(4) == 0 ? random.nextInt(800) : random.nextInt(40);
            String distance = random.nextDouble() > known ? "-" : (inOrder ? along : random.nextInt(900)) + " m";
            String height = random.nextDouble() > known
                    ? "-"
                    : (random.nextInt(6) == 0 ? random.nextInt(300) : random.nextInt(20)) + " m";
            String state = random.nextInt(3) > 0
                    ? "-"
                    : random.nextInt(5) == 0
                            ? UNSEEN
                            : oneOf(Condition.values(), random).name();
            line.add(String.join("|", kind.name(), distance, height, NAMES.get(random.nextInt(NAMES.size())), state));
        }
        return of(line.toArray(String[]::new));
    }

    private static <E> E oneOf(E[] values, Random random) {
        return values[random.nextInt(values.length)];
    }

    private static Uid uid() {
        counter++;
        return Uid.minted(counter, new UUID(0, counter));
    }

    private static LineRecord place(int number, List<String> fields) {
        Obstacle obstacle = new Obstacle(
                uid(),
                uid(),
                "V",
                ObstacleKind.valueOf(fields.get(0).toUpperCase(Locale.ROOT)),
                known(fields.get(3)).orElse(""),
                known(fields.get(1)).map(Length::parse),
                known(fields.get(2)).map(Length::parse),
                Optional.empty(),
                "");
        return new LineRecord(
                number,
                obstacle,
                known(fields.get(4)).map(Lines::station).stream().toList());
    }

    private static Optional<String> known(String field) {
        return field.isEmpty() || field.equals("-") ? Optional.empty() : Optional.of(field);
    }

    private static StationRecord station(String state) {
        Part part = new Part(
                uid(),
                uid(),
                "V",
                "bolt",
                PartKind.BOLT,
                Part.Hardware.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        Stream<Entry<Inspection>> seen = Stream.of(state)
                .filter(one -> !one.equals(UNSEEN))
                .map(one -> new Entry<>(
                        uid(),
                        new Inspection(
                                part.uid(),
                                PartialDate.parse("2026-05"),
                                "",
                                Optional.of(Condition.valueOf(one.toUpperCase(Locale.ROOT))),
                                Optional.empty(),
                                Optional.empty(),
                                List.of(),
                                ""),
                        "keeper",
                        "2026-06-01T10:00:00Z"));
        Anchor anchor = new Anchor(uid(), uid(), "V", AnchorRole.MAIN, "", "");
        return new StationRecord(
                new Station(
                        uid(),
                        uid(),
                        "V",
                        "stance",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Prose.none()),
                List.of(new AnchorRecord(anchor, List.of(PartRecord.of(part, seen.toList())))),
                List.of(),
                List.of());
    }

    private static Canyon canyon() {
        return new Canyon(
                uid(),
                "Invented",
                List.of(),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Times.UNKNOWN,
                Optional.empty(),
                Prose.none(),
                true);
    }

    /** A line of equal drops. */
    public static CanyonRecord drops(int places) {
        return of(IntStream.range(0, places)
                .mapToObj(i -> "drop|" + 50 * i + " m|10 m|Drop " + (i + 1) + "|sound")
                .toArray(String[]::new));
    }
}
