package thalweg.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

final class WidthTest {

    private static String text(String codePoints) {
        return Arrays.stream(codePoints.split(" "))
                .map(each -> Character.toString(Integer.parseInt(each, 16)))
                .collect(Collectors.joining());
    }

    /** Source of the cells: wcwidth 0.7.0 for Python, as the file says. */
    @ParameterizedTest(name = "{2}")
    @CsvFileSource(resources = "text-cells.csv", delimiter = ';')
    void textsAreAsWideAsAGeneralLibraryMeasures(String codePoints, int cells, String what) {
        assertThat(Width.of(text(codePoints))).as(what).isEqualTo(cells);
    }

    @Test
    void controlsTakeNoCells() {
        assertThat(Width.of("\n\t\u001B\u007F\u009B\r\n")).isZero();
    }

    @Test
    void halfASurrogatePairTakesNoCells() {
        assertThat(Width.of("a\uD83Eb")).isEqualTo(2);
    }

    /** The width of the whole is that of its clusters, whatever the terminal sums up: 2 for each of these. */
    @Test
    void noClusterIsWiderThanTwoCells() {
        HostileText.all()
                .flatMap(text -> Width.clusters(text).stream())
                .forEach(cluster -> assertThat(Width.of(cluster)).isBetween(0, 2));
    }

    /** Source of the breaks: Unicode 15.0.0, GraphemeBreakTest.txt, a selection; ÷ is a break, × is none. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0020 ÷ 0020
            000D × 000A
            000A ÷ 0308
            0020 × 0308 ÷ 0020
            1F1E6 × 1F1E7 ÷ 1F1E8 ÷ 0062
            0061 ÷ 1F1E6 × 1F1E7 ÷ 1F1E8 × 1F1E9 ÷ 0062
            0061 × 200D ÷ 0062
            0061 × 0903 ÷ 0062
            0061 ÷ 0600 × 0062
            1F476 × 1F3FF ÷ 1F476
            1F6D1 × 200D × 1F6D1
            0061 × 200D ÷ 1F6D1
            2701 × 200D × 2701
            1100 × 1160 ÷ 1100
            AC00 × 11A8 ÷ 1100
            """)
    void clustersAreThoseOfUnicode(String breaks) {
        List<String> expected = Arrays.stream(breaks.split(" ÷ "))
                .map(cluster -> text(cluster.replace(" ×", "")))
                .toList();

        assertThat(Width.clusters(String.join("", expected))).isEqualTo(expected);
    }

    @Test
    void clustersTogetherAreTheText() {
        HostileText.all()
                .forEach(text ->
                        assertThat(String.join("", Width.clusters(text))).isEqualTo(text));
    }

    /** Common characters are measured by a short way, which must lead where the long way leads. */
    @Test
    void theShortWayAndTheLongWayAgree() {
        for (char c = 0; c < Character.MAX_VALUE; c++) {
            String alone = String.valueOf(c);
            String twice = "a" + alone + alone;
            List<String> clusters = Pattern.compile("\\X")
                    .matcher(twice)
                    .results()
                    .map(MatchResult::group)
                    .toList();

            assertThat(Width.of(alone)).as(HostileText.spelled(alone)).isEqualTo(Width.ofCluster(alone));
            assertThat(Width.clusters(twice)).as(HostileText.spelled(twice)).isEqualTo(clusters);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Great Fall | 10 | Great Fall
            Great Fall | 9  | Great Fa…
            Great Fall | 1  | …
            Great Fall | 0  | ''
            Great Fall | -3 | ''
            沢登り      | 6  | 沢登り
            沢登り      | 5  | 沢登…
            沢登り      | 4  | 沢…
            沢登り      | 2  | …
            🇨🇭🇫🇷       | 3  | 🇨🇭…
            🧗🏽‍♀️ up      | 3  | 🧗🏽‍♀️…
            ''         | 0  | ''
            """)
    void cuttingNeverTearsACharacter(String text, int cells, String cut) {
        assertThat(Width.cut(text, cells)).isEqualTo(cut);
    }

    @Test
    void whatIsCutFits() {
        HostileText.all().forEach(text -> {
            for (int cells = 0; cells < 12; cells++) {
                String cut = Width.cut(text, cells);
                assertThat(Width.of(cut)).as(HostileText.spelled(text)).isLessThanOrEqualTo(cells);
                assertThat(cut.equals(text) || cut.endsWith("…") || cells == 0).isTrue();
            }
        });
    }

    @Test
    void paddingFillsCellsAndNotCharacters() {
        assertThat(Width.pad("沢", 4)).isEqualTo("沢  ");
        assertThat(Width.pad("e\u0301", 3)).isEqualTo("e\u0301  ");
        assertThat(Width.pad("too long", 3)).isEqualTo("too long");
        assertThat(Width.pad("", -1)).isEmpty();
    }
}
