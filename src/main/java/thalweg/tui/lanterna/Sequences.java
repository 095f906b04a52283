package thalweg.tui.lanterna;

import java.util.List;
import java.util.Optional;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/**
 * What the control sequences mean that keys and the mouse send: the forms of xterm, of the Linux console and of rxvt.
 * What is none of them means nothing; no sequence means a character.
 *
 * @see "ECMA-48, 5.4 Control sequences"
 * @see "XTerm Control Sequences: PC-Style Function Keys, Mouse Tracking"
 */
final class Sequences {

    /** Rows that one notch of the wheel moves; what most programs and browsers take. */
    static final int NOTCH = 3;

    /** Bits of a button's number that say which modifier keys were held. */
    private static final int BUTTON_MODIFIERS = 4 + 8 + 16;

    private static final int WHEEL_UP = 64;
    private static final int WHEEL_DOWN = 65;

    private static final List<Key.Named> FUNCTION_KEYS = List.of(
            Key.Named.F1,
            Key.Named.F2,
            Key.Named.F3,
            Key.Named.F4,
            Key.Named.F5,
            Key.Named.F6,
            Key.Named.F7,
            Key.Named.F8,
            Key.Named.F9,
            Key.Named.F10,
            Key.Named.F11,
            Key.Named.F12);

    private Sequences() {}

    /**
     * A sequence that began with CSI.
     *
     * @param parameters what stands between
     * @param last the final byte, 0x40 to 0x7E
     */
    static Optional<Message> csi(String parameters, char last) {
        if (parameters.startsWith("<") && (last == 'M' || last == 'm')) {
            return mouse(numbers(parameters.substring(1)), last == 'M');
        }
        if (last == 'I' && parameters.isEmpty()) {
            return Optional.of(new Message.Focused());
        }
        return key(numbers(parameters), last).map(Message.KeyPressed::new);
    }

    private static Optional<Key> key(int[] numbers, char last) {
        if (numbers.length > 2) {
            return Optional.empty();
        }
        int first = numbers.length > 0 ? numbers[0] : 1;
        int modifiers = numbers.length > 1 ? numbers[1] : 1;
        return switch (last) {
            case '~' -> numbered(first).map(named -> modified(named, modifiers));
            case '$' -> numbered(first).map(named -> modified(named, 2));
            case '^' -> numbered(first).map(named -> modified(named, 5));
            case '@' -> numbered(first).map(named -> modified(named, 6));
            case 'a', 'b', 'c', 'd' ->
                numbers.length > 0 ? Optional.empty() : arrow(last).map(Key::shift);
            case 'Z' -> Optional.of(modified(Key.Named.TAB, 2));
            default -> first == 1 ? lettered(last).map(named -> modified(named, modifiers)) : Optional.empty();
        };
    }

    /** A sequence that began with SS3, in which the keys of a keypad come too. */
    static Optional<Message> ss3(String parameters, char last) {
        int[] numbers = numbers(parameters);
        // Either the modifiers alone, or a 1 before them.
        int modifiers = numbers.length > 0 ? numbers[numbers.length - 1] : 1;
        Optional<Key> key = switch (last) {
            case 'M' -> Optional.of(Key.of(Key.Named.ENTER));
            case 'a', 'b', 'c', 'd' -> arrow(last).map(named -> modified(named, 5));
            default -> lettered(last).map(named -> modified(named, modifiers));
        };
        return key.map(Message.KeyPressed::new);
    }

    /** F1 to F5 on the Linux console: CSI, another bracket, and a letter. */
    static Optional<Message> console(char letter) {
        return letter >= 'A' && letter <= 'E'
                ? numbered(11 + letter - 'A').map(Key::of).map(Message.KeyPressed::new)
                : Optional.empty();
    }

    /**
     * The mouse as terminals report it that know no better way: three bytes, each 32 more than what it says.
     *
     * @param button number with modifiers
     * @param column counted from 1
     * @param row counted from 1
     */
    static Optional<Message> oldMouse(int button, int column, int row) {
        return mouse(new int[] {button, column, row}, true);
    }

    private static Optional<Message> mouse(int[] numbers, boolean pressed) {
        if (numbers.length != 3 || !pressed || numbers[1] < 1 || numbers[2] < 1) {
            return Optional.empty();
        }
        return switch (numbers[0] & ~BUTTON_MODIFIERS) {
            case 0 -> Optional.of(new Message.MousePressed(numbers[2] - 1, numbers[1] - 1));
            case WHEEL_UP -> Optional.of(new Message.Wheel(-NOTCH));
            case WHEEL_DOWN -> Optional.of(new Message.Wheel(NOTCH));
            default -> Optional.empty();
        };
    }

    private static Optional<Key.Named> numbered(int number) {
        return switch (number) {
            case 1, 7 -> Optional.of(Key.Named.HOME);
            case 2 -> Optional.of(Key.Named.INSERT);
            case 3 -> Optional.of(Key.Named.DELETE);
            case 4, 8 -> Optional.of(Key.Named.END);
            case 5 -> Optional.of(Key.Named.PAGE_UP);
            case 6 -> Optional.of(Key.Named.PAGE_DOWN);
            case 11, 12, 13, 14, 15 -> function(number - 10);
            case 17, 18, 19, 20, 21 -> function(number - 11);
            case 23, 24 -> function(number - 12);
            default -> Optional.empty();
        };
    }

    private static Optional<Key.Named> function(int number) {
        return Optional.of(FUNCTION_KEYS.get(number - 1));
    }

    private static Optional<Key.Named> lettered(char letter) {
        return switch (letter) {
            case 'A', 'B', 'C', 'D' -> arrow(letter);
            case 'H' -> Optional.of(Key.Named.HOME);
            case 'F' -> Optional.of(Key.Named.END);
            case 'P', 'Q', 'R', 'S' -> function(1 + letter - 'P');
            default -> Optional.empty();
        };
    }

    private static Optional<Key.Named> arrow(char letter) {
        return switch (letter) {
            case 'A', 'a' -> Optional.of(Key.Named.UP);
            case 'B', 'b' -> Optional.of(Key.Named.DOWN);
            case 'C', 'c' -> Optional.of(Key.Named.RIGHT);
            case 'D', 'd' -> Optional.of(Key.Named.LEFT);
            default -> Optional.empty();
        };
    }

    /** Modifiers are counted from 1: 1 more for Shift, 2 for Alt, 4 for Ctrl, 8 for Meta, which counts as Alt. */
    private static Key modified(Key.Named named, int modifiers) {
        int held = modifiers - 1;
        return new Key(named, 0, (held & 4) != 0, (held & (2 + 8)) != 0, (held & 1) != 0);
    }

    /** The numbers of parameters; three of them, which no key has, where there is anything else. */
    private static int[] numbers(String parameters) {
        if (parameters.isEmpty()) {
            return new int[0];
        }
        if (!parameters.matches("\\d{1,5}(;\\d{1,5}){0,2}")) {
            return new int[] {-1, -1, -1};
        }
        String[] parts = parameters.split(";", -1);
        int[] numbers = new int[parts.length];
        for (int i = 0; i < parts.length; i++) {
            numbers[i] = Integer.parseInt(parts[i]);
        }
        return numbers;
    }
}
