package thalweg.tui.lanterna;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.io.UncheckedIOException;
import thalweg.settings.Theme;
import thalweg.tui.core.Canvas;

/** A canvas as Lanterna's own terminal in memory shows it in a theme. */
public final class Painted {

    private Painted() {}

    /** The signs in the form of a canvas. */
    public static String text(Canvas canvas, Theme theme) {
        DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(canvas.columns(), canvas.rows()));
        try {
            CellPainter painter = new CellPainter(terminal, new Palette(theme));
            painter.start();
            painter.paint(canvas);
        } catch (IOException e) {
            throw new UncheckedIOException("a terminal in memory cannot fail", e);
        }
        return shown(terminal);
    }

    /** Rows as the terminal has them, in the form of a canvas. */
    static String shown(DefaultVirtualTerminal terminal) {
        StringBuilder out = new StringBuilder();
        for (int row = 0; row < terminal.getTerminalSize().getRows(); row++) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < terminal.getTerminalSize().getColumns(); column++) {
                TextCharacter character = terminal.getCharacter(column, row);
                line.append(character.getCharacterString());
                if (character.isDoubleWidth()) {
                    column++;
                }
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
        return out.toString();
    }
}
