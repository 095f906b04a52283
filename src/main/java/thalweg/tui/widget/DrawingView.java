package thalweg.tui.widget;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Style;

/**
 * Draws a picture in terminal cells: dots for strokes, text for labels, both scales alike. Labels keep clear of one
 * another, because a figure with another one across it can be read as a third.
 */
public final class DrawingView {

    /** A terminal's cell is about twice as high as it is wide. */
    private static final double CELL_HEIGHT = 2.0;

    /** Cells kept free at each side, so that labels at the edge of the picture have room. */
    private static final int MARGIN_COLUMNS = 10;

    /** How far a label may go from its place before it would seem to belong to something else [rows]. */
    private static final int MOST_AWAY = 3;

    private static final Map<Ink, Style> STYLES = new EnumMap<>(Map.of(
            Ink.MAIN, Style.NORMAL,
            Ink.STRONG, Style.STRONG,
            Ink.FAINT, Style.FAINT,
            Ink.FORCE, Style.KEY,
            Ink.CAUTION, Style.CAUTION));

    private static final int LEAST_ROWS = 3;
    private static final int LEAST_COLUMNS = 10;

    private static final char FILLED_SIGN = 'o';
    private static final char CAUTION_SIGN = 'A';
    private static final char HOLLOW_SIGN = '=';

    private final Canvas canvas;
    private final Glyphs glyphs;
    private final Taken labels;
    private final Dots dots;
    private final double scale;
    private final double left;
    private final double top;

    /** Whether the drawing was laid out in letters, so that nothing moves. */
    private final boolean lettered;

    private DrawingView(Canvas canvas, Drawing drawing, Glyphs glyphs) {
        this.canvas = canvas;
        this.glyphs = glyphs;
        this.labels = new Taken(canvas.rows(), canvas.columns());
        this.dots = new Dots(canvas.rows(), canvas.columns(), glyphs);
        this.lettered = drawing.letter().isPresent();
        if (lettered) {
            this.scale = 1 / drawing.letter().getAsDouble();
            this.left = 0;
            this.top = 0;
            return;
        }
        double width = Math.max(1e-6, drawing.right() - drawing.left());
        double height = Math.max(1e-6, drawing.top() - drawing.bottom());
        double roomAcross = Math.max(1, canvas.columns() - 2 * Math.min(MARGIN_COLUMNS, canvas.columns() / 5));
        double roomDown = Math.max(1, canvas.rows() - 2);
        this.scale = Math.min(roomAcross / width, roomDown * CELL_HEIGHT / height);
        this.left = (canvas.columns() - width * scale) / 2 - drawing.left() * scale;
        this.top = (canvas.rows() * CELL_HEIGHT - height * scale) / 2 + drawing.top() * scale;
    }

    /**
     * Draws the picture as large as it fits, or, if it was laid out in letters, a cell to each of them.
     *
     * @return the labels for which there was no room, in the order of the drawing; they must be told in another way
     */
    public static List<String> draw(Canvas canvas, Drawing drawing, Glyphs glyphs) {
        if (canvas.rows() < LEAST_ROWS || canvas.columns() < LEAST_COLUMNS) {
            return drawing.shapes().stream()
                    .<String>mapMulti((shape, labels) -> label(shape).ifPresent(label -> labels.accept(label.text())))
                    .toList();
        }
        DrawingView view = new DrawingView(canvas, drawing, glyphs);
        drawing.shapes()
                .forEach(shape ->
                        shape.match(line -> view.line(line), polygon -> view.polygon(polygon), label -> Boolean.TRUE));
        view.dots.paint(canvas);
        List<String> left = new ArrayList<>();
        for (Shape shape : drawing.shapes()) {
            label(shape).filter(label -> !view.label(label)).ifPresent(label -> left.add(label.text()));
        }
        return List.copyOf(left);
    }

    private static Optional<Shape.Label> label(Shape shape) {
        return shape.match(line -> Optional.empty(), polygon -> Optional.empty(), Optional::of);
    }

    /** Across, in cells. */
    private double column(Spot spot) {
        return left + spot.x() * scale;
    }

