package thalweg.route;

import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.units.Force;

/**
 * One part of an anchor.
 *
 * @param uid its name in every database
 * @param anchor it belongs to
 * @param order its place among the parts of the anchor, a key that sorts
 * @param label by which people point at it, such as "left bolt"; not blank
 * @param kind what it is
 * @param hardware what it is made of
 * @param placed when it was placed; empty where unknown
 * @param place where it is; empty where nobody measured
 * @param strength across the axis of a bolt, along webbing or cord: as rated when new, above 0; empty where unknown
 * @param axialStrength along the axis of a bolt as rated when new, above 0; empty where unknown
 * @param holdsAlone what somebody believes of a point; empty where nobody said
 * @param note empty text where there is none
 */
public record Part(
        Uid uid,
        Uid anchor,
        String order,
        String label,
        PartKind kind,
        Hardware hardware,
        Optional<PartialDate> placed,
        Optional<PartPlace> place,
        Optional<Force> strength,
        Optional<Force> axialStrength,
        Optional<HoldsAlone> holdsAlone,
        String note) {

    /**
     * What a part is made of, in the words on it or on its package; an empty text where unknown.
     *
     * @param material such as "stainless steel" or "nylon"
     * @param size such as "10 x 90 mm" or "25 mm"
     * @param standard such as "EN 959"
     * @param maker who made it
     * @param batch by which a recall names it
     */
    public record Hardware(String material, String size, String standard, String maker, String batch) {

        /** Nothing known. */
        public static final Hardware UNKNOWN = new Hardware("", "", "", "", "");
    }

    public Part {
        if (order.isBlank() || label.isBlank()) {
            throw new IllegalArgumentException("a part has a label and a place in line");
        }
        if (strength.filter(force -> force.newtons() <= 0).isPresent()
                || axialStrength.filter(force -> force.newtons() <= 0).isPresent()) {
            throw new IllegalArgumentException("a strength is above 0");
        }
    }

    /** What stands in its place since that day: under its label, but what somebody believed of the old one is gone. */
    public Part replacedOn(
            PartialDate on, Hardware made, Optional<Force> rated, Optional<Force> ratedAxially, String about) {
        return new Part(
                uid,
                anchor,
                order,
                label,
                kind,
                made,
                Optional.of(on),
                place,
                rated,
                ratedAxially,
                Optional.empty(),
                about);
    }
}
