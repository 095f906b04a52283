package thalweg.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class WrapTest {

    @Test
    void linesBreakAtSpacesAndLoseThem() {
        assertThat(Width.wrap("three old  bolts on the left", 10)).containsExactly("three old", "bolts on", "the left");
    }

    @Test
    void aLineThatJustFitsIsNotBroken() {
        assertThat(Width.wrap("old bolts", 9)).containsExactly("old bolts");
    }

    @Test
    void lineFeedsStay() {
        assertThat(Width.wrap("one\n\ntwo\n", 10)).containsExactly("one", "", "two", "");
    }

    @Test
    void anEmptyTextIsOneEmptyLine() {
        assertThat(Width.wrap("", 5)).containsExactly("");
        assertThat(Width.wrap("   ", 5)).containsExactly("");
    }

    @Test
    void indentationAndGapsWithinALineStay() {
        assertThat(Width.wrap("  - a  b", 20)).containsExactly("  - a  b");
    }

    @Test
    void aWordLongerThanALineIsBrokenBetweenClusters() {
        assertThat(Width.wrap("at abcdefgh i", 4)).containsExactly("at", "abcd", "efgh", "i");
        assertThat(Width.wrap("沢登り", 3)).containsExactly("沢", "登", "り");
        assertThat(Width.wrap("e\u0301e\u0301", 1)).containsExactly("e\u0301", "e\u0301");
        assertThat(Width.wrap("🇨🇭🇫🇷", 2)).containsExactly("🇨🇭", "🇫🇷");
    }

    @Test
    void aNoBreakSpaceHoldsItsWordsTogether() {
        assertThat(Width.wrap("rope of 60\u00A0m", 8)).containsExactly("rope of", "60\u00A0m");
    }

    @Test
    void aWideCharacterIsKeptEvenWhereItDoesNotFit() {
        assertThat(Width.wrap("a沢b", 1)).containsExactly("a", "沢", "b");
        assertThat(Width.wrap("ab", 0)).containsExactly("a", "b");
        assertThat(Width.wrap("ab", -5)).containsExactly("a", "b");
    }

    @Test
    void noLineIsWiderThanAllowed() {
        HostileText.all().forEach(text -> {
            for (int cells = 2; cells < 9; cells++) {
                List<String> lines = Width.wrap(text, cells);
                int room = cells;
                assertThat(lines)
                        .as(HostileText.spelled(text))
                        .isNotEmpty()
                        .allSatisfy(line -> assertThat(Width.of(line)).isLessThanOrEqualTo(room));
            }
        });
    }

    @Test
    void nothingButSpacesAndLineFeedsIsLost() {
        HostileText.all().forEach(text -> {
            for (int cells = 1; cells < 9; cells++) {
                assertThat(String.join("", Width.wrap(text, cells)).replace(" ", ""))
                        .as(HostileText.spelled(text))
                        .isEqualTo(text.replace(" ", "").replace("\n", ""));
            }
        });
    }
}
