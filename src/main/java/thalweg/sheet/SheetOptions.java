package thalweg.sheet;

import java.time.LocalDate;
import thalweg.units.UnitSystem;

/**
 * How a sheet is to be made.
 *
 * @param units in which quantities are shown
 * @param asOf the day of the sheet, from which ages are counted
 * @param program version of the program that makes it
 * @param inspectionsShown how many of the latest inspection days of each station are shown, 1 or more
 */
public record SheetOptions(UnitSystem units, LocalDate asOf, String program, int inspectionsShown) {

    /** How many inspection days of a station a sheet shows where nobody says otherwise. */
    public static final int USUAL_INSPECTIONS = 3;

    public SheetOptions {
        if (program.isBlank() || inspectionsShown < 1) {
            throw new IllegalArgumentException("a sheet names its program and shows the latest inspection");
        }
    }

    /** The usual sheet. */
    public static SheetOptions usual(UnitSystem units, LocalDate asOf, String program) {
        return new SheetOptions(units, asOf, program, USUAL_INSPECTIONS);
    }
}
