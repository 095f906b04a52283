package thalweg.logbook;

import thalweg.ledger.Uid;
import thalweg.route.PartialDate;

/**
 * A calculation that was attached to a station. It never changes; input and result are kept to the letter.
 *
 * @param station it is about
 * @param on when it was made
 * @param by who attached it; empty text where unknown
 * @param program version of the program that computed it
 * @param input the rig, as the text of a rig file
 * @param result the answer, as the text that the program printed then
 * @param inventory what the station's anchors were like then
 */
public record RigAnalysis(
        Uid station,
        PartialDate on,
        String by,
        String program,
        String input,
        String result,
        InventoryFingerprint inventory) {}
