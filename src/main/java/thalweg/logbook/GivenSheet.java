package thalweg.logbook;

/**
 * A sheet that was given out, held against the records as they are now.
 *
 * @param canyon the sheet is about
 * @param entry what was noted when it was given
 * @param changedSince whether the canyon's records say something else now
 */
public record GivenSheet(CanyonName canyon, Entry<SheetGiven> entry, boolean changedSince) {}
