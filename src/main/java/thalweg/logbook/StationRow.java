package thalweg.logbook;

import thalweg.ledger.Uid;

/**
 * A station as one line of a list.
 *
 * @param station its name in every database
 * @param canyon where it is
 * @param canyonName as entered
 * @param stationName as entered
 */
public record StationRow(Uid station, Uid canyon, String canyonName, String stationName) {}
