package thalweg.tui.lanterna;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.TextColor;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.settings.Theme;
import thalweg.tui.core.Style;

class PaletteTest {

    /** Red, green and blue as xterm starts with them; from memory. */
    private static final Map<TextColor, int[]> XTERM = Map.of(
            TextColor.ANSI.BLACK, new int[] {0, 0, 0},
            TextColor.ANSI.WHITE_BRIGHT, new int[] {255, 255, 255},
            TextColor.ANSI.YELLOW_BRIGHT, new int[] {255, 255, 0},
            TextColor.ANSI.CYAN_BRIGHT, new int[] {0, 255, 255});

    /** The formulas for relative luminance and contrast ratio of WCAG 2.1. */
    private static double luminance(TextColor colour) {
        int[] parts = Objects.requireNonNull(XTERM.get(colour));
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double share = parts[i] / 255.0;
            sum += weights[i] * (share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    @ParameterizedTest
    @EnumSource(Style.class)
    void inHighContrastEveryPairIsSevenToOneApart(Style style) {
        Palette.Look look = new Palette(Theme.CONTRAST).look(style);

        double one = luminance(look.colour());
        double other = luminance(look.ground());
        assertThat((Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05))
                .isGreaterThanOrEqualTo(7);
    }

    @ParameterizedTest
    @EnumSource(Style.class)
    void plainHasNoColourAtAll(Style style) {
        Palette.Look look = new Palette(Theme.PLAIN).look(style);

        assertThat(look.colour()).isEqualTo(TextColor.ANSI.DEFAULT);
        assertThat(look.ground()).isEqualTo(TextColor.ANSI.DEFAULT);
    }
}
