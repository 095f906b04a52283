package thalweg.tui.lanterna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import thalweg.settings.Theme;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;

/** What Lanterna's own terminal in memory shows after our canvases were painted on it. */
class CellPainterTest {

    private static final int ROWS = 6;
    private static final int COLUMNS = 20;

    private final DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(COLUMNS, ROWS));
    private CellPainter painter;

    @BeforeEach
    void start() throws IOException {
        painter = new CellPainter(terminal, new Palette(Theme.TERMINAL));
        painter.start();
    }

    @Test
    void everyCellArrivesWhereItWasPut() throws IOException {
        Canvas canvas = canvas();
        canvas.put(0, 0, "top left", Style.NORMAL);
        canvas.put(5, 12, "at right", Style.NORMAL);

        painter.paint(canvas);

        assertThat(shown()).isEqualTo(canvas.text());
    }

    @Test
    void whatIsNoLongerThereIsWipedOut() throws IOException {
        Canvas first = canvas();
        first.put(2, 3, "a long line", Style.SELECTED);
        painter.paint(first);
        Canvas second = canvas();
        second.put(2, 3, "short", Style.NORMAL);

        painter.paint(second);

        assertThat(shown()).isEqualTo(second.text());
        assertThat(terminal.getCharacter(3, 2).isReversed()).isFalse();
        assertThat(terminal.getCharacter(10, 2).isReversed()).isFalse();
    }

    @Test
    void onlyWhatChangedIsSent() throws IOException {
        Canvas first = canvas();
        first.put(1, 0, "depth 12 m", Style.NORMAL);
        painter.paint(first);
        assertThat(terminal.isWholeBufferDirtyThenReset())
                .as("cleared at the start")
                .isTrue();
        terminal.getAndResetDirtyCells();
        Canvas second = canvas();
        second.put(1, 0, "depth 13 m", Style.NORMAL);

        painter.paint(second);

        assertThat(terminal.getDirtyCells()).containsExactly(new TerminalPosition(7, 1));
    }

    @Test
    void wideCharactersTakeTwoCellsAndGiveThemBack() throws IOException {
        Canvas wide = canvas();
        wide.put(0, 0, "峡谷峡谷|", Style.NORMAL);
        painter.paint(wide);
        assertThat(shown()).isEqualTo(wide.text());

        Canvas shifted = canvas();
        shifted.put(0, 1, "峡谷峡|", Style.NORMAL);
        painter.paint(shifted);
        assertThat(shown()).isEqualTo(shifted.text());

        Canvas narrow = canvas();
        narrow.put(0, 0, "abcdefgh|", Style.NORMAL);
        painter.paint(narrow);
        assertThat(shown()).isEqualTo(narrow.text());
    }

    @Test
    void halfOfAWideCharacterIsNeverLeft() throws IOException {
        for (int column = 0; column < 6; column++) {
            Canvas wide = canvas();
            wide.put(0, 0, "峡谷峡", Style.NORMAL);
            painter.paint(wide);
            Canvas over = canvas();
            over.put(0, 0, "峡谷峡", Style.NORMAL);
            over.put(0, column, "x", Style.STRONG);

            painter.paint(over);

            assertThat(shown()).as("over column %d", column).isEqualTo(over.text());
        }
    }

    /** Any canvas after any other, of narrow and wide characters at random. */
    @Test
    void whatIsShownDependsOnTheLastCanvasAlone() throws IOException {
        List<String> pieces = List.of("a", "Zz", "峡", "谷x", " ", "é", "─┐", "⣿", "ไทย", "カヌ");
        List<Style> styles = List.of(Style.values());
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            Canvas canvas = canvas();
            for (int i = 0; i < random.nextInt(30); i++) {
                Style style = styles.get(random.nextInt(styles.size()));
                String piece = pieces.get(random.nextInt(pieces.size()));
                canvas.put(random.nextInt(ROWS), random.nextInt(COLUMNS), piece, style);
            }

            if (random.nextInt(10) == 0) {
                painter.repaint(canvas);
            } else {
                painter.paint(canvas);
            }

            assertThat(shown()).as("seed %d", seed).isEqualTo(canvas.text());
            assertThat(looksWrong(canvas)).as("seed %d", seed).isEmpty();
        }
    }

    /** Cells that look other than their style does; empty when all is well. */
    private List<TerminalPosition> looksWrong(Canvas canvas) {
        Palette palette = new Palette(Theme.TERMINAL);
        List<TerminalPosition> wrong = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < COLUMNS; column++) {
                Palette.Look expected = palette.look(canvas.cell(row, column).style());
                TextCharacter actual = terminal.getCharacter(column, row);
                if (!canvas.cell(row, column).text().isEmpty()
                        && !(actual.getModifiers().equals(expected.attributes())
                                && actual.getForegroundColor().equals(expected.colour()))) {
                    wrong.add(new TerminalPosition(column, row));
                }
            }
        }
        return wrong;
    }

    @Test
    void anotherSizeIsPaintedWhole() throws IOException {
        Canvas before = canvas();
        before.put(0, 0, "before", Style.NORMAL);
        painter.paint(before);

        for (TerminalSize size : List.of(
                new TerminalSize(30, 9), new TerminalSize(8, 3), new TerminalSize(1, 1), new TerminalSize(25, 2))) {
            terminal.setTerminalSize(size);
            Canvas canvas = Canvas.of(size.getRows(), size.getColumns());
            canvas.put(0, 0, "after " + size.getColumns(), Style.NORMAL);
            canvas.put(size.getRows() - 1, size.getColumns() - 1, "+", Style.NORMAL);

            painter.paint(canvas);

            assertThat(shown()).isEqualTo(canvas.text());
        }
    }

    @Test
    void aCanvasOfAnotherSizeThanTheTerminalDoesNoHarm() throws IOException {
        Canvas large = Canvas.of(10, 50);
        large.put(0, 0, "x".repeat(50), Style.NORMAL);
        painter.paint(large);
        assertThat(shown()).startsWith("x".repeat(COLUMNS) + "\n");

        Canvas small = Canvas.of(1, 3);
        small.put(0, 0, "y", Style.NORMAL);
        painter.paint(small);
        assertThat(shown()).startsWith("y  x");
    }

    /** A signal may close what is closing already. */
    @Test
    void whatWasLeftIsLeftOnce() throws IOException {
        painter.stop();

        assertThatCode(painter::stop).doesNotThrowAnyException();
    }

    @Test
    void theCursorStandsWhereTheFocusIsOrNowhere() throws IOException {
        Canvas focused = canvas();
        focused.put(2, 2, "峡 name", Style.FOCUS);
        focused.cursor(2, 5);
        painter.paint(focused);
        assertThat(terminal.isCursorVisible()).isTrue();
        assertThat(terminal.getCursorPosition()).isEqualTo(new TerminalPosition(5, 2));

        painter.paint(canvas());
        assertThat(terminal.isCursorVisible()).isFalse();
    }

    @Test
    void stylesNeverPaintABackground() throws IOException {
        for (boolean colour : new boolean[] {true, false}) {
            for (Style style : Style.values()) {
                Palette.Look look = new Palette(colour ? Theme.TERMINAL : Theme.PLAIN).look(style);

                assertThat(look.ground()).as("%s", style).isEqualTo(TextColor.ANSI.DEFAULT);
                assertThat(colour || look.colour() == TextColor.ANSI.DEFAULT)
                        .as("%s", style)
                        .isTrue();
            }
        }
    }

    @Test
    void dangerIsToldFromCautionWithoutColoursToo() throws IOException {
        Palette plain = new Palette(Theme.PLAIN);

        assertThat(plain.look(Style.BAD).attributes()).containsExactly(SGR.BOLD);
        assertThat(plain.look(Style.MIND).attributes()).containsExactly(SGR.UNDERLINE);
        assertThat(plain.look(Style.GOOD).attributes()).isEmpty();
        assertThat(plain.look(Style.SELECTED).attributes()).containsExactly(SGR.REVERSE);
    }

    private static Canvas canvas() {
        return Canvas.of(ROWS, COLUMNS);
    }

    private String shown() {
        return Painted.shown(terminal);
    }
}
