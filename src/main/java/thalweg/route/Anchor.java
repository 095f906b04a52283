package thalweg.route;

import thalweg.ledger.Uid;

/**
 * One anchor of a station.
 *
 * @param uid its name in every database
 * @param station where it is
 * @param order its place among the anchors of the station, a key that sorts
 * @param role what it is for
 * @param name empty text where the role says enough
 * @param note empty text where there is none
 */
public record Anchor(Uid uid, Uid station, String order, AnchorRole role, String name, String note) {

    public Anchor {
        if (order.isBlank()) {
            throw new IllegalArgumentException("an anchor has a place in line");
        }
    }
}
