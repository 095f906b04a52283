package thalweg.logbook;

import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;

/**
 * One visit to a canyon during which anchors were looked at; the inspections made on it name it. It never changes.
 *
 * @param canyon that was visited
 * @param on when
 * @param by who looked; empty text where unknown
 * @param water how much water there was; empty where nobody said
 * @param note empty text where there is none
 */
public record Round(Uid canyon, PartialDate on, String by, Optional<WaterLevel> water, String note) {}
