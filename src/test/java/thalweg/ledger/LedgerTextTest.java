package thalweg.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.json.Json;

class LedgerTextTest {

    private static final Uid THING =
            Uid.parse("0190163d-8694-739b-aea5-966c26f8ad91").orElseThrow();

    private static final Revision FIRST = Revision.first(
            THING,
            "obstacle",
            Json.fields()
                    .put("order", "V")
                    .put("name", "Grande \u010c\u00e9sure")
                    .put("kind", "drop")
                    .put("height_cm", 1800)
                    .done(),
            "Ana",
            "2026-11-25T10:00:00Z");

    private static final Fact FACT = new Fact(
            "inspection",
            THING,
            Json.fields()
                    .put("on", "2026-11")
                    .put("found", "worn")
                    .put("note", "line\nbreak \"x\"")
                    .done(),
            Optional.empty(),
            "Ana",
            "2026-11-25T10:00:00Z");

    /**
     * The hashes of three entries. They were worked out apart from this program, with Python's hashlib over the
     * canonical texts written by hand; a change of any of them would give every record of every keeper another name.
     */
    @Test
    void hashesNeverChange() {
        assertThat(FIRST.hash().hex()).isEqualTo("0098afc4d63da28db15f6308e71e8c1f7635053c862bd1db55bf536dfac946f4");
        assertThat(FIRST.next(Json.fields().done(), true, "Bo", "2026-11-26T10:00:00Z")
                        .hash()
                        .hex())
                .isEqualTo("08d80923a690896ada7f6d54277c4fd0de57cc0b1aa4bfa550a4582041fef275");
        assertThat(FACT.hash().hex()).isEqualTo("b03d2625d1bf7f0f047fb05f322ee6927cc12741f4a7c26342d3a26ad71d8a90");
        assertThat(FACT.uid().text()).isEqualTo("b03d2625-d1bf-8f0f-847f-b05f322ee692");
    }

    /** FIPS 180-4, the sample message "abc". */
    @Test
    void hashesAreSha256() {
        assertThat(Hash.of("abc").hex()).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(Hash.ofBytes(Hash.of("abc").bytes())).isEqualTo(Hash.of("abc"));
        assertThat(Hash.parse("ba78")).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Hash(Hash.of("abc").hex().toUpperCase(java.util.Locale.ROOT)));
    }

    @Test
    void theOrderInWhichFieldsWereSetMakesNoDifference() {
        Json.Fields other = Json.fields()
                .put("height_cm", 1800)
                .put("kind", "drop")
                .put("name", "Grande \u010c\u00e9sure")
                .put("order", "V")
                .done();

        assertThat(Revision.first(THING, "obstacle", other, "Ana", FIRST.at()).hash())
                .isEqualTo(FIRST.hash());
    }

    @Test
    void everythingThatIsWrittenIsReadBack() {
        Revision merged = new Revision(
                THING,
                "canyon",
                Json.fields()
                        .put("later", new Json.Items(List.of(Json.NOTHING, Json.of(1))))
                        .done(),
                true,
                List.of(Hash.of("b"), Hash.of("a"), Hash.of("b")),
                7,
                "Zo\u00eb",
                "2026-01-01T00:00:00Z");
        Fact correction =
                new Fact("later", FACT.uid(), Json.fields().done(), Optional.of(FACT.uid()), "Bo", "2026-01-01");

        assertThat(merged.parents()).hasSize(2).isSorted();
        for (Revision revision : List.of(FIRST, merged, FIRST.next(FIRST.body(), true, "Bo", "now"))) {
            assertThat(LedgerText.revision(revision.canonical())).contains(revision);
        }
        for (Fact fact : List.of(FACT, correction)) {
            assertThat(LedgerText.fact(fact.canonical())).contains(fact);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "gen":1           | "gen":2
            "gen":1           | "gen":0
            "gen":1           | "gen":1.5
            "gen":1           | "gen":1e999999999
            "gen":1           | "gen":-9999999999999999999
            "parents":[]      | "parents":["zz"]
            "parents":[]      | "parents":[7]
            "type":"obstacle" | "type":""
            "author":"Ana"    | "author":" "
            "author":"Ana"    | "author":7
            1800              | 18.5
            1800              | 1800.0
            "uid":"0190       | "uid":"x190
            {"at"             | {"added":1,"at"
            "body":{          | "body": {
            "height_cm":1800, | "height_cm":1800,"height_cm":1800,
            }                 | ``
            """)
    void alteredTextsAreNoRevision(String from, String to) {
        String altered = FIRST.canonical().replace(from, to);

        assertThat(altered).isNotEqualTo(FIRST.canonical());
        assertThat(LedgerText.revision(altered)).isEmpty();
    }

    @Test
    void aBodyMayHoldWhatThisVersionDoesNotKnow() {
        String newer = FIRST.canonical().replace("{\"height_cm\"", "{\"added\":1,\"height_cm\"");

        Revision read = LedgerText.revision(newer).orElseThrow();

        assertThat(read.body().field("added")).contains(Json.of(1));
        assertThat(read.hash()).isEqualTo(Hash.of(newer)).isNotEqualTo(FIRST.hash());
    }

    @Test
    void textsThatAreNoEntriesAreNone() {
        for (String text : List.of("", "{", "[]", "null", "{}", "\u0000", FACT.canonical())) {
            assertThat(LedgerText.revision(text)).isEmpty();
        }
        for (String text : List.of("", "{", "[]", "null", "{}", FIRST.canonical())) {
            assertThat(LedgerText.fact(text)).isEmpty();
        }
        assertThat(LedgerText.fact(FACT.canonical().replace("\"Ana\"", "\"\""))).isEmpty();
    }

    @Test
    void revisionsAndFactsThatSayNothingAreRefused() {
        Json.Fields body = Json.fields().done();

        assertThatIllegalArgumentException().isThrownBy(() -> Revision.first(THING, " ", body, "Ana", "now"));
        assertThatIllegalArgumentException().isThrownBy(() -> Revision.first(THING, "part", body, "", "now"));
        assertThatIllegalArgumentException().isThrownBy(() -> Revision.first(THING, "part", body, "Ana", ""));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Revision(THING, "part", body, false, List.of(), 2, "Ana", "now"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Revision(THING, "part", body, false, List.of(Hash.of("")), 1, "Ana", "now"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Fact("", THING, body, Optional.empty(), "Ana", "now"));
    }
}
