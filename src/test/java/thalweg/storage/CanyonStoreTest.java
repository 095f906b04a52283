package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.body.ThingBody;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRow;
import thalweg.route.AmericanGrade;
import thalweg.route.Canyon;
import thalweg.route.FrenchGrade;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.route.Station;
import thalweg.route.Times;
import thalweg.testing.MemoryKnown;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;
import thalweg.text.Fold;

class CanyonStoreTest {

    private static final String AT = "2026-11-25T10:00:00Z";

    private final Database database = Database.inMemory();
    private final LedgerStore ledger = new LedgerStore(database);
    private final CanyonStore canyons = new CanyonStore(database);
    private final RandomRecords random = new RandomRecords(1, Fill.NOTHING);

    @AfterEach
    void close() {
        database.close();
    }

    private void add(ThingBody... things) {
        List<Revision> revisions = new ArrayList<>();
        for (ThingBody thing : things) {
            revisions.add(Revision.first(thing.uid(), thing.type().word(), thing.body(), "Ana", AT));
        }
        ledger.append(new Batch(revisions, List.of(), "Ana", "2026-11-25T10:00:00Z"));
    }

    private Uid canyon(String name, List<String> otherNames, String region, String country) {
        Uid uid = random.uid();
        add(ThingBody.of(new Canyon(
                uid,
                name,
                otherNames,
                region,
                country,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Times.UNKNOWN,
                Optional.empty(),
                Prose.none(),
                true)));
        return uid;
    }

    private Uid station(Uid canyon, String name) {
        Uid obstacle = random.uid();
        Uid station = random.uid();
        add(
                ThingBody.of(random.things().obstacle(obstacle, canyon, "V")),
                ThingBody.of(new Station(
                        station,
                        obstacle,
                        "V",
                        name,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Prose.none())));
        return station;
    }

    private List<String> found(String words) {
        return canyons.search(words).stream().map(CanyonRow::name).toList();
    }

    /** The kept summaries say what the whole record says. */
    @Test
    void aRowOfTheListSaysWhatTheRecordSays() {
        for (long seed = 0; seed < 30; seed++) {
            CanyonRecord record = new RandomRecords(seed, Fill.SOMETHING).canyon();
            var plan = MemoryKnown.planFor(record);
            ledger.append(new Batch(plan.revisions(), plan.facts(), "Ana", "2026-11-25T10:00:00Z"));
            Canyon canyon = record.canyon();

            CanyonRow row = canyons.search("").stream()
                    .filter(one -> one.uid().equals(canyon.uid()))
                    .findFirst()
                    .orElseThrow();

            assertThat(row)
                    .isEqualTo(new CanyonRow(
                            canyon.uid(),
                            canyon.name(),
                            canyon.whereabouts(),
                            canyon.french().map(FrenchGrade::print).orElse(""),
                            canyon.american().map(AmericanGrade::print).orElse(""),
                            record.longestDrop(),
                            record.stations().size(),
                            record.standing(),
                            record.newestInspection().map(PartialDate::print).orElse(""),
                            canyon.invented()));
        }
        assertThat(canyons.count()).isEqualTo(30);
    }

    @Test
    void everyWordMustBeginAWordOfTheCanyon() {
        canyon("Upper Example Gorge", List.of("Sample Creek"), "Northland", "Utopia");
        canyon("Lower Example Gorge", List.of(), "Southland", "Utopia");

        assertThat(found("")).containsExactly("Lower Example Gorge", "Upper Example Gorge");
        assertThat(found("exam utop")).hasSize(2);
        assertThat(found("samp")).containsExactly("Upper Example Gorge");
        assertThat(found("gorge south")).containsExactly("Lower Example Gorge");
        assertThat(found("LOWER")).containsExactly("Lower Example Gorge");
        assertThat(found("ample")).as("no word begins so, but Sample holds it").isEmpty();
        assertThat(found("gorge north south")).isEmpty();
    }

