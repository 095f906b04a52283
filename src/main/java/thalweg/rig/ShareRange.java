package thalweg.rig;

/**
 * Between which shares friction may leave a point.
 *
 * @param point its name
 * @param least of the sum of the forces on all points [-], 0 to 1
 * @param most [-], not below the least
 */
public record ShareRange(String point, double least, double most) {

    public ShareRange {
        if (!(0 <= least && least <= most && most <= 1)) {
            throw new IllegalArgumentException("a range of shares lies between 0 and 1");
        }
    }
}
