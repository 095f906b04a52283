package thalweg.tui.core;

import java.time.LocalDate;
import java.util.Optional;
import thalweg.settings.Settings;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/**
 * What every screen can see of the world.
 *
 * @param phrases the words of the program
 * @param units in which quantities are shown
 * @param today where the user is
 * @param glyphs the signs that may be used
 * @param readOnly whether nothing can be changed, so that keys that would say so
 * @param keeper who signs what is entered
 * @param settings what the person has set, or the standard
 * @param rows of the terminal, 1 or more
 * @param columns of the terminal, 1 or more
 */
public record Surroundings(
        Phrases phrases,
        UnitSystem units,
        LocalDate today,
        Glyphs glyphs,
        boolean readOnly,
        String keeper,
        Settings settings,
        int rows,
        int columns) {

    /** From here on lists and details stand side by side. */
    private static final int WIDE = 100;

    /** A phrase of the program. */
    public String say(String key, Object... values) {
        return phrases.say(key, values);
    }

    /** What is said of something, after its name. */
    public String labelled(String heading, String said) {
        return phrases.labelled(heading, said);
    }

    /** A caution of the program, beside which the original stands where nobody has reviewed the translation. */
    public String caution(String key, Object... values) {
        return phrases.caution(key, values);
    }

    /** Whether there is room for a list and a detail side by side. */
    public boolean wide() {
        return columns >= WIDE;
    }

    /** The same in other units. */
    public Surroundings with(UnitSystem other) {
        return new Surroundings(phrases, other, today, glyphs, readOnly, keeper, settings, rows, columns);
    }

    /** The same, signed by that name from now on. */
    public Surroundings signedBy(String name) {
        return new Surroundings(
                phrases, units, today, glyphs, readOnly, name, settings.withKeeper(Optional.of(name)), rows, columns);
    }

    /** The same in a terminal of another size. */
    public Surroundings sized(int newRows, int newColumns) {
        return new Surroundings(phrases, units, today, glyphs, readOnly, keeper, settings, newRows, newColumns);
    }
}
