package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonKeys;
import thalweg.logbook.CanyonMeasure;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyon;
import thalweg.logbook.Span;
import thalweg.route.AmericanGrade;
import thalweg.route.ObstacleKind;
import thalweg.route.Times;
import thalweg.testing.MemoryKnown;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;
import thalweg.units.Length;

class FilterTest {

    private static final long ENDLESS = Long.MAX_VALUE;

    private final Database database = Database.inMemory();
    private final CanyonStore canyons = new CanyonStore(database);
    private final Records records = new Records(database);

    @AfterEach
    void close() {
        database.close();
    }

    /** One canyon for every answer that a question about it can have. */
    private void addSome() {
        records.add("""
                {"name": "Bare"},
                {"name": "Easy", "region": "Upper Vale", "country": "Utopia", "french_grade": "v2 a1 II",
                 "american_grade": "2 A I", "longest_drop_cm": 1200,
                 "approach_min": 20, "descent_min": 90, "exit_min": 10,
                 "line": [{"kind": "drop", "stations": [{"name": "s", "anchors": [{"role": "main", "parts": [
                   {"label": "b", "kind": "bolt", "inspections": [{"on": "2024", "found": "sound"}]}]}]}]}]},
                {"name": "Hard", "region": "Lower Vale", "country": "Utopia", "french_grade": "v5 a4 IV",
                 "american_grade": "4 C3 III R", "approach_min": 60, "descent_min": 300, "exit_min": 60,
                 "line": [{"kind": "drop", "height_cm": 4000}, {"kind": "drop", "height_cm": 900, "stations": [
                   {"name": "s", "anchors": [{"role": "main", "parts": [
                   {"label": "b", "kind": "bolt", "inspections": [{"on": "2024", "found": "unsafe"}]},
                   {"label": "c", "kind": "bolt"}]}]}]}]},
                {"name": "Partly", "country": "Elsewhere", "french_grade": "v4 a3", "american_grade": "3 C II",
                 "descent_min": 200,
                 "line": [{"kind": "drop", "height_cm": 2000, "stations": [{"name": "s", "anchors": [
                   {"role": "main", "parts": [
                   {"label": "b", "kind": "bolt", "inspections": [{"on": "2024", "found": "worn"}]},
                   {"label": "c", "kind": "bolt"}]}]}]}, {"kind": "drop"}, {"kind": "swim"}]}
                """);
    }

    private String answer(CanyonFilter filter) {
        List<String> fit = new ArrayList<>();
        List<String> may = new ArrayList<>();
        for (FoundCanyon canyon : canyons.canyons(new Finding("", filter))) {
            (canyon.fits() ? fit : may).add(canyon.row().name());
        }
        assertThat(byKeys(filter.withUnknown(false), may.size())).isEqualTo(fit);
        assertThat(byKeys(filter.withUnknown(true), may.size()))
                .containsAll(fit)
                .hasSize(fit.size() + may.size());
        return String.join(" ", fit) + " | " + String.join(" ", may);
    }

    /** The names of those that the list shows, by their keys. */
    private List<String> byKeys(CanyonFilter filter, int unknown) {
        CanyonKeys keys = canyons.keys(new Finding("", filter));
        assertThat(keys.unknown()).isEqualTo(unknown);
        Map<Long, FoundCanyon> rows = canyons.rows(keys.order(), filter);
        return Arrays.stream(keys.order().toArray())
                .mapToObj(rows::get)
                .map(canyon -> canyon.row().name())
                .toList();
    }

    private static CanyonFilter filter(String measure, String wanted) {
        CanyonMeasure asked = CanyonMeasure.valueOf(measure);
        return new CanyonFilter("", "", Map.of(asked, asked.read(wanted)), false, false);
    }

    @ParameterizedTest
    @CsvSource({
        "VERTICAL, ..4, Easy Partly | Bare",
        "VERTICAL, v3.., Hard Partly | Bare",
        "VERTICAL, 4, Partly | Bare",
        "AQUATIC, 3..4, Hard Partly | Bare",
        "COMMITMENT, ..III, Easy | Bare Partly",
        "COMMITMENT, 4, Hard | Bare Partly",
        "TECHNICAL, ..3, Easy Partly | Bare",
        "TIME_GRADE, II.., Hard Partly | Bare",
        "RISK, none, Easy Partly | Bare",
        "RISK, R.., Hard | Bare",
        "LONGEST_DROP, 12 m, Easy | Bare",
        "LONGEST_DROP, 30 m, Easy | Bare Partly",
        "LONGEST_DROP, ..100 ft, Easy | Bare Partly",
        "LONGEST_DROP, 20 m.., Hard Partly | Bare",
        "LONGEST_DROP, 30 m.., Hard | Bare Partly",
        "LONGEST_DROP, 15 m..50 m, Hard | Bare Partly",
        "LONGEST_DROP, 50 m, Easy Hard | Bare Partly",
        "MINUTES, 2:00, Easy | Bare",
        "MINUTES, ..240, Easy | Bare Partly",
        "MINUTES, 3:20.., Hard Partly | Bare",
        "MINUTES, 5 h.., Hard | Bare Partly",
        "WORST, doubtful, Hard | Bare Partly",
        "WORST, worn.., Hard Partly | Bare",
        "WORST, ..worn, Easy | Bare Partly",
        "WORST, ..unsafe, Easy | Bare Hard Partly",
        "WORST, ..sound, Easy | Bare"
    })
    void whatIsUnknownIsNeitherFoundNorDroppedInSilence(String measure, String wanted, String expected) {
        addSome();

        assertThat(answer(filter(measure, wanted))).isEqualTo(expected);
    }

