package thalweg.profile;

import java.util.ArrayList;
import java.util.List;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;
import thalweg.text.Width;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** The scales at the edges of a profile: how far along below it, how far down at its left. */
final class Ticks {

    /** Two rows between the figures of heights [letters]. */
    private static final double LEAST_DOWN = 4;

    /** Free cells between the figures of distances. */
    private static final int GAP = 3;

    private final UnitSystem units;

    Ticks(UnitSystem units) {
        this.units = units;
    }

    /**
     * Heights of the scale at the left [m], from 0 on, at round numbers of the unit.
     *
     * @param from the least [m]
     * @param to the most [m]
     * @param lettersToAMetre above 0
     */
    List<Double> down(double from, double to, double lettersToAMetre) {
        return between(from, to, step(LEAST_DOWN / lettersToAMetre));
    }

    /** Cells that the figures of those heights need. */
    int width(List<Double> heights) {
        return heights.stream().mapToInt(height -> Width.of(text(height))).max().orElse(0);
    }

    private List<Double> between(double from, double to, double step) {
        List<Double> found = new ArrayList<>();
        double slip = step * 1e-9;
        for (long i = (long) Math.ceil(from / step - 1e-9); i * step <= to + slip; i++) {
            found.add(i * step);
        }
        return found;
    }

    /** The smallest round number of the unit that is not below that length [m]. */
    double step(double leastMetres) {
        double unit = unit();
        return Round.stepFrom(Math.max(leastMetres / unit, 1)) * unit;
    }

    private double unit() {
        return switch (units) {
            case METRIC -> 1;
            case IMPERIAL -> Length.METRES_PER_FOOT;
        };
    }

    private String text(double metres) {
        return new Length(metres).print(units);
    }

    /** The scale of heights, its strokes in the last column before the line. */
    List<Shape> heights(Frame frame, List<Double> heights) {
        List<Shape> shapes = new ArrayList<>();
        double edge = frame.firstColumn();
        for (double height : heights) {
            double y = frame.y(height);
            String text = text(height);
            shapes.add(new Shape.Line(new Spot(edge - 0.9, y), new Spot(edge - 0.1, y), Ink.FAINT, false, false));
            shapes.add(new Shape.Label(new Spot(edge - 1 - Width.of(text), y), text, Ink.FAINT, Shape.Side.START));
        }
        return shapes;
    }

    /**
     * The scale of distances in the last row, each figure behind its stroke.
     *
     * @param known where it holds, inside the window: beyond the last known distance there is none
     */
    List<Shape> distances(Frame frame, Window known) {
        int widest = 1 + Width.of(text(known.to())) + GAP;
        List<Shape> shapes = new ArrayList<>();
        double step = step(widest / frame.scale().along());
        double middle = Frame.middle(frame.rows() - 1);
        for (double along : between(known.from(), known.to(), step)) {
            String text = text(along);
            double x = frame.x(along);
            int column = (int) Math.floor(x) + 1;
            shapes.add(new Shape.Line(new Spot(x, middle + 0.95), new Spot(x, middle - 0.5), Ink.FAINT, false, false));
            if (column + Width.of(text) <= frame.columns()) {
                shapes.add(new Shape.Label(new Spot(column, middle), text, Ink.FAINT, Shape.Side.START));
            }
        }
        return shapes;
    }
}
