package thalweg.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.ledger.Uid;
import thalweg.logbook.InventoryFingerprint;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;
import thalweg.testing.RandomThings;

class BodyRulesTest {

    private static final Uid SELF = Uid.minted(1, new UUID(1, 1));
    private static final Uid PARENT = Uid.minted(2, new UUID(2, 2));

    private final Findings findings = new Findings();

    private Optional<?> read(String type, Json.Fields body) {
        FieldReader in = FieldReader.of(body, findings);
        return switch (type) {
            case "canyon" -> CanyonBody.read(SELF, in);
            case "obstacle" -> ObstacleBody.read(SELF, PARENT, "", in);
            case "station" -> StationBody.read(SELF, PARENT, "", in);
            case "anchor" -> AnchorBody.read(SELF, PARENT, "", in);
            case "part" -> PartBody.read(SELF, PARENT, "", in);
            case "inspection" -> InspectionBody.read(PARENT, in);
            case "note" -> NoteBody.read(PARENT, in);
            default -> AnalysisBody.read(PARENT, in);
        };
    }

    private static Json.Fields sound(String type) {
        RandomThings make = new RandomRecords(3, Fill.EVERYTHING).things();
        return switch (type) {
            case "canyon" -> CanyonBody.write(make.canyon(SELF));
            case "obstacle" -> ObstacleBody.write(make.obstacle(SELF, PARENT, "V"));
            case "station" -> StationBody.write(make.station(SELF, PARENT, "V"));
            case "anchor" -> AnchorBody.write(make.anchor(SELF, PARENT, "V"));
            case "part" -> PartBody.write(make.part(SELF, PARENT, "V"));
            case "inspection" -> InspectionBody.write(make.inspection(PARENT));
            case "note" -> NoteBody.write(make.note(PARENT));
            default -> AnalysisBody.write(make.analysis(PARENT, new InventoryFingerprint(Map.of())));
        };
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        canyon     | name            | null       | is missing; it should be a text.
        canyon     | name            | ""         | is blank
        canyon     | other_names     | "a"        | should be a list of texts
        canyon     | other_names     | [" "]      | should be a list of texts
        canyon     | invented        | "yes"      | should be true or false.
        canyon     | french_grade    | "4"        | The French grade "4" cannot be read
        canyon     | american_grade  | "9 Z"      | The American grade "9 Z" cannot be read
        canyon     | approach_min    | 0          | is 0; it should be a whole number from 1 to 10000.
        canyon     | descent_min     | 10001      | from 1 to 10000.
        canyon     | longest_drop_cm | -1         | from 0 to 100000.
        canyon     | longest_drop_cm | 18.5       | is 18.5; it should be a whole number
        canyon     | longest_drop_cm | 100001     | from 0 to 100000.
        canyon     | position        | "here"     | should be an object in braces.
        canyon     | ropes           | 60         | should be a text.
        obstacle   | kind            | "cascade"  | is "cascade"; it should be one of drop, downclimb, handline
        obstacle   | kind            | null       | is missing; it should be one of drop
        obstacle   | order           | "a0"       | is no place in line
        obstacle   | distance_cm     | 10000001   | from 0 to 10000000.
        station    | side            | "LEFT"     | is "LEFT"; it should be one of left, centre, right.
        station    | name            | null       | is missing
        station    | rope_needed_cm  | 100001     | from 0 to 100000.
        anchor     | role            | "backup"   | is "backup"; it should be one of main, high_water, alternative.
        part       | kind            | "deadman"  | it should be one of bolt, piton, tree
        part       | label           | null       | is missing
        part       | placed          | "06/2019"  | is "06/2019"; a date is a day, month or year
        part       | placed          | "2019-02-30" | is "2019-02-30"; a date is a day
        part       | strength_n      | 0          | from 1 to 500000.
        part       | axial_strength_n | 500001    | from 1 to 500000.
        part       | holds_alone     | "maybe"    | it should be one of yes, no.
        part       | holds_alone     | true       | should be a text.
        inspection | on              | null       | is missing; it should be a day, month or year
        inspection | found           | "good"     | is "good"; it should be one of sound, worn, doubtful, unsafe, gone.
        inspection | water           | "wet"      | it should be one of dry, low, normal, high, flood.
        inspection | work            | ["drilled"] | is "drilled"; it should be one of added, replaced, removed
        inspection | work            | "replaced" | should be a list of texts
        inspection | not_seen        | true       | a part that was not seen has no condition.
        note       | on              | "x"        | is "x"; a date is
        analysis   | program         | null       | is missing
        analysis   | inventory       | null       | is missing; without it nobody can tell
        analysis   | inventory       | []         | should be an object in braces.
        analysis   | inventory       | {"a": "0123456789abcdef"} | "a" is none.
        """)
    void eachBrokenRuleIsOneFindingUnderItsKey(String type, String key, String value, String sentence) {
        Json.Fields broken =
                sound(type).with(key, JsonDocument.read("value", value).root());

        assertThat(read(type, broken)).isEmpty();
        assertThat(findings.all()).hasSize(1);
        assertThat(findings.all().get(0).sentence()).contains(sentence);
        assertThat(findings.all().get(0).path()).isIn(key, "found");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        canyon | position | {"lat_e7": 900000001, "lon_e7": 0}           | position.lat_e7
        canyon | position | {"lat_e7": 0, "lon_e7": 1800000000}          | position.lon_e7
        canyon | position | {"lat_e7": 0}                                | position
        canyon | position | {"lat_e7": 0, "lon_e7": 0, "accuracy_m": 0}  | position.accuracy_m
        canyon | position | {"lat_e7": 0, "lon_e7": 0, "datum": "ED50"}  | position.datum
        canyon | position | {"lat_e7": 0, "lon_e7": 0, "altitude": 5}    | position.altitude
        obstacle | position | {"lat_e7": 900000001, "lon_e7": 0}         | position.lat_e7
        station | position | {"lat_e7": 0, "lon_e7": -1800000001}        | position.lon_e7
        part   | place    | {"right_cm": 1, "up_cm": 2}                  | place
        part   | place    | {"right_cm": 5001, "up_cm": 2, "out_cm": 0}  | place.right_cm
        part   | place    | {"right_cm": 1, "up_cm": 2, "out_cm": 0, "x": 1} | place.x
        """)
    void aBreachInsideIsOneFindingAtItsOwnPlace(String type, String key, String value, String path) {
        Json.Fields broken =
                sound(type).with(key, JsonDocument.read("value", value).root());

        assertThat(read(type, broken)).isEmpty();
        assertThat(findings.all()).hasSize(1);
        assertThat(findings.all().get(0).path()).isEqualTo(path);
    }

