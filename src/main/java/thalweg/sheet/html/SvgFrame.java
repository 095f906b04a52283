package thalweg.sheet.html;

import thalweg.drawing.Drawing;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;
import thalweg.text.Width;

/**
 * Where a drawing lies on its canvas: as large as fits, y pointing down, with room for every label.
 *
 * @param scale canvas units to a unit of the drawing, above 0
 * @param left edge of the canvas
 * @param top edge of the canvas
 * @param width of the canvas, above 0
 * @param height of the canvas, above 0
 */
record SvgFrame(double scale, double left, double top, double width, double height) {

    /** Of a letter, in canvas units; a unit is shown as a pixel or more, so that this is 10.5 points or more on paper. */
    static final int LETTER_HEIGHT = 14;

    /** A wide sans-serif letter of that height; too much only leaves a margin. */
    private static final double LETTER_WIDTH = 0.62 * LETTER_HEIGHT;

    /** What a phone of 360 pixels shows between its margins without making the letters smaller. */
    private static final double WIDEST = 328;

    private static final double HIGHEST = 420;

    private static final double MARGIN = 8;

    /** Long labels may push the canvas wider, but never the drawing below this part of its full size. */
    private static final double LEAST_PART = 0.35;

    private static final int HALVINGS = 40;

    /**
     * The largest frame that keeps the drawing with its labels on a small phone; one that was laid out in letters is as
     * large as they are.
     */
    static SvgFrame around(Drawing drawing) {
        if (drawing.letter().isPresent()) {
            return at(drawing, LETTER_WIDTH / drawing.letter().getAsDouble());
        }
        double extent = Math.max(drawing.right() - drawing.left(), drawing.top() - drawing.bottom());
        double tooLarge = extent > 0 ? HIGHEST / extent : 1;
        double small = tooLarge * LEAST_PART;
        if (fits(at(drawing, tooLarge))) {
            return at(drawing, tooLarge);
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (small + tooLarge) / 2;
            if (fits(at(drawing, middle))) {
                small = middle;
            } else {
                tooLarge = middle;
            }
        }
        return at(drawing, small);
    }

    private static boolean fits(SvgFrame frame) {
        return frame.width <= WIDEST && frame.height <= HIGHEST;
    }

    private static SvgFrame at(Drawing drawing, double scale) {
        double left = scale * drawing.left();
        double right = scale * drawing.right();
        double top = -scale * drawing.top();
        double bottom = -scale * drawing.bottom();
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Shape.Label label) {
                double start = scale * label.at().x() - width(label) * before(label.side());
                left = Math.min(left, start);
                right = Math.max(right, start + width(label));
                top = Math.min(top, -scale * label.at().y() - LETTER_HEIGHT);
                bottom = Math.max(bottom, -scale * label.at().y() + LETTER_HEIGHT);
            }
        }
        return new SvgFrame(scale, left - MARGIN, top - MARGIN, right - left + 2 * MARGIN, bottom - top + 2 * MARGIN);
    }

    private static double width(Shape.Label label) {
        return Width.of(label.text()) * LETTER_WIDTH;
    }

    /** The part of a label that stands before its spot. */
    private static double before(Shape.Side side) {
        return switch (side) {
            case START -> 0;
            case MIDDLE -> 0.5;
            case END -> 1;
        };
    }

    double x(Spot spot) {
        return scale * spot.x();
    }

    double y(Spot spot) {
        return -scale * spot.y();
    }
}
