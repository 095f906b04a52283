package thalweg.tui.core;

import java.util.Locale;

/**
 * A key as it was pressed.
 *
 * @param named which key; CHARACTER for those that write something
 * @param codePoint what it writes, 0 for named keys
 * @param ctrl whether Ctrl was held
 * @param alt whether Alt was held
 * @param shift whether Shift was held, for named keys; a character says so by itself
 */
public record Key(Named named, int codePoint, boolean ctrl, boolean alt, boolean shift) {

    /** Keys that have a name rather than a character. */
    public enum Named {
        CHARACTER(""),
        ENTER("Enter"),
        ESCAPE("Esc"),
        TAB("Tab"),
        BACKSPACE("Backspace"),
        DELETE("Del"),
        INSERT("Ins"),
        UP("Up"),
        DOWN("Down"),
        LEFT("Left"),
        RIGHT("Right"),
        HOME("Home"),
        END("End"),
        PAGE_UP("PgUp"),
        PAGE_DOWN("PgDn"),
        F1("F1"),
        F2("F2"),
        F3("F3"),
        F4("F4"),
        F5("F5"),
        F6("F6"),
        F7("F7"),
        F8("F8"),
        F9("F9"),
        F10("F10"),
        F11("F11"),
        F12("F12");

        private final String print;

        Named(String print) {
            this.print = print;
        }
    }

    public Key {
        if ((named == Named.CHARACTER) == (codePoint == 0)) {
            throw new IllegalArgumentException("a key is named or writes a character");
        }
    }

    /** The key that writes that character. */
    public static Key of(int character) {
        return new Key(Named.CHARACTER, character, false, false, false);
    }

    /** A key by its name. */
    public static Key of(Named named) {
        return new Key(named, 0, false, false, false);
    }

    /** Ctrl with a letter. */
    public static Key ctrl(char letter) {
        return new Key(Named.CHARACTER, letter, true, false, false);
    }

    /** Shift with a named key. */
    public static Key shift(Named named) {
        return new Key(named, 0, false, false, true);
    }

    /** Whether it writes a character into a field. */
    public boolean writes() {
        return named == Named.CHARACTER && !ctrl && !alt;
    }

    /** What it writes. */
    public String text() {
        return Character.toString(codePoint);
    }

    /** As it is shown to a person: "Ctrl-S", "PgDn", "q", "Space". */
    public String print() {
        String name = named != Named.CHARACTER ? named.print : codePoint == ' ' ? "Space" : text();
        String letter = ctrl && named == Named.CHARACTER ? name.toUpperCase(Locale.ROOT) : name;
        return (ctrl ? "Ctrl-" : "") + (alt ? "Alt-" : "") + (shift ? "Shift-" : "") + letter;
    }
}
