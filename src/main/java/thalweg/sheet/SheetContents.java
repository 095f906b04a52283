package thalweg.sheet;

import java.util.Optional;

/**
 * What a sheet holds, as whoever hands it out chose. What is left out is said on the sheet.
 *
 * @param stretch the part of the line that it is about; empty for all of it
 * @param history whether inspections are shown one by one; how a part was last left is shown in any case
 * @param analyses whether rig analyses are shown
 * @param places whether coordinates are shown
 * @param names whether names of people are shown
 * @param privateNotes whether the keeper's private notes are shown, which otherwise never leave the database
 */
public record SheetContents(
        Optional<Stretch> stretch,
        boolean history,
        boolean analyses,
        boolean places,
        boolean names,
        boolean privateNotes) {

    /** All that others may see. */
    public static final SheetContents USUAL = new SheetContents(Optional.empty(), true, true, true, true, false);

    /** The same about that part of the line. */
    public SheetContents of(Optional<Stretch> other) {
        return new SheetContents(other, history, analyses, places, names, privateNotes);
    }

    /** The same with the private notes. */
    public SheetContents withPrivateNotes() {
        return new SheetContents(stretch, history, analyses, places, names, true);
    }
}
