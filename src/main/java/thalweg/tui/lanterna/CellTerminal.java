package thalweg.tui.lanterna;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** The output half of Lanterna's terminal: it is told its size, reads nothing and asks the terminal nothing. */
final class CellTerminal extends ANSITerminal {

    private final String modesOn;
    private final String modesOff;
    private TerminalSize size;

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
    public void putString(String text) throws IOException {
        write(text);
    }

    @Override
    public void enableSGR(SGR attribute) throws IOException {
        if (attribute == Palette.DIM) {
            write("\033[2m");
        } else {
            super.enableSGR(attribute);
        }
    }
}
