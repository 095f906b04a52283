package thalweg.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thalweg.settings.Settings;
import thalweg.units.UnitSystem;

/**
 * How a sheet is to be made.
 *
 * @param units in which quantities are shown
 * @param asOf the day of the sheet, from which ages are counted
 * @param program version of the program that makes it
 * @param inspectionsShown how many of the latest inspection days of each station are shown, 1 or more
 * @param settings whose figures say what is due
 * @param number under which it is given out, 1 or more; empty where it is not noted that it is
 */
public record SheetOptions(
        UnitSystem units,
        LocalDate asOf,
        String program,
        int inspectionsShown,
        Settings settings,
        Optional<Long> number) {

    /** How many inspection days of a station a sheet shows where nobody says otherwise. */
    public static final int USUAL_INSPECTIONS = 3;

    public SheetOptions {
        if (program.isBlank()
                || inspectionsShown < 1
                || number.filter(one -> one < 1).isPresent()) {
            throw new IllegalArgumentException(
                    "a sheet names its program, shows the latest inspection and is numbered from 1");
        }
    }

    /** A sheet without a number, by the standard figures. */
    public SheetOptions(UnitSystem units, LocalDate asOf, String program, int inspectionsShown) {
        this(units, asOf, program, inspectionsShown, new Settings(List.of()), Optional.empty());
    }

    /** The same with that number. */
    public SheetOptions numbered(long one) {
        return new SheetOptions(units, asOf, program, inspectionsShown, settings, Optional.of(one));
    }

    /** The same by the figures of those settings. */
    public SheetOptions by(Settings other) {
        return new SheetOptions(units, asOf, program, inspectionsShown, other, number);
    }

    /** The usual sheet. */
    public static SheetOptions usual(UnitSystem units, LocalDate asOf, String program) {
        return new SheetOptions(units, asOf, program, USUAL_INSPECTIONS);
    }
}
