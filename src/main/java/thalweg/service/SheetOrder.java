package thalweg.service;

import java.nio.file.Path;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.sheet.Paper;
import thalweg.units.UnitSystem;

/**
 * Which sheet somebody wants.
 *
 * @param format of the file
 * @param paper for which it is laid out; formats without pages pass over it
 * @param units in which quantities are shown
 * @param station whose card it is; empty for the sheet of the whole canyon
 * @param fonts folder with further fonts for PDF, which need not be there
 */
public record SheetOrder(MakeSheet.Format format, Paper paper, UnitSystem units, Optional<Uid> station, Path fonts) {}
