package thalweg.tui.lanterna;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import thalweg.text.Width;

/**
 * The output half of Lanterna's terminal: it is told its size, reads nothing and asks the terminal nothing.
 *
 * <p>Terminals do not agree on the width of rare characters. After each of those the cursor is put where it belongs, so
 * that one of them cannot shift the rest of a line.
 */
final class CellTerminal extends ANSITerminal {

    private final String modesOn;
    private final String modesOff;
    private TerminalSize size;
    private int row;
    private int column;
    private boolean adrift;
    private boolean bold;
    private boolean dim;

    /**
     * @param out is flushed once for each frame
     * @param mouse whether the terminal is to report the mouse
     */
    CellTerminal(OutputStream out, TerminalSize size, boolean mouse) {
        super(InputStream.nullInputStream(), out, StandardCharsets.UTF_8);
        this.size = size;
        // Bracketed paste; whether the terminal has the attention; presses and the wheel, in numbers that hold any
        // column.
        this.modesOn = "\033[?2004h\033[?1004h" + (mouse ? "\033[?1000h\033[?1006h" : "");
        this.modesOff = (mouse ? "\033[?1006l\033[?1000l" : "") + "\033[?1004l\033[?2004l";
    }

    /** Has another size from now on. */
    void resize(TerminalSize changed) throws IOException {
        size = changed;
        getTerminalSize();
    }

    @Override
    protected TerminalSize findTerminalSize() {
        return size;
    }

    @Override
    public void enterPrivateMode() throws IOException {
        super.enterPrivateMode();
        write(modesOn);
    }

    @Override
    public void exitPrivateMode() throws IOException {
        write(modesOff);
        super.exitPrivateMode();
    }

    /** Sends bytes as they are. */
    void write(String text) throws IOException {
        writeToTerminal(text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public void setCursorPosition(int toColumn, int toRow) throws IOException {
        super.setCursorPosition(toColumn, toRow);
        column = toColumn;
        row = toRow;
        adrift = false;
    }

    @Override
    public void putCharacter(char character) throws IOException {
        putString(Character.toString(character));
    }

    @Override
    public void putString(String cluster) throws IOException {
        if (adrift) {
            setCursorPosition(column, row);
        }
        int width = Width.of(cluster);
        if (width == 2) {
            // Where the terminal takes the character for a narrow one, nothing old remains beside it.
            write("  ");
            setCursorPosition(column, row);
        }
        write(cluster);
        column += width;
        adrift = !isCertain(cluster);
    }

    /** Latin and its relatives, lines, blocks and braille are one cell wide everywhere that matters. */
    private static boolean isCertain(String cluster) {
        if (cluster.length() != 1) {
            return false;
        }
        char c = cluster.charAt(0);
        return c < 0x300 || (c >= 0x2500 && c < 0x25A0) || (c >= 0x2800 && c < 0x2900);
    }

    @Override
    public void resetColorAndSGR() throws IOException {
        super.resetColorAndSGR();
        bold = false;
        dim = false;
    }

    @Override
    public void enableSGR(SGR attribute) throws IOException {
        if (attribute == Palette.DIM) {
            dim = true;
            write("\033[2m");
            return;
        }
        bold |= attribute == SGR.BOLD;
        super.enableSGR(attribute);
    }

    /** One code ends bold and dim alike, so that the other is switched on again. */
    @Override
    public void disableSGR(SGR attribute) throws IOException {
        if (attribute != SGR.BOLD && attribute != Palette.DIM) {
            super.disableSGR(attribute);
            return;
        }
        bold &= attribute != SGR.BOLD;
        dim &= attribute != Palette.DIM;
        write("\033[22m" + (bold ? "\033[1m" : "") + (dim ? "\033[2m" : ""));
    }
}
