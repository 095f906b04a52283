package thalweg.service;

import java.nio.file.Path;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.SheetNumber;
import thalweg.sheet.Paper;
import thalweg.sheet.SheetContents;
import thalweg.units.UnitSystem;

/**
 * Which sheet somebody wants.
 *
 * @param format of the file
 * @param paper for which it is laid out; formats without pages pass over it
 * @param units in which quantities are shown
 * @param station whose card it is; empty for the sheet of the whole canyon
 * @param fonts folder with further fonts for PDF, which need not be there
 * @param contents what it holds
 * @param since an earlier sheet of the canyon, where what changed since is to be told
 * @param trip to that canyon, for which the sheet is made; empty where it is for none
 */
public record SheetOrder(
        MakeSheet.Format format,
        Paper paper,
        UnitSystem units,
        Optional<Uid> station,
        Path fonts,
        SheetContents contents,
        Optional<SheetNumber> since,
        Optional<Uid> trip) {

    /** A sheet of all that others may see. */
    public SheetOrder(MakeSheet.Format format, Paper paper, UnitSystem units, Optional<Uid> station, Path fonts) {
        this(format, paper, units, station, fonts, SheetContents.USUAL, Optional.empty(), Optional.empty());
    }

    /** The same that holds what somebody chose. */
    public SheetOrder holding(SheetContents other) {
        return new SheetOrder(format, paper, units, station, fonts, other, since, trip);
    }

    /** The same with what changed since an earlier sheet. */
    public SheetOrder since(Optional<SheetNumber> other) {
        return new SheetOrder(format, paper, units, station, fonts, contents, other, trip);
    }

    /** The same for a trip. */
    public SheetOrder forTrip(Optional<Uid> other) {
        return new SheetOrder(format, paper, units, station, fonts, contents, since, other);
    }
}
