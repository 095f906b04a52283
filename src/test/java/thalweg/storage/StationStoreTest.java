package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.logbook.Condition;
import thalweg.logbook.ListedStation;
import thalweg.logbook.RowOrder;
import thalweg.logbook.Standing;
import thalweg.logbook.StationOrder;
import thalweg.route.ObstacleKind;
import thalweg.route.PartialDate;
import thalweg.units.Length;

class StationStoreTest {

    private final Database database = Database.inMemory();
    private final StationStore stations = new StationStore(database);

    @BeforeEach
    void fill() {
        new Records(database).add("""
                {"name": "Zulu", "region": "North", "line": [
                  {"kind": "drop", "height_cm": 1800, "stations": [
                    {"name": "month", "anchors": [{"role": "main", "parts": [
                      {"label": "a", "kind": "bolt", "inspections": [{"on": "2020-06", "found": "sound"}]}]}]},
                    {"name": "bare"}]},
                  {"kind": "swim"},
                  {"kind": "drop", "stations": [
                    {"name": "Ünseen", "anchors": [{"role": "main", "parts": [
                      {"label": "b", "kind": "bolt"},
                      {"label": "c", "kind": "bolt", "inspections": [{"on": "2024-01-01", "not_seen": true}]}]}]},
                    {"name": "year", "anchors": [{"role": "main", "parts": [
                      {"label": "d", "kind": "bolt", "inspections": [{"on": "2020", "found": "worn"}]},
                      {"label": "e", "kind": "bolt", "inspections": [{"on": "2001-01-01", "found": "gone"}]},
                      {"label": "f", "kind": "bolt"}]}]}]}]},
                {"name": "alpha", "line": [{"kind": "drop", "stations": [
                  {"name": "day", "anchors": [{"role": "main", "parts": [
                    {"label": "g", "kind": "bolt", "inspections": [
                      {"on": "2020-06-29", "found": "unsafe"}, {"on": "2019-01-01", "found": "sound"}]}]}]}]}]}
                """);
    }

    @AfterEach
    void close() {
        database.close();
    }

    private List<ListedStation> listed(String words, StationOrder order) {
        return List.copyOf(stations.rows(stations.keys(words, order)).values());
    }

    private List<String> names(String words, StationOrder order) {
        return listed(words, order).stream().map(ListedStation::name).toList();
    }

    private ListedStation only(String words) {
        List<ListedStation> listed = listed(words, StationOrder.NAME);
        assertThat(listed).hasSize(1);
        return listed.get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "LOOKED,    Ünseen bare year day month",
        "CONDITION, year day month Ünseen bare",
        "NAME,      bare day month Ünseen year",
        "CANYON,    day month bare Ünseen year"
    })
    void theyStandInTheOrderThatIsAskedFor(StationOrder order, String names) {
        assertThat(names("", order)).containsExactly(names.split(" "));
    }

    @Test
    void aMonthOrAYearCountsAsItsLastDay() {
        assertThat(only("month").oldestLook()).contains(PartialDate.parse("2020-06"));
        assertThat(only("year").oldestLook()).contains(PartialDate.parse("2020"));
        assertThat(names("", StationOrder.LOOKED)).containsSubsequence("day", "month");
    }

    @Test
    void aStationIsAsOldAsThePartThatWasLongestNotSeen() {
        Database other = Database.inMemory();
        new Records(other).add("""
                {"name": "Yankee", "line": [{"kind": "drop", "stations": [
                  {"name": "old", "anchors": [{"role": "main", "parts": [
                    {"label": "h", "kind": "bolt", "inspections": [{"on": "2026-05-01", "found": "sound"}]},
                    {"label": "i", "kind": "bolt", "inspections": [{"on": "2015-05-01", "found": "sound"}]},
                    {"label": "j", "kind": "bolt", "inspections": [{"on": "1999-05-01", "found": "gone"}]}]}]},
                  {"name": "lost", "anchors": [{"role": "main", "parts": [
                    {"label": "k", "kind": "bolt", "inspections": [{"on": "1999-05-01", "found": "gone"}]}]}]}]}]}
                """);

        StationStore list = new StationStore(other);

        assertThat(list.rows(list.keys("", StationOrder.LOOKED)).values())
                .extracting(ListedStation::name, station -> station.oldestLook().map(PartialDate::print))
                .containsExactly(tuple("lost", Optional.of("1999-05-01")), tuple("old", Optional.of("2015-05-01")));
        other.close();
    }

    @Test
    void whatWasNotSeenWasNotLookedAt() {
        assertThat(only("unseen").oldestLook()).isEmpty();
    }

    @Test
    void aRowSaysWhereItIsAndHowItStands() {
        ListedStation month = only("month");
        assertThat(month.place()).isEqualTo(1);
        assertThat(month.kind()).contains(ObstacleKind.DROP);
        assertThat(month.height()).contains(Length.centimetres(1800));
        assertThat(month.canyon().name()).isEqualTo("Zulu");

        ListedStation year = only("year");
        assertThat(year.place()).isEqualTo(3);
        assertThat(year.height()).isEmpty();
        assertThat(year.parts()).isEqualTo(3);
        assertThat(year.standing()).isEqualTo(new Standing(Optional.of(Condition.WORN), 1, 1));
        assertThat(only("bare").parts()).isZero();
    }

    @Test
    void wordsFindByTheStationAndItsCanyon() {
        assertThat(names("zulu uns", StationOrder.LOOKED)).containsExactly("Ünseen");
        assertThat(names("north", StationOrder.NAME)).containsExactly("bare", "month", "Ünseen", "year");
        assertThat(names("nowhere", StationOrder.NAME)).isEmpty();
        assertThat(stations.count()).isEqualTo(5);
    }

    @Test
    void aWindowOfTheRowsIsReadByItsKeys() {
        RowOrder keys = stations.keys("", StationOrder.CANYON);
        assertThat(stations.rows(keys.between(-3, 2)).values())
                .extracting(ListedStation::name)
                .containsExactly("day", "month");
        assertThat(stations.rows(keys.between(4, 900)).values())
                .extracting(ListedStation::name)
                .containsExactly("year");
        assertThat(stations.rows(new RowOrder(new long[] {keys.at(1), 999_999, keys.at(0)}))
                        .values())
                .extracting(ListedStation::name)
                .containsExactly("month", "day");
        assertThat(keys.rowOf(keys.at(3))).hasValue(3);
        assertThat(keys.rowOf(999_999)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "LOOKED,    station_by_looked",
        "CONDITION, station_by_severity",
        "NAME,      station_by_name",
        "CANYON,    station_by_canyon"
    })
    void everyOrderOfAllIsReadFromAnIndexAlone(StationOrder order, String index) {
        List<String> plan = database.read(sql ->
                sql.all("explain query plan " + StationStore.query(false, order), row -> row.getString("detail")));
        assertThat(plan).containsExactly("SCAN station_state USING COVERING INDEX " + index);
    }
}