    /** A current of unstated strength may be any of the four. */
    @ParameterizedTest
    @CsvSource({
        "..B, Easy | Bare",
        "C, Hard Partly | Bare",
        "C1.., Hard Partly | Bare",
        "..C2, Easy | Bare Partly",
        "C3.., Hard | Bare Partly",
        "..C, Easy Hard Partly | Bare"
    })
    void waterWithoutItsStrengthMayBeAnyCurrent(String wanted, String expected) {
        addSome();

        assertThat(answer(filter("WATER", wanted))).isEqualTo(expected);
    }

    @Test
    void regionAndCountryAreAskedForApartFromTheName() {
        addSome();
        records.add("{\"name\": \"Vale of Utopia\", \"region\": \"Far\", \"country\": \"Farland\"}");

        assertThat(answer(new CanyonFilter("vale", "", Map.of(), false, false))).isEqualTo("Easy Hard | Bare Partly");
        assertThat(answer(new CanyonFilter("upper val", "utop", Map.of(), false, false)))
                .isEqualTo("Easy | Bare");
        assertThat(answer(new CanyonFilter("", "else", Map.of(), false, false))).isEqualTo("Partly | Bare");
        assertThat(answer(new CanyonFilter("", "--", Map.of(), false, false)))
                .as("no word is asked for")
                .isEqualTo("Bare Easy Hard Partly Vale of Utopia | ");
    }

    @Test
    void neverSeenAsksForCanyonsWithAPartThatNobodySaw() {
        addSome();

        assertThat(answer(new CanyonFilter("", "", Map.of(), true, false))).isEqualTo("Hard Partly | ");
    }

    @Test
    void whatIsUnknownIsNamed() {
        addSome();
        CanyonFilter filter = new CanyonFilter(
                "vale",
                "",
                Map.of(CanyonMeasure.LONGEST_DROP, Span.to(5000), CanyonMeasure.VERTICAL, Span.to(4)),
                false,
                false);

        List<FoundCanyon> found = canyons.canyons(new Finding("", filter));

        assertThat(found).map(canyon -> canyon.row().name()).containsExactly("Bare", "Easy", "Partly");
        assertThat(found.get(0).unknown())
                .containsExactlyInAnyOrder(CanyonMeasure.LONGEST_DROP, CanyonMeasure.VERTICAL);
        assertThat(found.get(2).unknown()).containsExactly(CanyonMeasure.LONGEST_DROP);
        assertThat(found.get(2).whereUnknown()).isTrue();
    }

    @Test
    void stationsComeFromCanyonsThatFit() {
        addSome();
        CanyonFilter low = filter("LONGEST_DROP", "30 m");

        assertThat(canyons.stations(new Finding("s", low), 9))
                .map(row -> row.canyonName())
                .containsExactly("Easy");
        assertThat(canyons.stations(new Finding("s", low.withUnknown(true)), 9))
                .map(row -> row.canyonName())
                .containsExactly("Easy", "Partly");
        assertThat(canyons.stations(new Finding("s", CanyonFilter.NONE), 2)).hasSize(2);
    }

    /** What each measure is, worked out from the whole record; the same as the columns must say. */
    private static Span known(CanyonMeasure measure, CanyonRecord record) {
        var french = record.canyon().french();
        var american = record.canyon().american();
        return switch (measure) {
            case VERTICAL -> level(french.map(grade -> grade.vertical()));
            case AQUATIC -> level(french.map(grade -> grade.aquatic()));
            case COMMITMENT -> level(french.flatMap(grade -> grade.commitment()));
            case TECHNICAL -> level(american.map(grade -> grade.technical()));
            case TIME_GRADE -> level(american.flatMap(grade -> grade.time()));
            case RISK ->
                level(american.map(grade -> grade.risk()
                        .map(risk -> risk == AmericanGrade.Risk.R ? 1 : 2)
                        .orElse(0)));
            case WATER ->
                american.map(grade -> measure.read(grade.water().name())).orElse(Span.between(0, ENDLESS));
            case LONGEST_DROP -> drop(record);
            case MINUTES -> minutes(record.canyon().times());
            case WORST -> worst(record);
        };
    }

