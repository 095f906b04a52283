package thalweg.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTextTest {

    /** The object and the order of RFC 8785, 3.2.3: names sort by their UTF-16 units, not by code points. */
    @Test
    void namesSortByUtf16UnitsAsInRfc8785() {
        Json value = Json.fields()
                .put("\u20ac", "Euro Sign")
                .put("\r", "Carriage Return")
                .put("\ufb33", "Hebrew Letter Dalet With Dagesh")
                .put("1", "One")
                .put("\ud83d\ude00", "Emoji: Grinning Face")
                .put("\u0080", "Control")
                .put("\u00f6", "Latin Small Letter O With Diaeresis")
                .done();

        assertThat(JsonText.canonical(value))
                .isEqualTo("{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                        + "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\","
                        + "\"\ud83d\ude00\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
    }

    /** The string of the sample in RFC 8785, 3.2.2, and what it becomes there. */
    @Test
    void stringsAreEscapedAsInRfc8785() {
        Json read = JsonDocument.read("sample", "\"\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\\"\\/\"")
                .root();

        assertThat(JsonText.canonical(read)).isEqualTo("\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"");
    }

    /** The literals of the same sample, and RFC 8785, 3.2.1: no space between tokens. */
    @Test
    void literalsAndListsHaveNoSpaces() {
        Json read = JsonDocument.read("sample", "{ \"literals\": [null, true, false], \"a\": {}, \"b\": [ ] }")
                .root();

        assertThat(JsonText.canonical(read)).isEqualTo("{\"a\":{},\"b\":[],\"literals\":[null,true,false]}");
    }

    @Test
    void everyControlCharacterIsEscapedTheShortestWay() {
        for (char control = 0; control < ' '; control++) {
            String expected = switch (control) {
                case '\b' -> "\\b";
                case '\t' -> "\\t";
                case '\n' -> "\\n";
                case '\f' -> "\\f";
                case '\r' -> "\\r";
                default -> String.format(Locale.ROOT, "\\u%04x", (int) control);
            };
            assertThat(JsonText.canonical(Json.of("" + control))).isEqualTo("\"" + expected + "\"");
        }
        assertThat(JsonText.canonical(Json.of("\u007f\u2028"))).isEqualTo("\"\u007f\u2028\"");
    }

    /** Whole numbers among the samples of RFC 8785, appendix B: as ECMAScript writes them. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0, 0
            0e-999999999, 0
            -0, 0
            9007199254740991, 9007199254740991
            -9007199254740991, -9007199254740991
            1e3, 1000
            1.50e1, 15
            4.0, 4
            """)
    void wholeNumbersAreWrittenPlain(BigDecimal number, String canonical) {
        assertThat(JsonText.canonical(new Json.Decimal(number))).isEqualTo(canonical);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"4.5", "2e-3", "9007199254740992", "-9007199254740992", "1e30", "1e999999999", "1e-999999999"})
    void otherNumbersHaveNoCanonicalText(BigDecimal number) {
        Json value = new Json.Items(List.of(
                Json.of(1), Json.fields().put("n", new Json.Decimal(number)).done()));

        assertThat(JsonText.isCanonical(value)).isFalse();
        assertThat(JsonText.isCanonical(Json.of(1))).isTrue();
        assertThatIllegalArgumentException().isThrownBy(() -> JsonText.canonical(value));
    }

    /** RFC 8785, 3.2.2.2: lone surrogates must end the work. */
    @ParameterizedTest
    @ValueSource(strings = {"\ud800", "a\udc00b", "\ude00\ud83d"})
    void halfCharactersHaveNoCanonicalText(String broken) {
        assertThatIllegalArgumentException().isThrownBy(() -> JsonText.canonical(Json.of(broken)));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> JsonText.canonical(Json.fields().put(broken, 1).done()));
    }

    @Test
    void canonicalTextReadsBackToItself() {
        String text = "{\"a\":[1,{\"b\":\"\\u0001\u20ac\"},null],\"z\":true}";

        assertThat(JsonText.canonical(JsonDocument.read("text", text).root())).isEqualTo(text);
    }

    @Test
    void readableTextKeepsItsOrderAndBreaksLongObjectsOnly() {
        Json value = Json.fields()
                .put("z", 1)
                .put("list", List.of("one", "two"))
                .put("long", "x".repeat(60))
                .put("none", new Json.Items(List.of()))
                .put("many", List.of("y".repeat(50), "w".repeat(50)))
                .put("empty", Json.fields().done())
                .done();

        assertThat(JsonText.indented(value)).isEqualTo("""
                        {
                          "z": 1,
                          "list": ["one", "two"],
                          "long": "%s",
                          "none": [],
                          "many": [
                            "%s",
                            "%s"
                          ],
                          "empty": {}
                        }
                        """.formatted("x".repeat(60), "y".repeat(50), "w".repeat(50)));
        assertThat(JsonDocument.read("again", JsonText.indented(value)).root()).isEqualTo(value);
        assertThat(JsonText.line(value)).startsWith("{\"z\": 1, \"list\": [\"one\", \"two\"]");
    }

    @Test
    void aHugeExponentIsNeverWrittenOut() {
        Json huge = new Json.Decimal(new BigDecimal("1e999999999"));

        assertThat(JsonText.line(huge)).isEqualTo("1E+999999999");
        assertThat(JsonText.line(new Json.Decimal(new BigDecimal("1e-999999999"))))
                .isEqualTo("1E-999999999");
        assertThat(JsonText.line(new Json.Decimal(new BigDecimal("1.50e2")))).isEqualTo("150");
    }

    @Test
    void roundedNumbersAreShortAndInfinityIsNothing() {
        assertThat(JsonText.line(Json.rounded(12_000.0, 3))).isEqualTo("12000");
        assertThat(JsonText.line(Json.rounded(0.12345, 3))).isEqualTo("0.123");
        assertThat(JsonText.line(Json.rounded(-0.0001, 3))).isEqualTo("0");
        assertThat(JsonText.line(Json.rounded(1.5e9, 0))).isEqualTo("1500000000");
        assertThat(Json.rounded(Double.NaN, 3)).isSameAs(Json.NOTHING);
        assertThat(Json.rounded(Double.POSITIVE_INFINITY, 3)).isSameAs(Json.NOTHING);
    }
}
