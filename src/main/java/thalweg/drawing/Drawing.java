package thalweg.drawing;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A picture as a display list, in one unit in both directions.
 *
 * @param shapes in the order of painting, later ones on top; not empty
 * @param description what the picture says, in words, for those who do not see it; not blank
 */
public record Drawing(List<Shape> shapes, String description) {

    public Drawing {
        shapes = List.copyOf(shapes);
        if (shapes.isEmpty() || description.isBlank()) {
            throw new IllegalArgumentException("a drawing shows something and says what");
        }
    }

    /** The leftmost place of any shape. */
    public double left() {
        return xs().min().orElseThrow();
    }

    /** The rightmost place of any shape. */
    public double right() {
        return xs().max().orElseThrow();
    }

    /** The lowest place of any shape. */
    public double bottom() {
        return ys().min().orElseThrow();
    }

    /** The highest place of any shape. */
    public double top() {
        return ys().max().orElseThrow();
    }

    private DoubleStream xs() {
        return shapes.stream().flatMap(shape -> shape.spots().stream()).mapToDouble(Spot::x);
    }

    private DoubleStream ys() {
        return shapes.stream().flatMap(shape -> shape.spots().stream()).mapToDouble(Spot::y);
    }
}