    private static Span level(Optional<Integer> level) {
        return level.map(known -> Span.between(known, known)).orElse(Span.between(0, ENDLESS));
    }

    private static Span drop(CanyonRecord record) {
        var drops = record.line().stream()
                .map(place -> place.obstacle())
                .filter(obstacle -> obstacle.kind() == ObstacleKind.DROP)
                .toList();
        Optional<Length> stated = record.canyon().longestDrop();
        long highest = Stream.concat(stated.stream(), drops.stream().flatMap(drop -> drop.height().stream()))
                .mapToLong(Length::inCentimetres)
                .max()
                .orElse(0);
        boolean whole = !drops.isEmpty()
                && drops.stream().allMatch(drop -> drop.height().isPresent());
        return Span.between(highest, stated.isPresent() || whole ? highest : ENDLESS);
    }

    private static Span minutes(Times times) {
        List<Integer> known = Stream.of(times.approachMinutes(), times.descentMinutes(), times.exitMinutes())
                .flatMap(Optional::stream)
                .toList();
        long sum = known.stream().mapToLong(Integer::longValue).sum();
        return Span.between(sum, known.size() == 3 ? sum : ENDLESS);
    }

    private static Span worst(CanyonRecord record) {
        Optional<Condition> worst = record.stations().stream()
                .flatMap(station -> station.parts().stream())
                .flatMap(part -> part.state().condition().stream())
                .reduce(Condition::worse);
        long least = worst.map(Condition::severity).orElse(0);
        return Span.between(least, worst.isPresent() && record.standing().neverSeen() == 0 ? least : ENDLESS);
    }

    private static boolean surely(Span known, Span wanted) {
        return wanted.from().orElse(0) <= known.from().orElse(0)
                && known.to().orElse(ENDLESS) <= wanted.to().orElse(ENDLESS);
    }

    private static boolean perhaps(Span known, Span wanted) {
        return wanted.from().orElse(0) <= known.to().orElse(ENDLESS)
                && known.from().orElse(0) <= wanted.to().orElse(ENDLESS);
    }

    private static Span wanted(CanyonMeasure measure, Random random) {
        int most = switch (measure) {
            case LONGEST_DROP -> 20_000;
            case MINUTES -> 8_000;
            case VERTICAL, AQUATIC, COMMITMENT, TECHNICAL, WATER, TIME_GRADE, RISK, WORST -> 6;
        };
        long one = random.nextInt(most);
        long other = random.nextInt(most);
        return switch (random.nextInt(3)) {
            case 0 -> Span.from(one);
            case 1 -> Span.to(one);
            default -> Span.between(Math.min(one, other), Math.max(one, other));
        };
    }

    @Test
    void theColumnsAnswerAsTheWholeRecordsDo() {
        LedgerStore ledger = new LedgerStore(database);
        List<CanyonRecord> all = new ArrayList<>();
        for (long seed = 0; seed < 60; seed++) {
            CanyonRecord record = new RandomRecords(seed, Fill.SOMETHING).canyon();
            all.add(record);
            var plan = MemoryKnown.planFor(record);
            ledger.append(new Batch(plan.revisions(), plan.facts(), "Ana", "2026-11-25T10:00:00Z"));
        }
        Random random = new Random(4);
        int doubtful = 0;
        for (int i = 0; i < 300; i++) {
            Map<CanyonMeasure, Span> spans = new EnumMap<>(CanyonMeasure.class);
            for (int more = random.nextInt(3); more >= 0; more--) {
                CanyonMeasure measure =
                        List.of(CanyonMeasure.values()).get(random.nextInt(CanyonMeasure.values().length));
                spans.put(measure, wanted(measure, random));
            }
            List<String> expected = new ArrayList<>();
            for (CanyonRecord record : all) {
                if (spans.entrySet().stream().allMatch(one -> perhaps(known(one.getKey(), record), one.getValue()))) {
                    expected.add(record.canyon().uid().text() + " "
                            + spans.entrySet().stream()
                                    .filter(one -> !surely(known(one.getKey(), record), one.getValue()))
                                    .map(one -> one.getKey().name())
                                    .sorted()
                                    .toList());
                }
            }

            List<FoundCanyon> found = canyons.canyons(new Finding("", new CanyonFilter("", "", spans, false, true)));

            assertThat(found)
                    .as(spans.toString())
                    .map(canyon -> canyon.row().uid().text() + " "
                            + canyon.unknown().stream().map(Enum::name).sorted().toList())
                    .containsExactlyInAnyOrderElementsOf(expected);
            doubtful += (int) found.stream().filter(canyon -> !canyon.fits()).count();
        }
        assertThat(doubtful).as("the sample holds what it is about").isGreaterThan(100);
    }
}
