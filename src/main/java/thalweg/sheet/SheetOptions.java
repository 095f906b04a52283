package thalweg.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.SheetNumber;
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
 * @param number that tells it from every other; empty where it is not noted that it was written
 * @param contents what it holds
 * @param privateNotes of the keeper by the thing they are about; shown where the contents ask for them
 * @param changes since an earlier sheet, if they are asked for
 * @param trip for which it is made, if it is for one
 */
public record SheetOptions(
        UnitSystem units,
        LocalDate asOf,
        String program,
        int inspectionsShown,
        Settings settings,
        Optional<SheetNumber> number,
        SheetContents contents,
        Map<Uid, String> privateNotes,
        Optional<SheetChanges> changes,
        Optional<TripPlan> trip) {

    /** How many inspection days of a station a sheet shows where nobody says otherwise. */
    public static final int USUAL_INSPECTIONS = 3;

    public SheetOptions {
        privateNotes = Map.copyOf(privateNotes);
        if (program.isBlank() || inspectionsShown < 1) {
            throw new IllegalArgumentException("a sheet names its program and shows the latest inspection");
        }
    }

    /** A sheet without a number, by the standard figures, of all that others may see. */
    public SheetOptions(UnitSystem units, LocalDate asOf, String program, int inspectionsShown) {
        this(
                units,
                asOf,
                program,
                inspectionsShown,
                new Settings(List.of()),
                Optional.empty(),
                SheetContents.USUAL,
                Map.of(),
                Optional.empty(),
                Optional.empty());
    }

    /** The same with that number. */
    public SheetOptions numbered(SheetNumber one) {
        return new SheetOptions(
                units,
                asOf,
                program,
                inspectionsShown,
                settings,
                Optional.of(one),
                contents,
                privateNotes,
                changes,
                trip);
    }

    /** The same by the figures of those settings. */
    public SheetOptions by(Settings other) {
        return new SheetOptions(
                units, asOf, program, inspectionsShown, other, number, contents, privateNotes, changes, trip);
    }

    /**
     * The same with what somebody chose to show.
     *
     * @param notes private ones by the thing they are about; passed over where the contents do not ask for them
     */
    public SheetOptions holding(SheetContents other, Map<Uid, String> notes) {
        return new SheetOptions(
                units,
                asOf,
                program,
                inspectionsShown,
                settings,
                number,
                other,
                other.privateNotes() ? notes : Map.of(),
                changes,
                trip);
    }

    /** The same with what changed since an earlier sheet. */
    public SheetOptions since(Optional<SheetChanges> other) {
        return new SheetOptions(
                units, asOf, program, inspectionsShown, settings, number, contents, privateNotes, other, trip);
    }

    /** The same for a trip. */
    public SheetOptions forTrip(Optional<TripPlan> other) {
        return new SheetOptions(
                units, asOf, program, inspectionsShown, settings, number, contents, privateNotes, changes, other);
    }

    /** The usual sheet. */
    public static SheetOptions usual(UnitSystem units, LocalDate asOf, String program) {
        return new SheetOptions(units, asOf, program, USUAL_INSPECTIONS);
    }
}
