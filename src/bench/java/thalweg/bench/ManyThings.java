package thalweg.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import thalweg.body.FactBody;
import thalweg.body.ThingBody;
import thalweg.ledger.Fact;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.logbook.WaterLevel;
import thalweg.route.AmericanGrade;
import thalweg.route.Anchor;
import thalweg.route.AnchorRole;
import thalweg.route.Canyon;
import thalweg.route.FrenchGrade;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.route.Side;
import thalweg.route.Station;
import thalweg.route.Times;
import thalweg.units.Length;

/** One invented canyon as what is written of it; its number decides all of it. */
final class ManyThings {

    static final String AUTHOR = "bench";

    private static final int STATIONS = 15;

    private static final String AT = "2026-11-25T12:00:00Z";

    /** Syllables of names that mean nothing; accents and other scripts are among them, as in the world. */
    private static final List<String> SYLLABLES = List.of(
            "bru", "çar", "dél", "fos", "gru", "hol", "kaz", "lím", "mor", "nav", "öst", "pra", "rið", "sul", "tor",
            "vež");

    private static final List<String> REGIONS = List.of(
            "Altos de Trasfoños", "Haute-Vaubrière", "Costa Velenta", "霧縫", "Шупљи Висови", "Brumaia", "Tihraf");

    private final Random random;
    private final List<Revision> revisions = new ArrayList<>();
    private final List<Fact> facts = new ArrayList<>();
    private final int inspections;
    private long ids;

    private ManyThings(int number, int inspections) {
        this.random = new Random(number);
        this.inspections = inspections;
        this.ids = (long) number << 20;
        canyon(number);
    }

    /** Canyons of those numbers. */
    static List<ManyThings> canyons(int from, int to, int inspections) {
        return IntStream.range(from, to)
                .mapToObj(number -> new ManyThings(number, inspections))
                .toList();
    }

    /** Everything that it consists of, what something is in before that. */
    List<Revision> revisions() {
        return List.copyOf(revisions);
    }

    /** Everything that was found. */
    List<Fact> facts() {
        return List.copyOf(facts);
    }

    private Uid uid() {
        ids++;
        return Uid.minted(1_700_000_000_000L + (ids >> 20), new UUID(ids, ids));
    }

    private Uid enter(ThingBody thing) {
        revisions.add(Revision.first(thing.uid(), thing.type().word(), thing.body(), AUTHOR, AT));
        return thing.uid();
    }

    private String name(int syllables) {
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < syllables; i++) {
            name.append(SYLLABLES.get(random.nextInt(SYLLABLES.size())));
        }
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    private void canyon(int number) {
        Uid canyon = enter(ThingBody.of(new Canyon(
                uid(),
                name(3) + " " + number,
                List.of(),
                REGIONS.get(random.nextInt(REGIONS.size())),
                "Merrovar",
                random.nextInt(4) == 0
                        ? Optional.empty()
                        : Optional.of(FrenchGrade.parse(
                                "v" + (1 + random.nextInt(7)) + " a" + (1 + random.nextInt(7)) + " III")),
                random.nextInt(3) == 0
                        ? Optional.empty()
                        : Optional.of(AmericanGrade.parse((1 + random.nextInt(4)) + "B III")),
                Optional.empty(),
                Times.UNKNOWN,
                Optional.empty(),
                Prose.none(),
                true)));
        String order = "";
        for (int place = 0; place < STATIONS; place++) {
            order = OrderKey.between(order, "");
            obstacle(canyon, order, place);
        }
    }

    private void obstacle(Uid canyon, String order, int place) {
        Length height = Length.centimetres(300 + random.nextInt(6000));
        Uid obstacle = enter(ThingBody.of(new Obstacle(
                uid(),
                canyon,
                order,
                ObstacleKind.DROP,
                "",
                Optional.of(Length.centimetres(place * 8000L)),
                random.nextInt(10) == 0 ? Optional.empty() : Optional.of(height),
                Optional.empty(),
                "")));
        Uid station = enter(ThingBody.of(new Station(
                uid(),
                obstacle,
                "V",
                name(2) + " " + (place + 1),
                Optional.of(random.nextBoolean() ? Side.LEFT : Side.RIGHT),
                Optional.of(height),
                Optional.empty(),
                Optional.empty(),
                Prose.none())));
        Uid anchor = enter(ThingBody.of(new Anchor(uid(), station, "V", AnchorRole.MAIN, "", "")));
        String last = OrderKey.between("", "");
        part(anchor, last, "left bolt", PartKind.BOLT, "stainless steel");
        last = OrderKey.between(last, "");
        part(anchor, last, "right bolt", PartKind.BOLT, "stainless steel");
        last = OrderKey.between(last, "");
        part(anchor, last, "webbing", PartKind.WEBBING, "polyamide");
    }

    private void part(Uid anchor, String order, String label, PartKind kind, String material) {
        Uid part = enter(ThingBody.of(new Part(
                uid(),
                anchor,
                order,
                label,
                kind,
                new Part.Hardware(material, kind == PartKind.BOLT ? "10 x 90 mm" : "25 mm", "", "", ""),
                Optional.of(new PartialDate(1995 + random.nextInt(20), 0, 0)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "")));
        int looks = inspections == 0 ? 0 : random.nextInt(2 * inspections + 1);
        for (int look = 0; look < looks; look++) {
            inspection(part);
        }
    }

    private void inspection(Uid part) {
        boolean seen = random.nextInt(12) > 0;
        Condition found = Condition.ofSeverity(Math.min(random.nextInt(5), random.nextInt(5)));
        int year = 2015 + random.nextInt(11);
        PartialDate on = switch (random.nextInt(8)) {
            case 0 -> new PartialDate(year, 0, 0);
            case 1 -> new PartialDate(year, 1 + random.nextInt(12), 0);
            default -> new PartialDate(year, 1 + random.nextInt(12), 1 + random.nextInt(28));
        };
        facts.add(FactBody.of(new Inspection(
                        part,
                        on,
                        AUTHOR,
                        seen ? Optional.of(found) : Optional.empty(),
                        Optional.empty(),
                        random.nextBoolean() ? Optional.of(WaterLevel.LOW) : Optional.empty(),
                        List.of(),
                        ""))
                .fact(AUTHOR, AT));
    }
}
