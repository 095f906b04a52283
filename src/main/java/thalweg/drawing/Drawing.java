package thalweg.drawing;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * A picture as a display list, in one unit in both directions.
 *
 * @param shapes in the order of painting, later ones on top; not empty
 * @param description what the picture says, in words, for those who do not see it; not blank
 * @param letter width of a letter in the drawing's unit, above 0, where labels were laid out for letters that wide and
 *     lines twice as high; then labels neither overlap nor leave the picture if an output keeps to it, with the upper
 *     left corner at (0, 0). Empty where labels stand wherever they fall.
 */
public record Drawing(List<Shape> shapes, String description, OptionalDouble letter) {

    public Drawing {
        shapes = List.copyOf(shapes);
        if (shapes.isEmpty() || description.isBlank()) {
            throw new IllegalArgumentException("a drawing shows something and says what");
        }
        if (letter.isPresent() && !(letter.getAsDouble() > 0)) {
            throw new IllegalArgumentException("a letter is wider than nothing");
        }
    }

    /** A drawing whose labels stand wherever they fall. */
    public Drawing(List<Shape> shapes, String description) {
        this(shapes, description, OptionalDouble.empty());
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