    /** Down, in cells. */
    private double row(Spot spot) {
        return (top - spot.y() * scale) / CELL_HEIGHT;
    }

    private Boolean line(Shape.Line line) {
        Style style = STYLES.getOrDefault(line.ink(), Style.NORMAL);
        double fromColumn = column(line.from());
        double fromRow = row(line.from());
        double toColumn = column(line.to());
        double toRow = row(line.to());
        if (lettered && line.ink() == Ink.FAINT) {
            dots.dotted(fromColumn, fromRow, toColumn, toRow, style);
            return Boolean.TRUE;
        }
        dots.stroke(fromColumn, fromRow, toColumn, toRow, line.dashed(), style);
        if (line.arrow() && !plain()) {
            arrowHead(fromColumn, fromRow, toColumn, toRow, style);
        }
        return Boolean.TRUE;
    }

    private void arrowHead(double fromColumn, double fromRow, double toColumn, double toRow, Style style) {
        double across = toColumn - fromColumn;
        double down = (toRow - fromRow) * CELL_HEIGHT;
        double length = Math.hypot(across, down);
        if (length < 1) {
            return;
        }
        double size = Math.min(2.5, length / 2);
        for (int side = -1; side <= 1; side += 2) {
            double backAcross = -across / length * size + side * -down / length * size / 2;
            double backDown = -down / length * size + side * across / length * size / 2;
            dots.stroke(toColumn, toRow, toColumn + backAcross, toRow + backDown / CELL_HEIGHT, false, style);
        }
    }

    private Boolean polygon(Shape.Polygon polygon) {
        Style style = STYLES.getOrDefault(polygon.ink(), Style.NORMAL);
        List<Spot> spots = polygon.spots();
        if (plain()) {
            sign(polygon, style);
            return Boolean.TRUE;
        }
        for (int i = 0; i < spots.size(); i++) {
            Spot from = spots.get(i);
            Spot to = spots.get((i + 1) % spots.size());
            dots.stroke(column(from), row(from), column(to), row(to), false, style);
        }
        if (polygon.filled()) {
            dots.fill(
                    spots.stream().mapToDouble(this::column).toArray(),
                    spots.stream().mapToDouble(this::row).toArray(),
                    style);
        }
        return Boolean.TRUE;
    }

    /** Whether a letter is the smallest thing that can be drawn, so that a sign says more than an outline. */
    private boolean plain() {
        return lettered && glyphs == Glyphs.ASCII;
    }

    /** One letter in the middle of what is filled, a row of them in what is hollow. */
    private void sign(Shape.Polygon polygon, Style style) {
        List<Spot> spots = polygon.spots();
        double from = spots.stream().mapToDouble(this::column).min().orElseThrow();
        double to = spots.stream().mapToDouble(this::column).max().orElseThrow();
        double middle = (from + to) / 2;
        double row = spots.stream().mapToDouble(this::row).average().orElseThrow();
        if (polygon.filled()) {
            dots.put(middle, middle, row, polygon.ink() == Ink.CAUTION ? CAUTION_SIGN : FILLED_SIGN, style);
        } else {
            dots.put(from, Math.max(from, to - 1), row, HOLLOW_SIGN, style);
        }
    }

    /** Whether there was room for it: at its spot or, where another label stands, a little above or below. */
    private boolean label(Shape.Label label) {
        int width = Width.of(label.text());
        int at = (int) Math.round(column(label.at()));
        int start = switch (label.side()) {
            case START -> lettered ? at : at + 1;
            case MIDDLE -> at - width / 2;
            case END -> at - width;
        };
        int inside = Math.max(0, Math.min(canvas.columns() - width, start));
        int row = Math.max(0, Math.min(canvas.rows() - 1, (int) Math.floor(row(label.at()))));
        for (int step = 0; step <= MOST_AWAY; step++) {
            for (int side = -1; side <= 1; side += 2) {
                if (labels.take(row + side * step, inside, width)) {
                    canvas.put(row + side * step, inside, label.text(), STYLES.getOrDefault(label.ink(), Style.NORMAL));
                    return true;
                }
            }
        }
        return false;
    }
}
