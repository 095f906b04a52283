package thalweg.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.fault.Sentence;

class JsonDocumentTest {

    private static Json read(String text) {
        return JsonDocument.read("trip.json", text).root();
    }

    private static void assertBeyond(String text, String place) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(JsonException.class)
                .hasMessageStartingWith("trip.json goes beyond what is read safely at " + place)
                .hasMessageContaining(": nesting up to 16");
    }

    @Test
    void sixteenLevelsAreReadAndSeventeenAreNot() {
        assertThatCode(() -> read("[".repeat(16) + "]".repeat(16))).doesNotThrowAnyException();
        assertBeyond("[".repeat(17) + "]".repeat(17), "line 1, column 1");
        assertBeyond("[".repeat(100_000), "line 1, column 1");
    }

    @Test
    void textsNamesAndNumbersHaveTheirLengths() {
        assertThatCode(() -> read("\"" + "a".repeat(20_000) + "\"")).doesNotThrowAnyException();
        assertThatThrownBy(() -> read("\"" + "a".repeat(20_001) + "\"")).hasMessageContaining("read safely");
        assertThatCode(() -> read("{\"" + "n".repeat(64) + "\": 1}")).doesNotThrowAnyException();
        assertThatThrownBy(() -> read("{\"" + "n".repeat(65) + "\": 1}")).hasMessageContaining("read safely");
        assertThatCode(() -> read("12345678901234567890")).doesNotThrowAnyException();
        assertThatThrownBy(() -> read("123456789012345678901")).hasMessageContaining("read safely");
    }

    /** Each of these is a few bytes long and a thousand million digits when it is written out. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1e999999999",
                "1e-999999999",
                "-1E+999999999",
                "0e-999999999",
                "0e999999999",
                "1e2147483647",
                "1e-2147483648",
                "1e99999999999",
                "1e-99999999999",
                "1e401",
                "1e-401"
            })
    void hugeExponentsAreRefusedWithASentence(String number) {
        assertBeyond("{\n\"x\": " + number + "}", "line 2, column 6");
    }

    @Test
    void everyDoubleIsReadExactly() {
        assertThat(read("1.7976931348623157e308")).isInstanceOf(Json.Decimal.class);
        assertThat(((Json.Decimal) read("4.9e-324")).value().doubleValue()).isEqualTo(Double.MIN_VALUE);
    }

    @Test
    void aNameThatStandsTwiceIsRefused() {
        assertThatThrownBy(() -> read("{\"a\": 1,\n \"a\": 2}"))
                .isInstanceOf(JsonException.class)
                .hasMessageStartingWith("trip.json is not valid JSON at line 2, column ")
                .hasMessageContaining("'a'");
        assertThatThrownBy(() -> read("{\"a\": 1, \"\\u0061\": 2}")).isInstanceOf(JsonException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"\\ud800\"", "\"a\\udc00b\"", "\"\\ud83d\""})
    void halfCharactersAreRefused(String text) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(JsonException.class)
                .hasMessageStartingWith("trip.json holds half a character (a lone surrogate) at line 1, column");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"\\ud83d\": 1}", "{\"\\ude00\": 1}", "{\"\ud83d\": 1}"})
    void halfCharactersInNamesAreRefused(String text) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(JsonException.class).hasMessageContaining("surrogate");
    }

    @Test
    void wholeCharactersBeyondTheFirstPlaneAreRead() {
        assertThat(read("\"\\ud83d\\ude00\"")).isEqualTo(Json.of("\ud83d\ude00"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "[1, 2", "\"a", "{\"a\": ", "{\"a\": 1"})
    void whatBreaksOffIsSaidToEndInTheMiddle(String text) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(JsonException.class)
                .hasMessageStartingWith("trip.json ends in the middle, at line 1, column ")
                .hasMessageEndingWith(".");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"a": }          | line 1, column 7
            {"a" 1}          | line 1, column
            {'a': 1}         | line 1, column 2
            // no            | line 1, column 1
            NaN              | line 1
            01               | line 1
            +1               | line 1
            .5               | line 1
            tru              | line 1
            {"a": 1,}        | line 1
            """)
    void whatIsNoJsonIsRefusedWithItsPlace(String text, String place) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(JsonException.class)
                .hasMessageStartingWith("trip.json is not valid JSON at " + place)
                .hasMessageEndingWith(".")
                .hasMessageNotContaining("\n");
    }

    @Test
    void emptyAndTrailingTextsAreNamed() {
        assertThatThrownBy(() -> read("")).hasMessage("trip.json is empty; it should hold one JSON object.");
        assertThatThrownBy(() -> read(" \n")).hasMessageContaining("is empty");
        assertThatThrownBy(() -> read("{}\n{}")).hasMessageContaining("goes on after its end, at line 2, column 1");
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        assertThat(JsonDocument.read("trip.json", "\uFEFF{}".getBytes(StandardCharsets.UTF_8))
                        .root())
                .isEqualTo(Json.fields().done());
    }

    @Test
    void otherEncodingsAreRefused() {
        byte[] latin = "{\"name\": \"Gola \u00e9\"}".getBytes(StandardCharsets.ISO_8859_1);

        assertThatThrownBy(() -> JsonDocument.read("trip.json", latin))
                .hasMessage("trip.json is not UTF-8 text; save it as UTF-8 and try again.");
        assertThatThrownBy(() -> JsonDocument.read("trip.json", "{}".getBytes(StandardCharsets.UTF_16)))
                .isInstanceOf(JsonException.class);
    }

    @Test
    void aRootThatIsNoObjectIsAFinding() {
        Findings findings = new Findings();

        FieldReader in = JsonDocument.read("trip.json", "[1]").reader(findings);

        assertThat(findings.all())
                .containsExactly(new Finding("", 1, Sentence.of("there is no JSON object; it should begin with {.")));
        assertThat(in.unasked()).isEmpty();
    }
}
