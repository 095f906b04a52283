package thalweg.sheet.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.sheet.Hostile;
import thalweg.sheet.RandomCanyon;
import thalweg.sheet.SampleSheets;
import thalweg.sheet.Sheet;
import thalweg.testing.GoldenFile;
import thalweg.text.Width;

class TextSheetTest {

    private static final int SEEDS = 40;

    static Stream<Sheet> sheets() {
        return Stream.of(
                SampleSheets.full(),
                SampleSheets.bare(),
                SampleSheets.imperial(),
                new RandomCanyon(7, Hostile::around).sheet(),
                new RandomCanyon(8, Hostile::around).sheet(),
                new RandomCanyon(9, word -> word + "黄色い谷".repeat(40)).sheet());
    }

    @Test
    void theFullCanyonReadsAsReviewed() {
        GoldenFile.holds("sheet/full.txt", TextSheet.render(SampleSheets.full()));
    }

    @Test
    void theBareCanyonReadsAsReviewed() {
        GoldenFile.holds("sheet/bare.txt", TextSheet.render(SampleSheets.bare()));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void noLineIsWiderThanItsCells(Sheet sheet) {
        assertThat(TextSheet.render(sheet).lines())
                .allSatisfy(line -> assertThat(Width.of(line)).as(line).isLessThanOrEqualTo(TextSheet.WIDTH));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void nothingSteersATerminalOrReordersALine(Sheet sheet) {
        assertThat(TextSheet.render(sheet)).doesNotContainPattern("[\\p{Cc}\\p{Cf}&&[^\\n]]");
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void onlyTheSheetItselfMakesHeadings(Sheet sheet) {
        assertThat(TextSheet.render(sheet).lines().filter(line -> line.startsWith("=")))
                .hasSize(1 + sheet.sections().size());
    }

    @Test
    void everyTextOfTheRecordIsThere() {
        everyTextIsThere(UnaryOperator.identity());
    }

    @Test
    void everyTextOfTheRecordIsThereAmidHostileOnes() {
        everyTextIsThere(Hostile::around);
    }

    private static void everyTextIsThere(UnaryOperator<String> dress) {
        for (long seed = 0; seed < SEEDS; seed++) {
            RandomCanyon canyon = new RandomCanyon(seed, dress);

            assertThat(TextSheet.render(canyon.sheet())).as("seed %d", seed).contains(canyon.expected());
        }
    }

    @Test
    void aMarkStaysWithItsWord() {
        assertThat(TextSheet.render(SampleSheets.full())).contains("x\u00A0gone", "18\u00A0m", "25.0\u00A0kN");
    }
}
