package thalweg.drawing;

/**
 * A place on a drawing.
 *
 * @param x to the right, in the drawing's own unit, finite
 * @param y upwards, in the drawing's own unit, finite
 */
public record Spot(double x, double y) {

    public Spot {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a spot is finite");
        }
    }
}
