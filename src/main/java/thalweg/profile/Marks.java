package thalweg.profile;

import java.util.ArrayList;
import java.util.List;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;

/** The signs on the line that say what a place is; each has a size of its own, whatever the scale. */
final class Marks {

    /** Whatever of a mark is farther from its place leans away from it [letters]. */
    static final double HALF_WIDTH = 1.2;

    /** Half the width of the diamond that stands for stations. */
    private static final double DIAMOND = 0.75;

    private static final double HAZARD_WIDTH = 1.1;
    private static final double HAZARD_HEIGHT = 1.9;
    private static final double ESCAPE = 2.6;
    private static final double WATER = 2.6;
    private static final double WATER_DEPTH = 0.9;

    /** Of the stroke that goes down where nobody knows how far. */
    private static final double UNKNOWN = 2;

    private final Frame frame;

    Marks(Frame frame) {
        this.frame = frame;
    }

    /**
     * The marks of one place.
     *
     * @param roomAfter to the next place [letters]
     */
    List<Shape> of(Stop stop, double roomAfter) {
        List<Shape> shapes = new ArrayList<>();
        Spot lip = frame.spot(stop.along(), stop.lip());
        Spot foot = frame.spot(stop.along(), stop.foot());
        switch (stop.place().obstacle().kind()) {
            case HAZARD -> shapes.add(hazard(lip));
            case ESCAPE -> shapes.add(escape(lip));
            case SWIM -> shapes.add(water(foot, Math.max(1, Math.min(WATER, roomAfter))));
            case DROP, DOWNCLIMB, HANDLINE, JUMP, SLIDE, WALK, OTHER -> {}
        }
        if (stop.fall() == Fall.UNKNOWN) {
            shapes.add(new Shape.Line(foot, moved(foot, 0, -UNKNOWN), Ink.STRONG, true, false));
        }
        if (!stop.place().stations().isEmpty()) {
            shapes.add(diamond(lip));
        }
        return shapes;
    }

    private static Spot moved(Spot from, double right, double up) {
        return new Spot(from.x() + right, from.y() + up);
    }

    private static Shape diamond(Spot at) {
        return new Shape.Polygon(
                List.of(moved(at, -DIAMOND, 0), moved(at, 0, DIAMOND), moved(at, DIAMOND, 0), moved(at, 0, -DIAMOND)),
                Ink.MAIN,
                true);
    }

    private static Shape hazard(Spot at) {
        return new Shape.Polygon(
                List.of(moved(at, -HAZARD_WIDTH, 0), moved(at, 0, HAZARD_HEIGHT), moved(at, HAZARD_WIDTH, 0)),
                Ink.CAUTION,
                true);
    }

    /** Up and out; at the right edge it leans the other way. */
    private Shape escape(Spot at) {
        boolean fits = at.x() + ESCAPE <= frame.columns();
        return new Shape.Line(at, moved(at, fits ? ESCAPE : -ESCAPE, ESCAPE), Ink.MAIN, false, true);
    }

    /** A flat basin below the line, as water is drawn on sections; its size says nothing. */
    private static Shape water(Spot at, double width) {
        double inset = width / 6;
        return new Shape.Polygon(
                List.of(
                        at,
                        moved(at, width, 0),
                        moved(at, width - inset, -WATER_DEPTH),
                        moved(at, inset, -WATER_DEPTH)),
                Ink.MAIN,
                false);
    }
}
