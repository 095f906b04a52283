package thalweg.tui.lanterna;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.util.Set;
import thalweg.settings.Theme;
import thalweg.tui.core.Style;

/**
 * How styles look. In high contrast all is light on black or black on light, in pairs that are at least 7 to 1 apart (WCAG
 * 2.1, success criterion 1.4.6), black with white, yellow and cyan. Otherwise the terminal's own colours and attributes make
 * the looks, never a background.
 *
 * <p>Red and magenta are the two that can be read on black and on white alike: in the colours that xterm starts with, they
 * reach 3.6 and 4.4 to 1 on black, 5.9 and 4.7 to 1 on white (contrast as WCAG 2.1 computes it; xterm's colours from
 * memory), while green, yellow and cyan stay below 2.3 on white and blue at 2.2 on black. So what is well has no colour of
 * its own, and what is not stands out.
 */
final class Palette {

    /** Lanterna has no name for dim text; one that no terminal draws stands in for it. */
    static final SGR DIM = SGR.FRAKTUR;

    /** What a style is told the terminal by. */
    record Look(TextColor colour, TextColor ground, Set<SGR> attributes) {

        /** Whether it is what a terminal shows without being told. */
        boolean isDefault() {
            return colour == TextColor.ANSI.DEFAULT && ground == TextColor.ANSI.DEFAULT && attributes.isEmpty();
        }
    }

    private final Theme theme;

    Palette(Theme theme) {
        this.theme = theme;
    }

    /** How text of that style looks. */
    Look look(Style style) {
        return switch (theme) {
            case TERMINAL -> coloured(style);
            case CONTRAST -> contrasted(style);
            case PLAIN -> plain(style);
        };
    }

    private static Look coloured(Style style) {
        return switch (style) {
            case MIND -> look(TextColor.ANSI.MAGENTA);
            case BAD, ERROR -> look(TextColor.ANSI.RED, SGR.BOLD);
            case KEY -> look(TextColor.ANSI.MAGENTA, SGR.BOLD);
            default -> plain(style);
        };
    }

    /** Nothing is dim or reversed: every pair is named, so that it is known how far its colours are apart. */
    private static Look contrasted(Style style) {
        return switch (style) {
            case NORMAL, GOOD, FAINT -> onBlack(TextColor.ANSI.WHITE_BRIGHT);
            case STRONG, NOTICE -> onBlack(TextColor.ANSI.WHITE_BRIGHT, SGR.BOLD);
            case TITLE, SELECTED -> on(TextColor.ANSI.WHITE_BRIGHT, SGR.BOLD);
            case CAUTION, BAD, ERROR -> on(TextColor.ANSI.YELLOW_BRIGHT, SGR.BOLD);
            case MIND -> onBlack(TextColor.ANSI.YELLOW_BRIGHT, SGR.UNDERLINE);
            case KEY -> onBlack(TextColor.ANSI.CYAN_BRIGHT, SGR.BOLD);
            case FIELD -> onBlack(TextColor.ANSI.WHITE_BRIGHT, SGR.UNDERLINE);
            case FOCUS -> onBlack(TextColor.ANSI.CYAN_BRIGHT, SGR.BOLD, SGR.UNDERLINE);
        };
    }

    private static Look onBlack(TextColor colour, SGR... attributes) {
        return new Look(colour, TextColor.ANSI.BLACK, Set.of(attributes));
    }

    private static Look on(TextColor ground, SGR... attributes) {
        return new Look(TextColor.ANSI.BLACK, ground, Set.of(attributes));
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
        return new Look(colour, TextColor.ANSI.DEFAULT, Set.of(attributes));
    }
}
