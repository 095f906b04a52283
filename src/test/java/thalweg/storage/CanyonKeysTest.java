package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonKeys;
import thalweg.logbook.CanyonMeasure;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyon;
import thalweg.logbook.RowOrder;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

/** The list of canyons as keys in order, and as the rows of some of them. */
class CanyonKeysTest {

    private static final CanyonFilter AT_MOST_V4 =
            new CanyonFilter("", "", Map.of(CanyonMeasure.VERTICAL, CanyonMeasure.VERTICAL.read("..4")), false, false);

    private final Database database = Database.inMemory();
    private final CanyonStore canyons = new CanyonStore(database);

    @BeforeEach
    void fill() {
        new Records(database).add("""
                {"name": "Zulu", "region": "North", "french_grade": "v2 a1 II"},
                {"name": "écluse", "region": "North"},
                {"name": "Eclipse", "region": "South", "french_grade": "v6 a1 II"},
                {"name": "alpha", "region": "South", "french_grade": "v4 a1 II"},
                {"name": "Écluse basse", "region": "South"}
                """);
    }

    @AfterEach
    void close() {
        database.close();
    }

    private List<FoundCanyon> whole(Finding finding) {
        return canyons.canyons(finding).stream()
                .filter(canyon -> finding.filter().unknownToo() || canyon.fits())
                .toList();
    }

    private List<FoundCanyon> byKeys(Finding finding) {
        RowOrder order = canyons.keys(finding).order();
        Map<Long, FoundCanyon> rows = canyons.rows(order, finding.filter());
        return LongStream.of(order.toArray()).mapToObj(rows::get).toList();
    }

    private List<String> names(Finding finding) {
        return byKeys(finding).stream().map(canyon -> canyon.row().name()).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "ecl", "north", "nowhere", "--"})
    void keysAndTheirRowsAreWhatTheListReadWholeHolds(String words) {
        Stream.of(CanyonFilter.NONE, AT_MOST_V4, AT_MOST_V4.withUnknown(true))
                .map(filter -> new Finding(words, filter))
                .forEach(finding -> assertThat(byKeys(finding)).isEqualTo(whole(finding)));
    }

    @Test
    void theyStandInTheOrderOfTheirNamesWhateverTheirAccents() {
        assertThat(names(Finding.of(""))).containsExactly("alpha", "Eclipse", "écluse", "Écluse basse", "Zulu");
        assertThat(names(Finding.of("south"))).containsExactly("alpha", "Eclipse", "Écluse basse");
    }

    @Test
    void thoseThatMayFitAreCountedWhetherTheyAreShownOrNot() {
        CanyonKeys sure = canyons.keys(new Finding("", AT_MOST_V4));
        CanyonKeys unknownToo = canyons.keys(new Finding("", AT_MOST_V4.withUnknown(true)));

        assertThat(sure.order().size()).isEqualTo(2);
        assertThat(unknownToo.order().size()).isEqualTo(4);
        assertThat(List.of(sure.unknown(), unknownToo.unknown())).containsExactly(2, 2);
        assertThat(canyons.keys(Finding.of("")).unknown()).isZero();
    }

    @Test
    void aWindowOfTheRowsIsReadByItsKeys() {
        RowOrder order = canyons.keys(Finding.of("")).order();
        RowOrder two = order.between(1, 3);

        assertThat(canyons.rows(two, CanyonFilter.NONE))
                .containsOnlyKeys(two.at(0), two.at(1))
                .extractingByKey(two.at(0))
                .extracting(canyon -> canyon.row().name())
                .isEqualTo("Eclipse");
        assertThat(canyons.rows(RowOrder.NONE, CanyonFilter.NONE)).isEmpty();
        assertThat(canyons.rows(new RowOrder(new long[] {999_999}), CanyonFilter.NONE))
                .isEmpty();
    }

    @Test
    void aCanyonIsFoundAgainByItsId() {
        Uid zulu = byKeys(Finding.of("zulu")).get(0).row().uid();

        long key = canyons.key(zulu).orElseThrow();

        assertThat(canyons.keys(Finding.of("")).order().rowOf(key)).hasValue(4);
        assertThat(canyons.key(new RandomRecords(5, Fill.NOTHING).uid())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {CanyonStore.COUNT, CanyonStore.ALL_KEYS})
    void allAreCountedAndPutInOrderFromAnIndexAlone(String statement) {
        List<String> plan =
                database.read(sql -> sql.all("explain query plan " + statement, row -> row.getString("detail")));

        assertThat(plan).containsExactly("SCAN canyon USING COVERING INDEX canyon_in_use");
    }
}