    @Test
    void textsHaveTheirLongestLengths() {
        checkLongest("canyon", "name", Limits.NAME);
        checkLongest("canyon", "access", Limits.PROSE);
        checkLongest("part", "batch", Limits.NAME);
        checkLongest("inspection", "note", Limits.PROSE);
        checkLongest("analysis", "input", Limits.RIG_TEXT);
    }

    private void checkLongest(String type, String key, int longest) {
        int before = findings.count();
        assertThat(read(type, sound(type).with(key, Json.of("x".repeat(longest)))))
                .isPresent();
        assertThat(findings.count()).isEqualTo(before);
        assertThat(read(type, sound(type).with(key, Json.of("x".repeat(longest + 1)))))
                .isEmpty();
        assertThat(findings.count()).isEqualTo(before + 1);
    }

    /** Beyond 20,000 UTF-16 units the ledger could not read back what it stored. */
    @Test
    void aRigTextOfWideCharactersIsRefusedBeforeTheLedgerCannotReadIt() {
        Json wide = Json.of("\ud83d\ude00".repeat(Limits.RIG_TEXT - 1));

        assertThat(read("analysis", sound("analysis").with("result", wide)).isPresent())
                .isFalse();
        assertThat(findings.count()).isEqualTo(1);
    }

    @Test
    void anInspectionSaysWhatWasFoundOrThatNothingWasSeen() {
        Function<String, Json.Fields> body =
                text -> (Json.Fields) JsonDocument.read("body", text).root();

        assertThat(read("inspection", body.apply("{\"on\": \"2019\"}"))).isEmpty();
        assertThat(read("inspection", body.apply("{\"on\": \"2019\", \"not_seen\": true, \"work\": [\"cleaned\"]}")))
                .isEmpty();
        assertThat(read("inspection", body.apply("{\"on\": \"2019\", \"left\": \"sound\"}")))
                .isPresent();
        assertThat(read("note", body.apply("{\"on\": \"2019\", \"by\": \"Ana\"}")))
                .isEmpty();
        assertThat(findings.all()).hasSize(3);
    }

    @Test
    void typesAreKnownByTheirWords() {
        for (ThingType type : ThingType.values()) {
            assertThat(ThingType.of(type.word())).contains(type);
        }
        for (FactType type : FactType.values()) {
            assertThat(FactType.of(type.word())).contains(type);
        }
        assertThat(ThingType.of("CANYON")).isEmpty();
        assertThat(FactType.of("withdrawal")).isEmpty();
    }

    @Test
    void aThingIsCalledByItsNameOrElseByItsKind() {
        RandomThings make = new RandomRecords(1, Fill.NOTHING).things();

        assertThat(ThingBody.of(make.obstacle(SELF, PARENT, "V")).label()).matches("[a-z_]+");
        assertThat(ThingBody.of(make.anchor(SELF, PARENT, "V")).label()).matches("main|high_water|alternative");
        assertThat(ThingBody.of(make.canyon(SELF)).label()).isNotBlank();
    }
}