    @Test
    void signsOfPatternsAreJustSigns() {
        canyon("Plain", List.of(), "", "");

        for (String words : List.of("P_ain", "_lain", "%lain", "Pl%n", "x' or 1=1 --")) {
            assertThat(found(words)).as(words).isEmpty();
        }
        assertThat(found("plain")).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "Łużna, luzna",
        "Probenstraße, PROBENSTRASSE",
        "Probenstrasse, straße probenstraße",
        "Ёлка, елк",
        "Ñandú, ÑAND",
        "奥秩父沢登り, 父",
        "奥秩父沢登り, り",
        "奥秩父沢登り, 秩父沢",
        "계곡, 곡",
        "وَادِي الكبير, وادي",
        "नदी घाटी, घाटी",
        "ILICA, ılıca",
        "Ilıca, ILICA",
        "İğne, igne",
        "Ⅳ, iv",
        "Val d’Enfer, d'enf",
        "ที่น้ำตก, ที่"
    })
    void namesAreFoundHoweverTheyAreTyped(String name, String typed) {
        canyon("Other", List.of(), "", "");
        canyon("Named", List.of(name + " straße"), "", "");
        Locale before = Locale.getDefault();
        try {
            for (String language : List.of("en", "tr", "lt")) {
                Locale.setDefault(Locale.forLanguageTag(language));

                assertThat(found(typed)).as(language).containsExactly("Named");
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    /** The index cuts no word and changes none that folding left whole: one in 101 of all letters and digits. */
    @Test
    void everyLetterFindsItself() {
        List<String> letters = IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
                .filter(Character::isLetterOrDigit)
                .filter(c -> !Fold.tokens(Character.toString(c)).isEmpty())
                .mapToObj(Character::toString)
                .toList();
        List<String> some = IntStream.range(0, letters.size() / 101)
                .mapToObj(i -> letters.get(i * 101))
                .toList();
        assertThat(some).hasSizeGreaterThan(1000);
        for (int i = 0; i < some.size(); i += 20) {
            List<String> names = some.subList(i, Math.min(some.size(), i + 20));
            String first = "z" + (10_000 + i);
            Uid uid = canyon(first + " " + String.join(" ", names), List.of(), "", "");

            for (String letter : names) {
                assertThat(canyons.search(first + " " + letter))
                        .as(letter)
                        .map(CanyonRow::uid)
                        .containsExactly(uid);
            }
        }
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    @Test
    void stationsAreFoundByTheirNameAndTheirCanyons() {
        Uid canyon = canyon("Example", List.of(), "", "Utopia");
        Uid other = canyon("Another", List.of(), "", "");
        Uid first = station(canyon, "Big tree");
        Uid second = station(other, "Big boulder");

        assertThat(canyons.stations("big").stream().map(StationRow::station)).containsExactly(second, first);
        assertThat(canyons.stations("exa big")).containsExactly(new StationRow(first, canyon, "Example", "Big tree"));
        assertThat(canyons.stations("utopia tree")).hasSize(1);
        assertThat(canyons.stations("small")).isEmpty();
        assertThat(canyons.station(second)).map(StationRow::stationName).contains("Big boulder");
        assertThat(canyons.station(first)).map(StationRow::canyon).contains(canyon);
        assertThat(canyons.station(canyon)).isEmpty();
    }

    @Test
    void aSearchReturnsNoMoreStationsThanAnybodyCanChooseFrom() {
        Uid canyon = canyon("Example", List.of(), "", "");
        for (int i = 0; i < CanyonStore.MOST_STATIONS + 5; i++) {
            station(canyon, "Station " + i);
        }

        assertThat(canyons.stations("station")).hasSize(CanyonStore.MOST_STATIONS);
        assertThat(canyons.search("").get(0).stations()).isEqualTo(CanyonStore.MOST_STATIONS + 5);
    }

    @Test
    void theLineStandsInTheOrderOfItsKeysWhateverTheOrderOfEntry() {
        Uid canyon = canyon("Example", List.of(), "", "");
        for (String key : List.of("m", "V", "Vz", "1")) {
            add(ThingBody.of(random.things().obstacle(random.uid(), canyon, key)));
        }

        List<LineRecord> line =
                new RecordStore(database).canyon(canyon).orElseThrow().line();

        assertThat(line).map(place -> place.obstacle().order()).containsExactly("1", "V", "Vz", "m");
        assertThat(line).map(LineRecord::number).containsExactly(1, 2, 3, 4);
        assertThat(new RecordStore(database).canyon(random.uid())).isEmpty();
    }
}
