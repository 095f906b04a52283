package thalweg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InertTest {

    /** Bidirectional controls as listed in UAX 9, section 2, and what else Unicode calls control or format. */
    @ParameterizedTest
    @ValueSource(
            ints = {
                0x00, 0x07, 0x1B, 0x7F, 0x85, 0x9B, 0x061C, 0x200B, 0x200E, 0x200F, 0x2028, 0x2029, 0x202A, 0x202E,
                0x2066, 0x2069, 0xFEFF, 0xFFFE, 0xFDD0, 0xE0041
            })
    void whatSteersOrHidesBecomesVisible(int point) {
        assertThat(Inert.of("a" + Character.toString(point) + "b")).isEqualTo("a\uFFFDb");
    }

    @Test
    void halfACharacterBecomesVisible() {
        assertThat(Inert.of("a\uD800b")).isEqualTo("a\uFFFDb");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Żółta Szczelina", "黄色い谷", "עמק", "می\u200Cخواهم", "18\u00A0m", "a < b & \"c\" 'd'"})
    void lettersOfEveryScriptStay(String text) {
        assertThat(Inert.of(text)).isEqualTo(text);
    }

    @Test
    void everyLineEndBecomesALineFeed() {
        assertThat(Inert.of("a\r\nb\rc\nd")).isEqualTo("a\nb\nc\nd");
        assertThat(Inert.line("a\r\nb\rc")).isEqualTo("a b c");
    }
}
