package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.json.Json;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.PartFinding;
import thalweg.logbook.PartRow;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;

class PartStoreTest {

    private final Database database = Database.inMemory();
    private final PartStore parts = new PartStore(database);

    @BeforeEach
    void fill() {
        new Records(database).add("""
                {"name": "Łużna Gorge", "country": "Utopia", "line": [{"kind": "drop", "stations": [
                  {"name": "Upper", "anchors": [{"role": "main", "parts": [
                    {"label": "left", "kind": "bolt", "material": "stainless steel", "size": "10 x 90 mm",
                     "standard": "EN 959", "maker": "Probewerk", "batch": "AB-1234", "placed": "2019-06",
                     "inspections": [
                       {"on": "2024-05-01", "found": "worn"},
                       {"on": "2021", "found": "doubtful", "left": "sound", "work": ["replaced"]}]},
                    {"label": "right", "kind": "bolt", "material": "zinc-plated steel", "size": "10x90",
                     "standard": "EN959", "maker": "Probe Werk", "batch": "AB12345", "placed": "2022",
                     "inspections": [{"on": "2021", "found": "gone", "left": "sound", "work": ["replaced"]}]},
                    {"label": "link", "kind": "quick_link", "batch": "1234"}]}]},
                  {"name": "Lower", "anchors": [{"role": "main", "parts": [
                    {"label": "tat", "kind": "webbing", "material": "nylon", "note": "奥試験 stamp"},
                    {"label": "thing", "kind": "other_material", "material": "other steel"}]}]}]}]},
                {"name": "Another", "line": [{"kind": "drop", "stations": [
                  {"name": "Only", "anchors": [{"role": "main", "parts": [
                    {"label": "bolt of old", "kind": "piton"}]}]}]}]}
                """);
    }

    @AfterEach
    void close() {
        database.close();
    }

    private List<String> found(PartFinding finding) {
        return parts.parts(finding, 100).stream().map(row -> row.part().label()).toList();
    }

    private List<String> found(String words) {
        return found(PartFinding.of(words));
    }

    private PartRow only(String words) {
        List<PartRow> rows = parts.parts(PartFinding.of(words), 100);
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    @Test
    void withoutAQuestionEveryPartIsListedByCanyonAndAlongTheLine() {
        assertThat(found("")).containsExactly("bolt of old", "left", "right", "link", "tat", "thing");
        assertThat(parts.parts(PartFinding.ALL, 2)).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            stainless        | left
            STEEL 10x90      | left right
            probewerk        | left right
            ab-1234          | left right
            ab1234           | left right
            1234             | left right link
            ab 12345         | right
            AB12345          | right
            b1234            |
            quick link       | link
            bolt             | bolt of old left right
            luzna lower      | tat thing
            upper bolt       | left right
            試               | tat
            験               | tat
            en 959           | left right
            en959            | left right
            """)
    void wordsFindWhateverAPartIsMadeOfAndWhereItIs(String words, String labels) {
        assertThat(String.join(" ", found(words))).isEqualTo(labels == null ? "" : labels);
    }

    /** The signs of the index's own language, its operators, quotes of every kind: all of them are just text. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "left              | left
            left*              | left
            "left"*            | left
            ^left              | left
            -left              | left
            (left              | left
            left + tat         |
            NEAR(left tat)     |
            left OR tat        |
            left AND stainless |
            NOT tat            |
            batch:1234         |
            {batch} : 1234     |
            label : left       |
            left' or 1=1 --    |
            """)
    void noSignOfAQueryMeansAnythingAndItsOperatorsAreWords(String words, String labels) {
        assertThat(String.join(" ", found(words))).isEqualTo(labels == null ? "" : labels);
    }

    @Test
    void aWordOfSignsAloneAsksForNothing() {
        assertThat(found("* \" -")).hasSize(6);
        assertThat(found("left *")).containsExactly("left");
    }

    private static PartFinding field(String name, String value) {
        return new PartFinding(
                "",
                name.equals("kind") ? Optional.of(PartKind.valueOf(value)) : Optional.empty(),
                name.equals("material") ? value : "",
                name.equals("size") ? value : "",
                name.equals("standard") ? value : "",
                name.equals("maker") ? value : "",
                name.equals("batch") ? value : "");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            kind     | BOLT           | left right
            kind     | OTHER_MATERIAL | thing
            kind     | OTHER_POINT    |
            kind     | QUICK_LINK     | link
            material | steel          | left right thing
            material | zinc           | right
            size     | 10 x 90        | left right
            size     | 10x90mm        | left
            size     | 90             | left right
            standard | EN 959         | left right
            standard | en             | left right
            maker    | probewerk      | left right
            maker    | PROBE          | left right
            batch    | AB-1234        | left right
            batch    | AB 12345       | right
            batch    | 1234           | left right link
            batch    | 234            |
            """)
    void aFieldIsAskedForByItself(String name, String value, String labels) {
        assertThat(String.join(" ", found(field(name, value)))).isEqualTo(labels == null ? "" : labels);
    }

    @Test
    void aPartThatWasReplacedSinceItWasPlacedIsToldSo() {
        assertThat(only("stainless").replacedSince()).contains(PartialDate.parse("2021"));
        assertThat(only("stainless").state().condition()).contains(Condition.WORN);
        assertThat(only("zinc").replacedSince())
                .as("the record was brought up to date after the replacement")
                .isEmpty();
        assertThat(only("zinc").replaced()).contains(PartialDate.parse("2021"));
        assertThat(only("link").replacedSince()).isEmpty();
    }

    @Test
    void aChangeReachesTheWordsOfEverythingBelow() {
        LedgerStore ledger = new LedgerStore(database);
        PartRow tat = only("tat");

        change(ledger, tat.canyon(), "name", "Renamed");
        change(ledger, tat.station(), "name", "Zielona");

        assertThat(found("luzna")).isEmpty();
        assertThat(found("renamed")).hasSize(5);
        assertThat(found("zielona")).containsExactly("tat", "thing");
        assertThat(found("lower")).isEmpty();
        assertThat(new CanyonStore(database).stations("renamed zie")).hasSize(1);
        assertThat(new CanyonStore(database).stations("luzna upper")).isEmpty();
        change(ledger, tat.part().uid(), "batch", "77");
        assertThat(found(field("batch", "77"))).containsExactly("tat");
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    @Test
    void whatIsOutOfUseIsNotFoundNorWhatLiesInIt() {
        LedgerStore ledger = new LedgerStore(database);
        takeOut(ledger, only("tat").part().uid());
        takeOut(ledger, only("stainless").station());
        takeOut(ledger, only("piton").canyon());

        assertThat(found("")).containsExactly("thing");
        assertThat(found("bolt")).isEmpty();
        assertThat(new CanyonStore(database).stations("upper")).isEmpty();
        assertThat(new CanyonStore(database).search("another")).isEmpty();
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    private static void takeOut(LedgerStore ledger, Uid uid) {
        Revision head = ledger.head(uid).orElseThrow();
        Revision next = head.next(head.body(), true, "Bo", "2026-11-26T10:00:00Z");
        ledger.append(new Batch(List.of(next), List.of(), "Bo", "2026-11-26T10:00:00Z"));
    }

    private static void change(LedgerStore ledger, Uid uid, String field, String value) {
        Revision head = ledger.head(uid).orElseThrow();
        Revision next = head.next(head.body().with(field, Json.of(value)), false, "Bo", "2026-11-26T10:00:00Z");
        ledger.append(new Batch(List.of(next), List.of(), "Bo", "2026-11-26T10:00:00Z"));
    }
}
