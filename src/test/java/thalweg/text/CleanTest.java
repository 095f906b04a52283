package thalweg.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class CleanTest {

    private static final int LONG = 1000;

    @Test
    void lettersWithAccentsAreComposed() {
        assertThat(Clean.line("N\u0303andu\u0301", LONG)).isEqualTo("Ñandú");
        assertThat(Clean.lines("A\u030A\n\u212B", LONG)).isEqualTo("Å\nÅ");
    }

    @Test
    void everyLineEndBecomesALineFeed() {
        assertThat(Clean.lines("a\r\nb\rc\nd\u0085e\u2028f\u2029g\u000Bh\fi", LONG))
                .isEqualTo("a\nb\nc\nd\ne\nf\ng\nh\ni");
    }

    @Test
    void aTabBecomesASpaceSoThatWordsStayApart() {
        assertThat(Clean.lines("left\tbolt", LONG)).isEqualTo("left bolt");
    }

    @Test
    void aLineHasSingleSpacesAndNoneAtItsEnds() {
        assertThat(Clean.line(" \u3000left \r\n\t\u00A0 bolt\n", LONG)).isEqualTo("left bolt");
    }

    @Test
    void linesKeepTheirSpaces() {
        assertThat(Clean.lines("  a\u00A0b  \n", LONG)).isEqualTo("  a\u00A0b  \n");
    }

    @ParameterizedTest
    @CsvSource({
        "0000, null",
        "0007, bell",
        "001B, escape",
        "007F, delete",
        "009B, control sequence introducer",
        "061C, Arabic letter mark",
        "200E, left-to-right mark",
        "200F, right-to-left mark",
        "202A, embedding",
        "202E, override",
        "2066, isolate",
        "2069, end of isolate",
        "00AD, soft hyphen",
        "034F, grapheme joiner",
        "200B, zero-width space",
        "2060, word joiner",
        "2062, invisible times",
        "FEFF, byte order mark",
        "3164, Hangul filler",
        "FFA0, half-width Hangul filler",
        "E0041, tag letter",
        "E0001, language tag",
        "FFF9, annotation",
        "FFFE, noncharacter",
        "FDD0, noncharacter",
        "1FFFF, noncharacter"
    })
    void whatHidesOrActsIsTakenOut(String codePoint, String what) {
        String hostile = "a" + Character.toString(Integer.parseInt(codePoint, 16)) + "b";

        assertThat(Clean.line(hostile, LONG)).as(what).isEqualTo("ab");
        assertThat(Clean.lines(hostile, LONG)).as(what).isEqualTo("ab");
    }

    @Test
    void anEscapeSequenceIsLeftWithoutItsEscape() {
        assertThat(Clean.line("\u001B[31mred\u001B]0;title\u0007", LONG)).isEqualTo("[31mred]0;title");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u0645\u06CC\u200C\u062E\u0648\u0627\u0647\u0645",
                "\u0D28\u0D4D\u200D",
                "🧗🏽\u200D♀\uFE0F",
                "葛\uDB40\uDD00",
                "1\uFE0F\u20E3",
                "\u0600\u0661",
                "Val d\u2019Enfer",
                "\uE000"
            })
    void whatWritingNeedsIsKept(String text) {
        assertThat(Clean.line(text, LONG)).isEqualTo(text);
        assertThat(Clean.lines(text, LONG)).isEqualTo(text);
    }

    @Test
    void aJoinerWithNothingToJoinGoes() {
        assertThat(Clean.line("\u200D", LONG)).isEmpty();
        assertThat(Clean.line("\u200Ca \u200Db", LONG)).isEqualTo("a b");
        assertThat(Clean.line("a\u200D\u200D\u200Cb", LONG)).isEqualTo("a\u200Db");
    }

    @Test
    void halfASurrogatePairIsReplaced() {
        assertThat(Clean.line("a\uD83Eb\uDDD7", LONG)).isEqualTo("a\uFFFDb\uFFFD");
    }

    @Test
    void fourMarksInARowAreEnough() {
        String four = "x\u0323\u0324\u0325\u0330";

        assertThat(Clean.line(four, LONG)).isEqualTo(four);
        assertThat(Clean.line(four + "\u0331\u0332" + "y\u0332", LONG)).isEqualTo(four + "y\u0332");
        assertThat(Clean.line(four + "\u200D\u0331\u0332", LONG)).isEqualTo(four + "\u200D");
    }

    @Test
    void lengthIsCountedInCodePoints() {
        assertThat(Clean.line("🧗🧗🧗", 2)).isEqualTo("🧗🧗");
        assertThat(Clean.line("Ñandú", 4)).isEqualTo("Ñand");
        assertThat(Clean.lines("a\nb", 2)).isEqualTo("a\n");
        assertThat(Clean.line("left bolt", 5)).isEqualTo("left");
        assertThat(Clean.line("left", 0)).isEmpty();
    }

    @Test
    void aCharacterOfSeveralCodePointsIsNotTorn() {
        assertThat(Clean.line("a🇨🇭b", 2)).isEqualTo("a");
        assertThat(Clean.line("xe\u0323\u0331y", 2)).isEqualTo("x");
    }

    @Test
    void whatIsCleanStaysAsItIs() {
        HostileText.all().forEach(text -> {
            for (int longest : new int[] {1, 2, 3, 5, LONG}) {
                String line = Clean.line(text, longest);
                String lines = Clean.lines(text, longest);
                assertThat(Clean.line(line, longest))
                        .as(HostileText.spelled(text))
                        .isEqualTo(line);
                assertThat(Clean.lines(line, longest))
                        .as(HostileText.spelled(text))
                        .isEqualTo(line);
                assertThat(Clean.lines(lines, longest))
                        .as(HostileText.spelled(text))
                        .isEqualTo(lines);
            }
        });
    }

    @Test
    void whatComesInIsComposedAndSafeAndShort() {
        HostileText.all().forEach(text -> {
            for (int longest : new int[] {1, 3, LONG}) {
                String line = Clean.line(text, longest);
                String lines = Clean.lines(text, longest);
                assertThat(Normalizer.isNormalized(lines, Normalizer.Form.NFC))
                        .as(HostileText.spelled(text))
                        .isTrue();
                assertThat(Shown.safe(lines.replace('\n', ' '))).isEqualTo(lines.replace('\n', ' '));
                assertThat(lines.codePointCount(0, lines.length())).isLessThanOrEqualTo(longest);
                assertThat(Shown.safe(line)).as(HostileText.spelled(text)).isEqualTo(line);
                assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(longest);
            }
        });
    }
}
