package thalweg.logbook;

import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.route.Exposure;
import thalweg.route.Part;
import thalweg.route.PartialDate;

/**
 * A part as one line of a list over all canyons.
 *
 * @param canyon in which it is
 * @param canyonName as entered
 * @param station at which it is
 * @param stationName as entered
 * @param exposure of the station; empty where nobody said
 * @param invented whether the canyon is made up for practice
 * @param part as it is entered
 * @param state what follows from its inspections
 * @param replaced the last date on which an inspection said that it was replaced
 */
public record PartRow(
        Uid canyon,
        String canyonName,
        Uid station,
        String stationName,
        Optional<Exposure> exposure,
        boolean invented,
        Part part,
        PartState state,
        Optional<PartialDate> replaced) {

    /**
     * When the part was replaced since it was placed, as far as anybody can tell: then the hardware of the record may be
     * the old one. The replacement that the date of placing itself tells of does not count; where the order of the two
     * cannot be told, it does.
     */
    public Optional<PartialDate> replacedSince() {
        return since(part, replaced);
    }

    static Optional<PartialDate> since(Part part, Optional<PartialDate> replaced) {
        return replaced.filter(date -> part.placed().isEmpty()
                || (!date.equals(part.placed().get())
                        && date.latest().isAfter(part.placed().get().earliest())));
    }
}
