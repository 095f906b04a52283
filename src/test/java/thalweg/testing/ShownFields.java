package thalweg.testing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import thalweg.body.AnchorBody;
import thalweg.body.CanyonBody;
import thalweg.body.FactBody;
import thalweg.body.InspectionBody;
import thalweg.body.NoteBody;
import thalweg.body.ObstacleBody;
import thalweg.body.PartBody;
import thalweg.body.StationBody;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.StationRecord;
import thalweg.place.Position;
import thalweg.route.Anchor;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.Part;
import thalweg.route.PartPlace;
import thalweg.route.Station;
import thalweg.service.LoadPhrases;
import thalweg.sheet.Durations;
import thalweg.text.Phrases;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/**
 * A canyon with one of everything, all of it known, and what each field looks like where records are shown. A field of a
 * codec that is neither free text nor in the tables here stops the test by name.
 */
public final class ShownFields {

    private static final Phrases PHRASES = LoadPhrases.english();
    private static final UnitSystem METRIC = UnitSystem.METRIC;

    /** What is not shown as a field: ids, places in line, the one datum there is; rounds and photos are another matter. */
    private static final Set<String> ELSEWHERE =
            Set.of("canyon", "obstacle", "station", "anchor", "order", "position.datum", "round", "photos");

    private final RandomRecords random;
    private final List<Expected> expected = new ArrayList<>();
    private final CanyonRecord record;

    /**
     * What has to be found.
     *
     * @param field kind of record and key, such as "part.strength_n"
     * @param text as it is shown, in metric units
     */
    public record Expected(String field, String text) {}

    /** @param seed the same gives the same */
    public ShownFields(long seed) {
        this.random = new RandomRecords(seed, RandomRecords.Fill.EVERYTHING);
        Canyon canyon = canyon(random.uid());
        Obstacle obstacle = obstacle(random.uid(), canyon.uid());
        StationRecord station = station(random.uid(), obstacle.uid());
        this.record = new CanyonRecord(canyon, List.of(new LineRecord(1, obstacle, List.of(station))));
    }

    private Canyon canyon(Uid uid) {
        Planted planted = plant("canyon", CanyonBody.write(things().canyon(uid)), in -> CanyonBody.read(uid, in));
        Canyon canyon = CanyonBody.read(uid, planted.reader()).orElseThrow();
        Map<String, String> table = new HashMap<>();
        table.put("french_grade", canyon.french().orElseThrow().print());
        table.put("american_grade", canyon.american().orElseThrow().print());
        table.putAll(position(canyon.position()));
        table.put("approach_min", duration(canyon.times().approachMinutes()));
        table.put("descent_min", duration(canyon.times().descentMinutes()));
        table.put("exit_min", duration(canyon.times().exitMinutes()));
        table.put("longest_drop_cm", canyon.longestDrop().orElseThrow().print(METRIC));
        table.put("invented", PHRASES.say("invented"));
        see("canyon", planted, table);
        return canyon;
    }

    private static Map<String, String> position(Optional<Position> known) {
        Position position = known.orElseThrow();
        return Map.of(
                "position.lat_e7", position.printDecimal(),
                "position.lon_e7", position.printDecimal(),
                "position.accuracy_m", position.accuracyMetres().orElseThrow() + " m");
    }

    private static Map<String, String> with(Map<String, String> table, Map<String, String> more) {
        Map<String, String> all = new HashMap<>(table);
        all.putAll(more);
        return all;
    }

    private Obstacle obstacle(Uid uid, Uid canyon) {
        Planted planted = plant(
                "obstacle",
                ObstacleBody.write(things().obstacle(uid, canyon, "V")),
                in -> ObstacleBody.read(uid, canyon, "V", in));
        Obstacle obstacle =
                ObstacleBody.read(uid, canyon, "V", planted.reader()).orElseThrow();
        Map<String, String> table = with(
                position(obstacle.position()),
                Map.of(
                        "kind", word("obstacle", obstacle.kind()),
                        "distance_cm", obstacle.distance().orElseThrow().print(METRIC),
                        "height_cm", obstacle.height().orElseThrow().print(METRIC)));
        obstacle.wayOut().ifPresent(way -> table.put("way_out_min", duration(Optional.of(way))));
        see("obstacle", planted, table);
        return obstacle;
    }

    private StationRecord station(Uid uid, Uid obstacle) {
        Planted planted = plant(
                "station",
                StationBody.write(things().station(uid, obstacle, "V")),
                in -> StationBody.read(uid, obstacle, "V", in));
        Station station = StationBody.read(uid, obstacle, "V", planted.reader()).orElseThrow();
        see(
                "station",
                planted,
                with(
                        position(station.position()),
                        Map.of(
                                "side", word("side", station.side().orElseThrow()),
                                "exposure", word("exposure", station.exposure().orElseThrow()),
                                "rope_needed_cm",
                                        station.ropeNeeded().orElseThrow().print(METRIC))));
        Planted words = plant("note", NoteBody.write(things().note(uid)), in -> NoteBody.read(uid, in));
        RiggingNote note = NoteBody.read(uid, words.reader()).orElseThrow();
        see("note", words, Map.of("on", note.on().print()));
        return new StationRecord(
                station, List.of(anchor(random.uid(), uid)), List.of(entry(note, FactBody.of(note))), List.of());
    }

