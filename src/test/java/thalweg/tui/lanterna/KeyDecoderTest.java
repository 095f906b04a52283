package thalweg.tui.lanterna;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/** Where nothing else is said, sequences are those of the terminfo entries xterm, linux and rxvt of ncurses 6.4. */
class KeyDecoderTest {

    private static final String ESC = "\033";

    @ParameterizedTest
    @CsvSource({
        "[A, Up", "[B, Down", "[C, Right", "[D, Left", "OA, Up", "OB, Down", "OC, Right", "OD, Left",
        "[H, Home", "[F, End", "OH, Home", "OF, End", "[1~, Home", "[4~, End", "[7~, Home", "[8~, End",
        "[2~, Ins", "[3~, Del", "[5~, PgUp", "[6~, PgDn", "[Z, Shift-Tab", "OM, Enter"
    })
    void keysThatMoveAreKnownInEveryForm(String sequence, String key) {
        assertThat(Typed.keys(ESC + sequence)).isEqualTo(key);
    }

    @ParameterizedTest
    @CsvSource({
        "OP, F1", "OQ, F2", "OR, F3", "OS, F4", "[11~, F1", "[12~, F2", "[13~, F3", "[14~, F4",
        "[[A, F1", "[[B, F2", "[[C, F3", "[[D, F4", "[[E, F5", "[15~, F5", "[17~, F6", "[18~, F7",
        "[19~, F8", "[20~, F9", "[21~, F10", "[23~, F11", "[24~, F12"
    })
    void functionKeysAreKnownInEveryForm(String sequence, String key) {
        assertThat(Typed.keys(ESC + sequence)).isEqualTo(key);
    }

    @ParameterizedTest
    @CsvSource({
        "[1;2A, Shift-Up",
        "[1;3A, Alt-Up",
        "[1;5C, Ctrl-Right",
        "[1;6D, Ctrl-Shift-Left",
        "[1;8H, Ctrl-Alt-Shift-Home",
        "[3;5~, Ctrl-Del",
        "[5;3~, Alt-PgUp",
        "[1;2P, Shift-F1",
        "[15;5~, Ctrl-F5",
        "[1;9B, Alt-Down",
        "[a, Shift-Up",
        "[d, Shift-Left",
        "Oa, Ctrl-Up",
        "O5C, Ctrl-Right",
        "[3$, Shift-Del",
        "[7^, Ctrl-Home",
        "[8@, Ctrl-Shift-End",
        "[1;65A, Up"
    })
    void modifiersAreReadInTheFormsOfXtermAndRxvt(String sequence, String key) {
        assertThat(Typed.keys(ESC + sequence)).isEqualTo(key);
    }

    @Test
    void controlCharactersAreCtrlWithLettersOrKeysOfTheirOwn() {
        assertThat(Typed.keys(Typed.bytes(1, 12, 26, 28, 31))).isEqualTo("Ctrl-A Ctrl-L Ctrl-Z Ctrl-\\ Ctrl-_");
        assertThat(Typed.decoded(Typed.bytes(0))).containsExactly(new Message.KeyPressed(Key.ctrl(' ')));
        assertThat(Typed.keys(Typed.bytes(9, 13, 10))).isEqualTo("Tab Enter Enter");
    }

    @Test
    void backspaceIsToldFromCtrlHByWhatTheTerminalSends() {
        byte[] both = Typed.bytes(8, 127);

        assertThat(Typed.print(new KeyDecoder(false).feed(both, 2))).isEqualTo("Ctrl-H Backspace");
        assertThat(Typed.print(new KeyDecoder(true).feed(both, 2))).isEqualTo("Backspace Backspace");
    }

    @ParameterizedTest
    @CsvSource({"a, a", "é, é", "峡, 峡", "🧗, 🧗", "aé峡🧗z, a é 峡 🧗 z"})
    void charactersOfOneToFourBytesAreThemselves(String text, String keys) {
        assertThat(Typed.keys(text)).isEqualTo(keys);
    }

    /** Source: The Unicode Standard 15.0, tables 3-8 to 3-11, the examples of what becomes U+FFFD (from memory). */
    @ParameterizedTest
    @CsvSource({
        "C0 AF E0 80 BF F0 81 82 41, ????????A",
        "ED A0 80 ED BF BF ED AF 41, ????????A",
        "F4 91 92 93 FF 41 80 BF 42, ?????A??B",
        "E1 80 E2 F0 91 92 F1 BF 41, ????A"
    })
    void bytesThatAreNoTextAreShownAsSuch(String hex, String expected) {
        int[] values = Arrays.stream(hex.split(" "))
                .mapToInt(value -> Integer.parseInt(value, 16))
                .toArray();

        assertThat(Typed.keys(Typed.bytes(values)).replace(" ", "")).isEqualTo(expected.replace('?', '\uFFFD'));
    }

    @Test
    void aCharacterThatIsCutOffHidesNoKey() {
        assertThat(Typed.keys(Typed.bytes(0xC3, 0x1B, '[', 'A'))).isEqualTo("\uFFFD Up");
        assertThat(Typed.keys(Typed.bytes(0xE5))).isEqualTo("\uFFFD");
    }

