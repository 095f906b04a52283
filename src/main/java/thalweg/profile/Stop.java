package thalweg.profile;

import thalweg.logbook.LineRecord;

/**
 * A place of the line as it stands on the profile.
 *
 * @param place as it is on record
 * @param along where it stands: from the start of the line [m], or counted in places where they are spaced evenly
 * @param placed whether that is its distance as entered
 * @param lip how far the line has gone down before it [m], by the heights that are known
 * @param height that the line loses by it [m], 0 or more; 0 where it is unknown
 * @param fall how it does
 * @param slopes whether it does so on the way to the next place, which is farther along
 */
record Stop(LineRecord place, double along, boolean placed, double lip, double height, Fall fall, boolean slopes) {

    int number() {
        return place.number();
    }

    /** How far the line has gone down where this place ends [m]. */
    double foot() {
        return slopes ? lip : lip + height;
    }

    /** How far it has gone down where the next place begins [m]. */
    double end() {
        return lip + height;
    }
}