    private AnchorRecord anchor(Uid uid, Uid station) {
        Planted planted = plant(
                "anchor",
                AnchorBody.write(things().anchor(uid, station, "V")),
                in -> AnchorBody.read(uid, station, "V", in));
        Anchor anchor = AnchorBody.read(uid, station, "V", planted.reader()).orElseThrow();
        see("anchor", planted, Map.of("role", word("role", anchor.role())));
        return new AnchorRecord(anchor, List.of(part(random.uid(), uid)));
    }

    private PartRecord part(Uid uid, Uid anchor) {
        Planted planted = plant(
                "part", PartBody.write(things().part(uid, anchor, "V")), in -> PartBody.read(uid, anchor, "V", in));
        Part part = PartBody.read(uid, anchor, "V", planted.reader()).orElseThrow();
        see(
                "part",
                planted,
                Map.of(
                        "kind", word("part", part.kind()),
                        "placed", part.placed().orElseThrow().print(),
                        "strength_n", part.strength().orElseThrow().print(METRIC),
                        "axial_strength_n", part.axialStrength().orElseThrow().print(METRIC),
                        "holds_alone", word("holds", part.holdsAlone().orElseThrow()),
                        "place.right_cm", handWidths(part, PartPlace::right),
                        "place.up_cm", handWidths(part, PartPlace::up),
                        "place.out_cm", handWidths(part, PartPlace::out)));
        Planted found =
                plant("inspection", InspectionBody.write(things().inspection(uid)), in -> InspectionBody.read(uid, in));
        Inspection inspection = InspectionBody.read(uid, found.reader()).orElseThrow();
        see(
                "inspection",
                found,
                Map.of(
                        "on", inspection.on().print(),
                        "found", word("condition", inspection.found().orElseThrow()),
                        "left", word("condition", inspection.left().orElseThrow()),
                        "water", word("water", inspection.water().orElseThrow()),
                        "work", word("work", inspection.work().get(0))));
        inspection.work().forEach(one -> see("inspection", "work", word("work", one)));
        return PartRecord.of(part, List.of(entry(inspection, FactBody.of(inspection))));
    }

    /** Sheets have words for the side on which a point is; the hand-widths are the same. */
    private static String handWidths(Part part, Function<PartPlace, Length> axis) {
        double metres = axis.apply(part.place().orElseThrow()).metres();
        return new Length(Math.abs(metres)).printFine(METRIC);
    }

    private static String duration(Optional<Integer> minutes) {
        return Durations.print(minutes.orElseThrow(), PHRASES);
    }

    private RandomThings things() {
        return random.things();
    }

    private static <T> Entry<T> entry(T content, FactBody body) {
        Fact fact = body.fact("Ana", "2026-11-20T10:00:00Z");
        return new Entry<>(fact.uid(), content, fact.author(), fact.at());
    }

    private static Planted plant(String kind, Json.Fields body, Function<FieldReader, Optional<?>> codec) {
        return Planted.in(body, kind, in -> codec.apply(in).isPresent(), ELSEWHERE);
    }

    private void see(String kind, Planted planted, Map<String, String> table) {
        planted.words().forEach((key, words) -> words.forEach(word -> see(kind, key, word)));
        for (String path : Leaves.of(planted.body()).keySet()) {
            String key = path.replaceFirst("\\..*", "");
            boolean free = planted.words().containsKey(key);
            if (table.containsKey(path)) {
                see(kind, path, table.getOrDefault(path, ""));
            } else if (!free && !ELSEWHERE.contains(path) && !ELSEWHERE.contains(key)) {
                throw new AssertionError("say what " + kind + "." + path + " looks like where records are shown");
            }
        }
    }

    private void see(String kind, String path, String text) {
        expected.add(new Expected(kind + "." + path, text));
    }

    private static String word(String list, Enum<?> value) {
        return PHRASES.say(list + "." + value.name().toLowerCase(Locale.ROOT));
    }

    /** The canyon. */
    public CanyonRecord record() {
        return record;
    }

    /** What of the records of those kinds a text does not show; white space counts as one space. */
    public List<Expected> missingIn(String text, String... kinds) {
        String plain = text.replaceAll("[\\s\\u00A0]+", " ");
        return of(kinds).filter(one -> !plain.contains(one.text())).toList();
    }

    /** The same in a text that was read from paper, where a line may break anywhere: without spaces and line ends. */
    public List<Expected> missingOnPaper(String unbroken, String... kinds) {
        return of(kinds)
                .filter(one -> !unbroken.contains(PdfText.unbroken(one.text())))
                .toList();
    }

    private Stream<Expected> of(String... kinds) {
        return expected.stream()
                .filter(one -> Stream.of(kinds).anyMatch(kind -> one.field().startsWith(kind + ".")));
    }
}