    @Test
    void aControlOfOneByteInOtherEncodingsIsNoKey() {
        assertThat(Typed.keys(Typed.bytes(0xC2, 0x9B))).isEmpty();
    }

    @Test
    void altComesAsEscBeforeTheKey() {
        assertThat(Typed.keys(ESC + "x")).isEqualTo("Alt-x");
        assertThat(Typed.keys(ESC + "é")).isEqualTo("Alt-é");
        assertThat(Typed.keys(ESC + "\r")).isEqualTo("Alt-Enter");
        assertThat(Typed.keys(ESC + "\177")).isEqualTo("Alt-Backspace");
        assertThat(Typed.keys(ESC + ESC + "[A")).isEqualTo("Alt-Up");
        assertThat(Typed.keys(ESC + "x" + "y")).isEqualTo("Alt-x y");
    }

    @Test
    void escAloneIsDecidedByTime() {
        KeyDecoder decoder = new KeyDecoder(false);

        assertThat(decoder.feed(Typed.bytes(0x1B), 1)).isEmpty();
        assertThat(decoder.patience()).isEqualTo(KeyDecoder.Patience.SHORT);
        assertThat(decoder.settle()).containsExactly(new Message.KeyPressed(Key.of(Key.Named.ESCAPE)));
        assertThat(decoder.patience()).isEqualTo(KeyDecoder.Patience.ENDLESS);
        assertThat(Typed.print(decoder.feed("[A".getBytes(StandardCharsets.UTF_8), 2)))
                .isEqualTo("[ A");
    }

    @Test
    void escPressedSeveralTimesCountsAsOften() {
        assertThat(Typed.keys(ESC + ESC)).isEqualTo("Esc Esc");
        assertThat(Typed.keys(ESC + ESC + ESC)).isEqualTo("Esc Esc Esc");
        assertThat(Typed.keys(ESC + ESC + "x")).isEqualTo("Esc Alt-x");
    }

    @Test
    void altWithWhatBeginsASequenceIsAKeyWhenNothingFollows() {
        assertThat(List.of("[", "O", "]", "P", "X", "^", "_"))
                .allSatisfy(opener -> assertThat(Typed.keys(ESC + opener)).isEqualTo("Alt-" + opener));
    }

    @Test
    void aSequenceThatStopsHalfWayIsForgotten() {
        KeyDecoder decoder = new KeyDecoder(false);
        byte[] half = (ESC + "[1;").getBytes(StandardCharsets.UTF_8);

        assertThat(decoder.feed(half, half.length)).isEmpty();
        assertThat(decoder.patience()).isEqualTo(KeyDecoder.Patience.LONG);
        assertThat(decoder.settle()).isEmpty();
        assertThat(Typed.print(decoder.feed(Typed.bytes('j'), 1))).isEqualTo("j");
    }

    @Test
    void anEscInsideASequenceBeginsAnother() {
        assertThat(Typed.keys(ESC + "[1;" + ESC + "[B")).isEqualTo("Down");
        assertThat(Typed.keys(ESC + "[3$" + ESC + "[B")).isEqualTo("Shift-Del Down");
        assertThat(Typed.keys(ESC + "]0;" + ESC + "[B")).isEqualTo("Down");
    }

    @Test
    void ctrlCGetsThroughWhateverHasBegun() {
        assertThat(List.of("", "[", "[1;", "[[", "[M", "[M!", "O", "]0;title", "P+q", "P+q" + ESC, ESC))
                .allSatisfy(begun ->
                        assertThat(Typed.keys(ESC + begun + "\003")).as(begun).endsWith("Ctrl-C"));
        assertThat(Typed.keys(ESC + "\003")).isEqualTo("Esc Ctrl-C");
    }

    @Test
    void pressesAndTheWheelOfTheMouseAreReported() {
        assertThat(Typed.keys(ESC + "[<0;10;5M")).isEqualTo("MousePressed[row=4, column=9]");
        assertThat(Typed.keys(ESC + "[<0;300;100M")).isEqualTo("MousePressed[row=99, column=299]");
        assertThat(Typed.keys(ESC + "[<16;1;1M")).as("with Ctrl").isEqualTo("MousePressed[row=0, column=0]");
        assertThat(Typed.keys(ESC + "[<64;10;5M")).isEqualTo("Wheel[rows=-3]");
        assertThat(Typed.keys(ESC + "[<65;10;5M")).isEqualTo("Wheel[rows=3]");
        assertThat(Typed.keys(ESC + "[M" + " *%")).as("the old form").isEqualTo("MousePressed[row=4, column=9]");
        assertThat(Typed.keys(ESC + "[M" + "`*%")).isEqualTo("Wheel[rows=-3]");
    }

    @Test
    void otherThingsOfTheMouseAreNothing() {
        assertThat(List.of(
                        "[<0;10;5m",
                        "[<1;10;5M",
                        "[<2;10;5M",
                        "[<32;10;5M",
                        "[<66;1;1M",
                        "[<128;1;1M",
                        "[<0;0;5M",
                        "[<0;5M",
                        "[M#*%"))
                .allSatisfy(sequence ->
                        assertThat(Typed.keys(ESC + sequence)).as(sequence).isEmpty());
    }
}
