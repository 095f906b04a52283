package thalweg.tui.lanterna;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.TerminalSize;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thalweg.settings.Theme;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;

/** The bytes that a terminal gets. */
class CellTerminalTest {

    private static final TerminalSize SIZE = new TerminalSize(20, 3);

    private final ByteArrayOutputStream sent = new ByteArrayOutputStream();

    private CellPainter painter(boolean colour, boolean mouse) throws IOException {
        CellPainter painter = new CellPainter(
                new CellTerminal(sent, SIZE, mouse), new Palette(colour ? Theme.TERMINAL : Theme.PLAIN));
        painter.start();
        return painter;
    }

    private String taken() {
        String text = sent.toString(StandardCharsets.UTF_8).replace('\033', '^');
        sent.reset();
        return text;
    }

    private static Canvas canvas(String text, Style style) {
        Canvas canvas = Canvas.of(SIZE.getRows(), SIZE.getColumns());
        canvas.put(0, 0, text, style);
        return canvas;
    }

    @Test
    void theModesThatAreSwitchedOnAreSwitchedOffAgain() throws IOException {
        CellPainter painter = painter(true, true);
        assertThat(taken()).contains("^[?1049h", "^[?2004h", "^[?1004h", "^[?1000h", "^[?1006h");

        painter.stop();

        assertThat(taken()).contains("^[?1006l", "^[?1000l", "^[?1004l", "^[?2004l", "^[0m", "^[?25h", "^[?1049l");
    }

    @Test
    void theMouseIsLeftAloneWhereThatIsWanted() throws IOException {
        painter(true, false).stop();

        assertThat(taken()).contains("^[?2004h").doesNotContain("1000", "1006");
    }

    @Test
    void theTerminalIsAskedNothing() throws IOException {
        CellPainter painter = painter(true, true);
        painter.paint(canvas("x", Style.NORMAL));
        painter.repaint(canvas("y", Style.NORMAL));
        painter.stop();

        assertThat(taken()).doesNotContain("^[6n").doesNotContain("^[c").doesNotContain("\005");
    }

    @Test
    void aFrameIsOneWrite() throws IOException {
        List<Integer> flushes = new ArrayList<>();
        OutputStream counting = new OutputStream() {
            @Override
            public void write(int oneByte) {
                sent.write(oneByte);
            }

            @Override
            public void flush() {
                flushes.add(sent.size());
            }
        };
        CellPainter painter = new CellPainter(new CellTerminal(counting, SIZE, true), new Palette(Theme.TERMINAL));
        painter.start();
        flushes.clear();

        painter.paint(canvas("a line of some", Style.SELECTED));

        assertThat(flushes).hasSize(1);
    }

    @Test
    void certainCharactersAreSentWithoutSteering() throws IOException {
        CellPainter painter = painter(true, false);
        taken();

        painter.paint(canvas("12 m é─┐⣿▀", Style.NORMAL));

        assertThat(taken()).contains("12^[").contains("é─┐⣿▀");
    }

    @Test
    void afterARareCharacterTheCursorIsPutWhereItBelongs() throws IOException {
        CellPainter painter = painter(true, false);
        taken();

        painter.paint(canvas("e\u0301x→y", Style.NORMAL));

        assertThat(taken()).contains("e\u0301^[1;2Hx→^[1;4Hy");
    }

    @Test
    void aWideCharacterWipesBothItsCells() throws IOException {
        CellPainter painter = painter(true, false);
        taken();

        painter.paint(canvas("峡x", Style.NORMAL));

        assertThat(taken()).contains("  ^[1;1H峡^[1;3Hx");
    }

    @Test
    void dimAndBoldDoNotEndEachOther() throws IOException {
        CellPainter painter = painter(true, false);
        taken();
        Canvas canvas = canvas("a", Style.FAINT);
        canvas.put(0, 1, "b", Style.STRONG);
        canvas.put(0, 2, "c", Style.FAINT);
        canvas.put(0, 3, "d", Style.FOCUS);

        painter.paint(canvas);

        assertThat(attributes(taken())).containsExactly("a: dim", "b: bold", "c: dim", "d: bold");
    }

    /** What is dim and what is bold when each letter is written, as a terminal reads the codes (ECMA-48, 8.3.117 SGR). */
    private static List<String> attributes(String text) {
        List<String> seen = new ArrayList<>();
        boolean bold = false;
        boolean dim = false;
        for (String part : text.split("\\^\\[", -1)) {
            if (part.matches("1m.*")) {
                bold = true;
            } else if (part.matches("2m.*")) {
                dim = true;
            } else if (part.matches("(0|22)m.*")) {
                bold = false;
                dim = false;
            }
            String letters = part.replaceFirst("^[?0-9;]*[a-zA-Z]", "").strip();
            if (!letters.isEmpty()) {
                seen.add(letters + ":" + (bold ? " bold" : "") + (dim ? " dim" : ""));
            }
        }
        return seen;
    }

    @Test
    void withoutColourNoColourIsSent() throws IOException {
        CellPainter painter = painter(false, false);
        for (Style style : Style.values()) {
            painter.paint(canvas(style.name(), style));
        }

        assertThat(taken()).doesNotContainPattern("\\^\\[(3[0-8]|4[0-8]|9[0-7]|10[0-7])m");
    }
}
