package thalweg.tui.lanterna;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/**
 * Keys, pasted text and the mouse out of the bytes that a terminal sends, wherever a read cuts them.
 *
 * <p>A sequence that means nothing here is swallowed whole: none of its bytes becomes a key. Two things need time, which
 * the caller measures: whether Esc stands alone or begins something, and what to do with a sequence that does not go on.
 * Ctrl-C always gets through, but from within pasted text that is still coming.
 */
final class KeyDecoder {

    /** How long the next byte may take before {@link #settle} is called. */
    enum Patience {
        /** Nothing has begun. */
        ENDLESS,
        /** Esc, alone so far. */
        SHORT,
        /** Something that certainly goes on, unless the connection broke it off. */
        LONG
    }

    private enum State {
        GROUND,
        ESCAPE,
        CSI,
        CONSOLE,
        OLD_MOUSE,
        SS3,
        STRING,
        STRING_ESCAPE,
        PASTE
    }

    /** What is pasted beyond this is dropped [bytes]; fields hold far less. */
    static final int LONGEST_PASTE = 1 << 20;

    private static final int LONGEST_PARAMETERS = 64;
    private static final int CTRL_C = 3;
    private static final int BELL = 7;
    private static final int ESC = 0x1B;
    private static final int RUBOUT = 0x7F;

    /** What rxvt sends for Shift with a numbered key: to anybody else the start of something longer. */
    private static final Pattern SHIFTED = Pattern.compile("\\d{1,2}\\$");

    private static final byte[] PASTE_END = "\033[201~".getBytes(StandardCharsets.US_ASCII);

    private final boolean backspaceIsCtrlH;
    private final Utf8 utf8 = new Utf8();
    private final StringBuilder parameters = new StringBuilder();
    private final ByteArrayOutputStream pasted = new ByteArrayOutputStream();
    private List<Message> out = new ArrayList<>();
    private State state = State.GROUND;
    private boolean alt;
    private char opener;
    private boolean stalled;
    private int endMatched;

    /**
     * @param backspaceIsCtrlH whether the terminal's Backspace sends what Ctrl-H does
     */
    KeyDecoder(boolean backspaceIsCtrlH) {
        this.backspaceIsCtrlH = backspaceIsCtrlH;
    }

    /** Takes bytes and returns what is complete, in order; what is not is kept. */
    List<Message> feed(byte[] bytes, int length) {
        for (int i = 0; i < length; i++) {
            step(bytes[i] & 0xFF);
        }
        return taken();
    }

    private List<Message> taken() {
        List<Message> done = List.copyOf(out);
        out = new ArrayList<>();
        return done;
    }

    /** How long to wait for the next byte. */
    Patience patience() {
        return switch (state) {
            case GROUND -> utf8.pending() ? Patience.LONG : Patience.ENDLESS;
            case ESCAPE -> Patience.SHORT;
            case PASTE -> stalled ? Patience.ENDLESS : Patience.LONG;
            case CSI, CONSOLE, OLD_MOUSE, SS3, STRING, STRING_ESCAPE -> Patience.LONG;
        };
    }

    /** Decides what has begun, because nothing more came in time. */
    List<Message> settle() {
        switch (state) {
            case GROUND -> cutOff();
            case ESCAPE -> {
                if (alt) {
                    press(Key.of(Key.Named.ESCAPE));
                }
                press(Key.of(Key.Named.ESCAPE));
                ground();
            }
            case CSI -> {
                if (!shifted()) {
                    withAltIfAlone('[');
                }
            }
            case SS3 -> withAltIfAlone('O');
            case STRING -> withAltIfAlone(opener);
            case PASTE -> stalled = true;
            case CONSOLE, OLD_MOUSE, STRING_ESCAPE -> ground();
        }
        return taken();
    }

    /** What begins a sequence is also what Alt with that character sends. */
    private void withAltIfAlone(char character) {
        if (parameters.isEmpty()) {
            press(new Key(Key.Named.CHARACTER, character, false, true, false));
        }
        ground();
    }

    private void step(int oneByte) {
        if (oneByte == CTRL_C && state != State.GROUND && (state != State.PASTE || stalled)) {
            if (state == State.ESCAPE) {
                press(Key.of(Key.Named.ESCAPE));
            }
            ground();
        }
        switch (state) {
            case GROUND -> onGround(oneByte);
            case ESCAPE -> afterEscape(oneByte);
            case CSI -> inCsi(oneByte);
            case CONSOLE -> inConsole(oneByte);
            case OLD_MOUSE -> inOldMouse(oneByte);
            case SS3 -> inSs3(oneByte);
            case STRING -> inString(oneByte);
            case STRING_ESCAPE -> inStringAfterEscape(oneByte);
            case PASTE -> inPaste(oneByte);
        }
    }

    private void ground() {
        state = State.GROUND;
        alt = false;
        utf8.reset();
        parameters.setLength(0);
        pasted.reset();
        stalled = false;
        endMatched = 0;
    }

    /** The sequence turned out to be none; the byte counts for itself. */
    private void again(int oneByte) {
        ground();
        step(oneByte);
    }

    private void onGround(int oneByte) {
        if (utf8.isCutOffBy(oneByte)) {
            cutOff();
        }
        if (oneByte == ESC) {
            state = State.ESCAPE;
        } else {
            utf8.take(oneByte).ifPresent(this::character);
        }
    }

