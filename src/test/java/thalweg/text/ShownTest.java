package thalweg.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ShownTest {

    @ParameterizedTest
    @CsvSource({
        "0A, line feed",
        "09, tab",
        "1B, escape",
        "9B, control sequence introducer",
        "202E, right-to-left override",
        "2067, right-to-left isolate",
        "200B, zero-width space",
        "FEFF, byte order mark",
        "D83E, half a pair",
        "DDD7, half a pair",
        "2028, line separator",
        "E0041, tag letter",
        "AD, soft hyphen",
        "FFFF, noncharacter"
    })
    void whatMustNotBeThereIsSeenInOneCell(String codePoint, String what) {
        String shown = Shown.safe("a" + Character.toString(Integer.parseInt(codePoint, 16)) + "b");

        assertThat(shown).as(what).isEqualTo("a\uFFFDb");
        assertThat(Width.of(shown)).as(what).isEqualTo(3);
    }

    @Test
    void ordinaryTextIsShownAsItIs() {
        String text = "Łomnica, 沢, 🧗🏽\u200D♀\uFE0F, e\u0301, ½ ─│ 23 m";

        assertThat(Shown.safe(text)).isEqualTo(text);
    }

    @Test
    void aPileOfMarksIsCutWithOneSign() {
        assertThat(Shown.safe("x" + "\u0331".repeat(9) + "y")).isEqualTo("x" + "\u0331".repeat(4) + "\uFFFDy");
    }

    @Test
    void noControlReachesATerminal() {
        HostileText.all()
                .forEach(text -> assertThat(Shown.safe(text).codePoints())
                        .as(HostileText.spelled(text))
                        .noneMatch(c -> Character.isISOControl(c)
                                || Character.getType(c) == Character.SURROGATE
                                || (c >= 0x202A && c <= 0x202E)
                                || (c >= 0x2066 && c <= 0x2069)));
    }

    @Test
    void whatIsSafeStaysAsItIs() {
        HostileText.all().forEach(text -> {
            String once = Shown.safe(text);
            assertThat(Shown.safe(once)).as(HostileText.spelled(text)).isEqualTo(once);
        });
    }
}
