package thalweg.tui.lanterna;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import java.util.Optional;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Cell;
import thalweg.tui.core.Style;

/**
 * Paints canvases on a Lanterna terminal: only the cells that changed are sent, neighbours of one look in one piece.
 *
 * <p>Terminals do not agree on the width of rare characters. After each of those the cursor is put where it belongs, so
 * that one of them cannot shift the rest of a line.
 */
final class CellPainter {

    private final Terminal terminal;
    private final Palette palette;

    /** Whether a cleared terminal looks as blank cells do. */
    private final boolean clearIsBlank;

    /** Cells side by side that are still to be sent. */
    private final StringBuilder run = new StringBuilder();

    private Optional<Canvas> last = Optional.empty();
    private Optional<Style> style = Optional.empty();
    private TerminalSize size = TerminalSize.ZERO;
    private boolean cursorIsShown;
    private boolean started;

    /** Where the next character goes as far as the terminal's answer is known; -1 where it is not. */
    private int atRow = -1;

    private int atColumn = -1;

    CellPainter(Terminal terminal, Palette palette) {
        this.terminal = terminal;
        this.palette = palette;
        this.clearIsBlank = palette.look(Style.NORMAL).isDefault();
    }

    /** Takes the terminal over. */
    void start() throws IOException {
        terminal.enterPrivateMode();
        started = true;
        terminal.setCursorVisible(false);
        cursorIsShown = false;
        clear();
        terminal.flush();
    }

    /** Leaves it, unless it was left; what was typed ahead is not read. */
    void stop() throws IOException {
        if (!started) {
            return;
        }
        started = false;
        terminal.exitPrivateMode();
        terminal.flush();
        last = Optional.empty();
    }

    /** Shows a canvas. What it lacks of the terminal's size stays as it is, what it has too much is cut off. */
    void paint(Canvas canvas) throws IOException {
        // After another size terminals move lines about as each thinks best.
        if (terminal.getTerminalSize().equals(size)) {
            put(canvas);
        } else {
            repaint(canvas);
        }
    }

    /** Shows a canvas, whatever the terminal shows at the moment. */
    void repaint(Canvas canvas) throws IOException {
        clear();
        put(canvas);
    }

    private void clear() throws IOException {
        size = terminal.getTerminalSize();
        terminal.resetColorAndSGR();
        style = Optional.empty();
        terminal.clearScreen();
        astray();
        last = Optional.empty();
    }

    /** Where the cursor is has to be said anew. */
    private void astray() {
        atRow = -1;
        atColumn = -1;
    }

    private void put(Canvas canvas) throws IOException {
        Optional<Canvas> before = last.filter(one -> one.rows() == canvas.rows() && one.columns() == canvas.columns());
        boolean cleared = last.isEmpty() && clearIsBlank;
        int rows = Math.min(canvas.rows(), size.getRows());
        int columns = Math.min(canvas.columns(), size.getColumns());
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Cell cell = canvas.cell(row, column);
                boolean shown = before.isPresent()
                        ? before.get().cell(row, column).equals(cell)
                        : cleared && cell.equals(Cell.BLANK);
                // The second half of a wide character comes with the first.
                if (!shown && !cell.text().isEmpty()) {
                    put(row, column, cell);
                }
            }
            sendRun();
        }
        cursor(canvas);
        terminal.flush();
        last = Optional.of(canvas);
    }

    private void put(int row, int column, Cell cell) throws IOException {
        if (row != atRow || column != atColumn || !isTaken(cell.style())) {
            sendRun();
            go(row, column);
            take(cell.style());
        }
        String text = cell.text();
        if (isCertain(text)) {
            run.append(text);
            atColumn = column + 1;
            return;
        }
        sendRun();
        if (Width.of(text) == 2) {
            // Where the terminal takes the character for a narrow one, nothing old remains beside it.
            terminal.putString("  ");
            astray();
            go(row, column);
        }
        terminal.putString(text);
        astray();
    }

    private void sendRun() throws IOException {
        if (!run.isEmpty()) {
            terminal.putString(run.toString());
            run.setLength(0);
        }
    }

    private void go(int row, int column) throws IOException {
        if (row != atRow || column != atColumn) {
            terminal.setCursorPosition(column, row);
            atRow = row;
            atColumn = column;
        }
    }

    /** Each look begins from none: one code ends bold and dim alike, so that taking one away takes both. */
    private void take(Style wanted) throws IOException {
        if (isTaken(wanted)) {
            return;
        }
        Palette.Look look = palette.look(wanted);
        terminal.resetColorAndSGR();
        if (look.colour() != TextColor.ANSI.DEFAULT) {
            terminal.setForegroundColor(look.colour());
        }
        if (look.ground() != TextColor.ANSI.DEFAULT) {
            terminal.setBackgroundColor(look.ground());
        }
        for (SGR attribute : look.attributes()) {
            terminal.enableSGR(attribute);
        }
        style = Optional.of(wanted);
    }

    private boolean isTaken(Style wanted) {
        return style.isPresent() && style.get() == wanted;
    }

    private void cursor(Canvas canvas) throws IOException {
        Optional<Canvas.Spot> spot = canvas.cursor();
        if (spot.isPresent()) {
            go(spot.get().row(), spot.get().column());
        }
        if (spot.isPresent() != cursorIsShown) {
            cursorIsShown = spot.isPresent();
            terminal.setCursorVisible(cursorIsShown);
        }
    }

    /** Latin and its relatives, lines, blocks and braille are one cell wide everywhere that matters. */
    private static boolean isCertain(String cluster) {
        if (cluster.length() != 1) {
            return false;
        }
        char c = cluster.charAt(0);
        return c < 0x300 || (c >= 0x2500 && c < 0x25A0) || (c >= 0x2800 && c < 0x2900);
    }
}
