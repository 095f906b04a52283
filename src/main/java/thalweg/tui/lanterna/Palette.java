package thalweg.tui.lanterna;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import java.util.EnumSet;
import java.util.List;
import thalweg.tui.core.Style;

/**
 * How styles look: by the terminal's own colours and attributes, never by a background.
 *
 * <p>Red and magenta are the two that can be read on black and on white alike: in the colours that xterm starts with, they
 * reach 3.6 and 4.4 to 1 on black, 5.9 and 4.7 to 1 on white (contrast as WCAG 2.1 computes it; xterm's colours from
 * memory), while green, yellow and cyan stay below 2.3 on white and blue at 2.2 on black. So what is well has no colour of
 * its own, and what is not stands out.
 */
final class Palette {

    /** Lanterna has no name for dim text; one that no terminal draws stands in for it. */
    static final SGR DIM = SGR.FRAKTUR;

    private record Look(TextColor colour, EnumSet<SGR> attributes) {}

    private final boolean colour;

    /**
     * @param colour whether there may be any
     */
    Palette(boolean colour) {
        this.colour = colour;
    }

    /** A space that looks as text of that style does. */
    TextCharacter space(Style style) {
        Look look = colour ? coloured(style) : plain(style);
        return TextCharacter.fromString(" ", look.colour(), TextColor.ANSI.DEFAULT, look.attributes())[0];
    }

    private static Look coloured(Style style) {
        return switch (style) {
            case MIND -> look(TextColor.ANSI.MAGENTA);
            case BAD, ERROR -> look(TextColor.ANSI.RED, SGR.BOLD);
            case KEY -> look(TextColor.ANSI.MAGENTA, SGR.BOLD);
            default -> plain(style);
        };
    }

    private static Look plain(Style style) {
        return switch (style) {
            case NORMAL, GOOD -> look(TextColor.ANSI.DEFAULT);
            case TITLE, CAUTION -> look(TextColor.ANSI.DEFAULT, SGR.BOLD, SGR.REVERSE);
            case STRONG, NOTICE, KEY, BAD, ERROR -> look(TextColor.ANSI.DEFAULT, SGR.BOLD);
            case FAINT -> look(TextColor.ANSI.DEFAULT, DIM);
            case SELECTED -> look(TextColor.ANSI.DEFAULT, SGR.REVERSE);
            case FIELD, MIND -> look(TextColor.ANSI.DEFAULT, SGR.UNDERLINE);
            case FOCUS -> look(TextColor.ANSI.DEFAULT, SGR.BOLD, SGR.UNDERLINE);
        };
    }

    private static Look look(TextColor colour, SGR... attributes) {
        EnumSet<SGR> set = EnumSet.noneOf(SGR.class);
        set.addAll(List.of(attributes));
        return new Look(colour, set);
    }
}
