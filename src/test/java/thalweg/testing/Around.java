package thalweg.testing;

import java.time.LocalDate;
import thalweg.service.LoadPhrases;
import thalweg.settings.Settings;
import thalweg.text.Phrases;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Surroundings;
import thalweg.units.UnitSystem;

/** What screens see in tests: a day that does not pass, the program's own words, a terminal of any size. */
public final class Around {

    private static final Phrases PHRASES = LoadPhrases.english();

    private Around() {}

    /** A terminal of the classic size, with braille. */
    public static Surroundings classic() {
        return sized(24, 80);
    }

    /** A terminal of that size, with braille. */
    public static Surroundings sized(int rows, int columns) {
        return with(Glyphs.BRAILLE).sized(rows, columns);
    }

    /** A terminal of the classic size, with those signs. */
    public static Surroundings with(Glyphs glyphs) {
        return new Surroundings(
                PHRASES,
                UnitSystem.METRIC,
                LocalDate.of(2026, 11, 25),
                glyphs,
                false,
                "Ana",
                Settings.standard(PHRASES),
                24,
                80);
    }
}
