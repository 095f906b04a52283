package thalweg.tui.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.text.Width;

/** Writing cells. */
class CanvasTest {

    /** Narrow, wide, composed, joined and hostile. */
    private static final List<String> PIECES = List.of(
            "a",
            "漢字",
            "e\u0301",
            "\uD83D\uDC69\u200D\uD83D\uDE80",
            "\u0301",
            "\t",
            " ",
            "\u202E",
            "ก็",
            "\uD83C\uDDEB\uD83C\uDDF7");

    private final Canvas canvas = Canvas.of(3, 6);

    @Test
    void textStandsWhereItWasPut() {
        int after = canvas.put(1, 2, "abc", Style.STRONG);

        assertThat(canvas.text()).isEqualTo("\n  abc\n\n");
        assertThat(canvas.cell(1, 2)).isEqualTo(new Cell("a", Style.STRONG));
        assertThat(after).isEqualTo(5);
    }

    @Test
    void whatDoesNotFitIsCutOff() {
        canvas.put(0, 4, "abc", Style.NORMAL);
        canvas.put(1, -1, "abc", Style.NORMAL);
        canvas.put(3, 0, "abc", Style.NORMAL);
        canvas.put(-1, 0, "abc", Style.NORMAL);

        assertThat(canvas.text()).isEqualTo("    ab\nbc\n\n");
    }

    @Test
    void aWideCharacterTakesTwoCellsOfWhichTheSecondIsEmpty() {
        canvas.put(0, 0, "漢x", Style.NORMAL);

        assertThat(canvas.cell(0, 0).text()).isEqualTo("漢");
        assertThat(canvas.cell(0, 1).text()).isEmpty();
        assertThat(canvas.cell(0, 2).text()).isEqualTo("x");
    }

    @Test
    void aWideCharacterAcrossAnEdgeBecomesASpace() {
        canvas.fill(0, Style.FAINT);
        canvas.put(0, 5, "漢", Style.STRONG);
        canvas.put(1, -1, "漢b", Style.STRONG);

        assertThat(canvas.cell(0, 5)).isEqualTo(new Cell(" ", Style.STRONG));
        assertThat(canvas.cell(1, 0)).isEqualTo(new Cell(" ", Style.STRONG));
        assertThat(canvas.row(1)).isEqualTo(" b");
    }

    @Test
    void overwritingOneHalfOfAWideCharacterBlanksTheOther() {
        canvas.put(0, 0, "漢字", Style.NORMAL);
        canvas.put(0, 1, "x", Style.NORMAL);
        canvas.put(1, 0, "漢字", Style.NORMAL);
        canvas.put(1, 2, "x", Style.NORMAL);
        canvas.put(2, 0, "漢字", Style.NORMAL);
        canvas.put(2, 1, "語", Style.NORMAL);

        assertThat(canvas.text()).isEqualTo(" x字\n漢x\n 語\n");
    }

    @Test
    void controlsAreSeenAndDoNotAct() {
        canvas.put(0, 0, "a\u001Bb\n", Style.NORMAL);

        assertThat(canvas.row(0)).isEqualTo("a�b�");
    }

    @Test
    void aPartIsClippedToTheWhole() {
        Canvas part = canvas.part(1, 4, 9, 9);

        assertThat(part.rows()).isEqualTo(2);
        assertThat(part.columns()).isEqualTo(2);
        part.put(0, 0, "abc", Style.NORMAL);
        assertThat(canvas.row(1)).isEqualTo("    ab");
    }

    @ParameterizedTest
    @ValueSource(ints = {-3, 0, 7, 100})
    void aPartOutsideIsEmpty(int row) {
        Canvas part = canvas.part(row, row, -1, 0);

        assertThat(part.rows()).isZero();
        assertThat(part.columns()).isZero();
        part.fill(0, Style.TITLE);
        part.cursor(0, 0);
        assertThat(canvas.text()).isEqualTo("\n\n\n");
        assertThat(canvas.cursor()).isEmpty();
    }

    @Test
    void theCursorOfAPartIsCountedOnTheWhole() {
        canvas.part(1, 2, 2, 3).cursor(1, 1);

        assertThat(canvas.cursor()).contains(new Canvas.Spot(2, 3));
    }

    @Test
    void aCutTextSaysSo() {
        canvas.fit(0, 0, 5, "anchors", Style.NORMAL);
        canvas.fit(1, 0, 5, "one", Style.TITLE);

        assertThat(canvas.row(0)).isEqualTo("anch…");
        assertThat(canvas.cell(1, 4)).isEqualTo(new Cell(" ", Style.TITLE));
    }

    @Test
    void everyRowStaysAsWideAsTheCanvasWhateverIsWritten() {
        for (long seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            Canvas tried = Canvas.of(3, 1 + random.nextInt(9));
            for (int i = 0; i < 20; i++) {
                Canvas part = tried.part(
                        random.nextInt(5) - 1, random.nextInt(11) - 1, random.nextInt(4), random.nextInt(10));
                String text = PIECES.get(random.nextInt(PIECES.size())) + PIECES.get(random.nextInt(PIECES.size()));
                part.put(random.nextInt(4) - 1, random.nextInt(11) - 2, text, Style.NORMAL);
            }
            for (int row = 0; row < tried.rows(); row++) {
                assertThat(wholeCells(tried, row))
                        .as("seed %d row %d", seed, row)
                        .isTrue();
            }
        }
    }

    /** Whether an empty cell stands after each wide character and nowhere else. */
    private static boolean wholeCells(Canvas canvas, int row) {
        boolean whole = true;
        for (int column = 0; column < canvas.columns(); column++) {
            int width = Width.of(canvas.cell(row, column).text());
            boolean tail = column > 0 && Width.of(canvas.cell(row, column - 1).text()) == 2;
            whole &= tail ? width == 0 : width > 0;
            whole &= width < 2 || column + 1 < canvas.columns();
        }
        return whole;
    }
}
