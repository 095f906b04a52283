package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;

/**
 * Finds room for labels beside strokes and beside one another. How large letters come out is for each output to say, so
 * a size is taken that fits a narrow page as well as a terminal.
 */
final class LabelRoom {

    /** So many letters stand side by side, and so many lines one above the other, across the picture's extent. */
    private static final double LETTERS_ACROSS = 30;

    private static final double LINES_ACROSS = 17;

    private static final int OVER_LABEL = 100;
    private static final int OVER_MARK = 10;

    private final double letter;
    private final double line;
    private final List<Shape.Line> strokes;
    private final List<Spot> marks;
    private final List<Box> taken = new ArrayList<>();
    private final List<Shape.Label> labels = new ArrayList<>();

    /**
     * @param extent of the picture, the larger of its width and height, above 0
     * @param strokes that letters should not cross
     * @param marks that letters should not cover
     */
    LabelRoom(double extent, List<Shape.Line> strokes, List<Spot> marks) {
        this.letter = extent / LETTERS_ACROSS;
        this.line = extent / LINES_ACROSS;
        this.strokes = strokes;
        this.marks = marks;
    }

    /** Every label that was placed. */
    List<Shape.Label> labels() {
        return labels;
    }

    /** Writes beside a spot: above it if there is room, else at its sides, farther up, or below. */
    void beside(Spot spot, String text, Ink ink, boolean sideFirst) {
        List<Shape.Label> choices = new ArrayList<>();
        Shape.Label right = label(spot, letter, 0, text, ink, Shape.Side.START);
        Shape.Label left = label(spot, -letter, 0, text, ink, Shape.Side.END);
        if (sideFirst) {
            choices.add(right);
            choices.add(left);
        }
        choices.add(label(spot, 0, line, text, ink, Shape.Side.MIDDLE));
        choices.add(label(spot, letter, 0.7 * line, text, ink, Shape.Side.START));
        choices.add(label(spot, -letter, 0.7 * line, text, ink, Shape.Side.END));
        choices.add(right);
        choices.add(left);
        choices.add(label(spot, letter, -0.7 * line, text, ink, Shape.Side.START));
        choices.add(label(spot, -letter, -0.7 * line, text, ink, Shape.Side.END));
        for (int rows = 2; rows <= 5; rows++) {
            choices.add(label(spot, 0, rows * line, text, ink, Shape.Side.MIDDLE));
        }
        choices.add(label(spot, 0, -line, text, ink, Shape.Side.MIDDLE));
        place(choices);
    }

    /** Writes past the end of an arrow, or at its sides. */
    void past(Spot tip, double upwards, String text, Ink ink) {
        double away = upwards > 0 ? line : -line;
        place(List.of(
                label(tip, 0, away, text, ink, Shape.Side.MIDDLE),
                label(tip, letter, 0, text, ink, Shape.Side.START),
                label(tip, -letter, 0, text, ink, Shape.Side.END),
                label(tip, 0, 2 * away, text, ink, Shape.Side.MIDDLE),
                label(tip, 0, -away, text, ink, Shape.Side.MIDDLE)));
    }

    private static Shape.Label label(Spot from, double right, double up, String text, Ink ink, Shape.Side side) {
        return new Shape.Label(new Spot(from.x() + right, from.y() + up), text, ink, side);
    }

    private void place(List<Shape.Label> choices) {
        Shape.Label best = choices.get(0);
        int least = Integer.MAX_VALUE;
        for (Shape.Label choice : choices) {
            int cost = cost(box(choice));
            if (cost < least) {
                best = choice;
                least = cost;
            }
        }
        taken.add(box(best));
        labels.add(best);
    }

    private int cost(Box box) {
        int cost = 0;
        for (Box other : taken) {
            cost += box.meets(other) ? OVER_LABEL : 0;
        }
        for (Spot mark : marks) {
            cost += box.holds(mark) ? OVER_MARK : 0;
        }
        for (Shape.Line stroke : strokes) {
            cost += box.meets(stroke) ? 1 : 0;
        }
        return cost;
    }

    /** What a label covers. */
    Box box(Shape.Label label) {
        double width = letter * label.text().codePointCount(0, label.text().length());
        double before = switch (label.side()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        double left = label.at().x() - before;
        return new Box(left, left + width, label.at().y() - line / 2, label.at().y() + line / 2);
    }

    /** A rectangle on the picture. */
    record Box(double left, double right, double bottom, double top) {

        /** Whether the two have more than an edge in common. */
        boolean meets(Box other) {
            double slip = 1e-9 * (right - left);
            return left < other.right - slip
                    && other.left < right - slip
                    && bottom < other.top - slip
                    && other.bottom < top - slip;
        }

        boolean holds(Spot spot) {
            return spot.x() >= left && spot.x() <= right && spot.y() >= bottom && spot.y() <= top;
        }

        /** Whether a stroke passes through it: clipped to both of its extents, something of the stroke is left. */
        boolean meets(Shape.Line stroke) {
            double dx = stroke.to().x() - stroke.from().x();
            double dy = stroke.to().y() - stroke.from().y();
            double[] between = {0, 1};
            return clip(dx, left - stroke.from().x(), right - stroke.from().x(), between)
                    && clip(dy, bottom - stroke.from().y(), top - stroke.from().y(), between);
        }

        private static boolean clip(double step, double low, double high, double[] between) {
            if (step == 0) {
                return low <= 0 && high >= 0;
            }
            between[0] = Math.max(between[0], Math.min(low / step, high / step));
            between[1] = Math.min(between[1], Math.max(low / step, high / step));
            return between[0] <= between[1];
        }
    }
}
