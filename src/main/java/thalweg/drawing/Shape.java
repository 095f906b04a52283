package thalweg.drawing;

import java.util.List;
import java.util.function.Function;

/** One element of a display list. */
public sealed interface Shape {

    /** Which kind of stroke draws it. */
    Ink ink();

    /** Every place that must be inside the picture; never empty. */
    List<Spot> spots();

    /** One function per kind, so that the compiler finds every place a new kind must reach (Java 17). */
    <R> R match(Function<Line, R> onLine, Function<Polygon, R> onPolygon, Function<Label, R> onLabel);

    /**
     * A straight stroke.
     *
     * @param from one end
     * @param to the other end
     * @param dashed whether it is broken up, as for a strand that hangs slack
     * @param arrow whether the second end has a head
     */
    record Line(Spot from, Spot to, Ink ink, boolean dashed, boolean arrow) implements Shape {

        @Override
        public List<Spot> spots() {
            return List.of(from, to);
        }

        @Override
        public <R> R match(Function<Line, R> onLine, Function<Polygon, R> onPolygon, Function<Label, R> onLabel) {
            return onLine.apply(this);
        }
    }

    /**
     * A closed outline.
     *
     * @param spots its corners in order, at least 3
     * @param filled whether its inside is inked
     */
    record Polygon(List<Spot> spots, Ink ink, boolean filled) implements Shape {

        public Polygon {
            spots = List.copyOf(spots);
            if (spots.size() < 3) {
                throw new IllegalArgumentException("a polygon has at least three corners");
            }
        }

        @Override
        public <R> R match(Function<Line, R> onLine, Function<Polygon, R> onPolygon, Function<Label, R> onLabel) {
            return onPolygon.apply(this);
        }
    }

    /**
     * A line of text. Its size does not follow the drawing's scale.
     *
     * @param at where its middle, start or end stands, half way up the letters
     * @param text one line
     * @param side which part of the text stands at the spot
     */
    record Label(Spot at, String text, Ink ink, Side side) implements Shape {

        @Override
        public List<Spot> spots() {
            return List.of(at);
        }

        @Override
        public <R> R match(Function<Line, R> onLine, Function<Polygon, R> onPolygon, Function<Label, R> onLabel) {
            return onLabel.apply(this);
        }
    }

    /** Which part of a label stands at its spot. */
    enum Side {
        START,
        MIDDLE,
        END
    }
}
