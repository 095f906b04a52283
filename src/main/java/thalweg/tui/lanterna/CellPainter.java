package thalweg.tui.lanterna;

import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Cell;

/** Paints canvases on a Lanterna terminal: only cells that changed go into its screen, and only those are sent. */
final class CellPainter {

    /** Cells that were turned into characters before; more than any screen shows at once, a bound all the same. */
    private static final int MOST_REMEMBERED = 5000;

    private final TerminalScreen screen;
    private final Palette palette;
    private final Map<Cell, TextCharacter> characters = new HashMap<>();
    private Optional<Canvas> last = Optional.empty();

    CellPainter(Terminal terminal, Palette palette) throws IOException {
        this.screen = new TerminalScreen(terminal);
        this.palette = palette;
    }

    /** Takes the terminal over. */
    void start() throws IOException {
        screen.startScreen();
    }

    /** Leaves it; what was typed ahead is not read. */
    void stop() throws IOException {
        screen.stopScreen(false);
        last = Optional.empty();
    }

    /** Shows a canvas. What it lacks of the terminal's size stays as it is, what it has too much is cut off. */
    void paint(Canvas canvas) throws IOException {
        TerminalSize changed = screen.doResizeIfNecessary();
        put(canvas);
        // After another size terminals move lines about as each thinks best.
        refresh(canvas, changed == null ? Screen.RefreshType.DELTA : Screen.RefreshType.COMPLETE);
    }

    /** Shows a canvas, whatever the terminal shows at the moment. */
    void repaint(Canvas canvas) throws IOException {
        screen.doResizeIfNecessary();
        put(canvas);
        refresh(canvas, Screen.RefreshType.COMPLETE);
    }

    private void refresh(Canvas canvas, Screen.RefreshType type) throws IOException {
        screen.setCursorPosition(canvas.cursor()
                .map(spot -> new TerminalPosition(spot.column(), spot.row()))
                .orElse(null));
        screen.refresh(type);
        last = Optional.of(canvas);
    }

    private void put(Canvas canvas) {
        Optional<Canvas> before = last.filter(one -> one.rows() == canvas.rows() && one.columns() == canvas.columns());
        int rows = Math.min(canvas.rows(), screen.getTerminalSize().getRows());
        int columns = Math.min(canvas.columns(), screen.getTerminalSize().getColumns());
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Cell cell = canvas.cell(row, column);
                if (before.isEmpty() || !before.get().cell(row, column).equals(cell)) {
                    screen.setCharacter(column, row, character(cell));
                }
            }
        }
    }

    private TextCharacter character(Cell cell) {
        TextCharacter known = characters.get(cell);
        if (known != null) {
            return known;
        }
        if (characters.size() >= MOST_REMEMBERED) {
            characters.clear();
        }
        TextCharacter made = made(cell);
        characters.put(cell, made);
        return made;
    }

    private TextCharacter made(Cell cell) {
        TextCharacter space = palette.space(cell.style());
        String text = cell.text();
        return text.equals(" ") ? space : new ClusterCharacter(space, text, Width.of(text) == 2);
    }
}