    private void cutOff() {
        if (utf8.pending()) {
            utf8.reset();
            character(Utf8.REPLACEMENT);
        }
    }

    private void character(int codePoint) {
        boolean withAlt = alt;
        alt = false;
        if (codePoint < 0x20 || codePoint == RUBOUT) {
            Key key = control(codePoint);
            press(new Key(key.named(), key.codePoint(), key.ctrl(), withAlt, false));
        } else if (codePoint > 0x9F || codePoint < RUBOUT) {
            press(new Key(Key.Named.CHARACTER, codePoint, false, withAlt, false));
        }
    }

    private Key control(int code) {
        return switch (code) {
            case 0 -> Key.ctrl(' ');
            case '\t' -> Key.of(Key.Named.TAB);
            case '\r', '\n' -> Key.of(Key.Named.ENTER);
            case '\b' -> backspaceIsCtrlH ? Key.of(Key.Named.BACKSPACE) : Key.ctrl('h');
            case RUBOUT -> Key.of(Key.Named.BACKSPACE);
            default -> Key.ctrl((char) (code <= 26 ? code + 'a' - 1 : code + '@'));
        };
    }

    private void press(Key key) {
        out.add(new Message.KeyPressed(key));
    }

    private void afterEscape(int oneByte) {
        switch (oneByte) {
            case '[' -> state = State.CSI;
            case 'O' -> state = State.SS3;
            case ']', 'P', 'X', '^', '_' -> {
                opener = (char) oneByte;
                state = State.STRING;
            }
            // The end of a string that was given up.
            case '\\' -> ground();
            default -> {
                if (alt) {
                    press(Key.of(Key.Named.ESCAPE));
                }
                alt = true;
                if (oneByte != ESC) {
                    state = State.GROUND;
                    onGround(oneByte);
                }
            }
        }
    }

    private void inCsi(int oneByte) {
        if (oneByte >= 0x20 && oneByte < 0x40) {
            collect(oneByte);
        } else if (oneByte < 0x20 || oneByte >= RUBOUT) {
            shifted();
            again(oneByte);
        } else if (parameters.isEmpty() && oneByte == '[') {
            state = State.CONSOLE;
        } else if (parameters.isEmpty() && oneByte == 'M') {
            state = State.OLD_MOUSE;
        } else if (oneByte == '~' && parameters.toString().equals("200")) {
            ground();
            state = State.PASTE;
        } else {
            done(Sequences.csi(parameters.toString(), (char) oneByte));
        }
    }

    private void collect(int oneByte) {
        if (parameters.length() < LONGEST_PARAMETERS) {
            parameters.append((char) oneByte);
        }
    }

    /** Presses the key of rxvt that the sequence so far may be, and says whether it was one. */
    private boolean shifted() {
        if (!SHIFTED.matcher(parameters).matches()) {
            return false;
        }
        done(Sequences.csi(parameters.substring(0, parameters.length() - 1), '$'));
        return true;
    }

    /** The Esc before a whole sequence is what some terminals send for Alt. */
    private void done(Optional<Message> meaning) {
        boolean withAlt = alt;
        meaning.map(message -> withAlt && message instanceof Message.KeyPressed pressed
                        ? new Message.KeyPressed(new Key(
                                pressed.key().named(),
                                pressed.key().codePoint(),
                                pressed.key().ctrl(),
                                true,
                                pressed.key().shift()))
                        : message)
                .ifPresent(out::add);
        ground();
    }

    private void inConsole(int oneByte) {
        if (oneByte < 0x20 || oneByte >= RUBOUT) {
            again(oneByte);
        } else {
            done(Sequences.console((char) oneByte));
        }
    }

    private void inOldMouse(int oneByte) {
        if (oneByte < 0x20) {
            again(oneByte);
            return;
        }
        parameters.append((char) (oneByte - 0x20));
        if (parameters.length() == 3) {
            done(Sequences.oldMouse(parameters.charAt(0), parameters.charAt(1), parameters.charAt(2)));
        }
    }

    private void inSs3(int oneByte) {
        if (oneByte >= '0' && oneByte < 0x40) {
            collect(oneByte);
        } else if (oneByte < 0x20 || oneByte >= RUBOUT) {
            again(oneByte);
        } else {
            done(Sequences.ss3(parameters.toString(), (char) oneByte));
        }
    }

    private void inString(int oneByte) {
        if (oneByte == ESC) {
            state = State.STRING_ESCAPE;
        } else if (oneByte == BELL && opener == ']') {
            ground();
        } else {
            collect(oneByte);
        }
    }

    private void inStringAfterEscape(int oneByte) {
        ground();
        if (oneByte != '\\') {
            state = State.ESCAPE;
            step(oneByte);
        }
    }

    private void inPaste(int oneByte) {
        stalled = false;
        endMatched = oneByte == PASTE_END[endMatched] ? endMatched + 1 : oneByte == PASTE_END[0] ? 1 : 0;
        if (pasted.size() < LONGEST_PASTE + PASTE_END.length) {
            pasted.write(oneByte);
        }
        if (endMatched == PASTE_END.length) {
            byte[] all = pasted.toByteArray();
            int length = Math.min(LONGEST_PASTE, all.length - PASTE_END.length);
            String text = new String(all, 0, length, StandardCharsets.UTF_8);
            ground();
            out.add(new Message.Pasted(text.replace("\r\n", "\n").replace('\r', '\n')));
        }
    }
}
