package thalweg.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;
import thalweg.logbook.Condition;
import thalweg.text.Phrases;

/**
 * A timeline as a picture: one row a part, the years below.
 *
 * @param drawing in letters; its rows are those of the parts, in their order, and one for the years
 * @param legend what each sign means that is there, a phrase each
 */
public record TimelinePicture(Drawing drawing, List<String> legend) {

    /** The fewest letters in which one can be drawn. */
    public static final int LEAST_COLUMNS = TimelineLayout.LEAST_COLUMNS;

    public TimelinePicture {
        legend = List.copyOf(legend);
    }

    /**
     * The picture.
     *
     * @param timeline that can be drawn
     * @param from the first part that is drawn, counted from 0
     * @param rows parts that are drawn at the most; the scale and the room are the same whichever these are
     * @param columns at least {@link #LEAST_COLUMNS}
     */
    public static TimelinePicture of(Timeline timeline, int from, int rows, int columns, Phrases phrases) {
        TimelineLayout layout = TimelineLayout.of(timeline, columns, phrases);
        TimelineWords words = new TimelineWords(phrases);
        int to = Math.min(layout.rows().size(), from + rows);
        List<Shape> shapes = new ArrayList<>();
        for (int row = from; row < to; row++) {
            shapes.addAll(row(layout, layout.rows().get(row), row - from, phrases));
        }
        for (Axis.Tick tick : layout.axis().ticks()) {
            shapes.add(label(layout.left() + tick.column(), to - from, "|" + tick.year(), Ink.FAINT));
        }
        Drawing drawing = new Drawing(shapes, words.told(timeline), OptionalDouble.of(1));
        return new TimelinePicture(drawing, words.legend(layout));
    }

    private static List<Shape> row(TimelineLayout layout, TimelineLayout.Row row, int at, Phrases phrases) {
        List<Shape> shapes = new ArrayList<>();
        int left = layout.left();
        row.there().forEach(there -> shapes.add(line(left + there.from(), left + there.to(), at, Ink.FAINT)));
        row.vague().forEach(vague -> shapes.add(line(left + vague.from(), left + vague.to(), at, Ink.MAIN)));
        shapes.add(label(0, at, row.name(), Ink.MAIN));
        if (TimelineLayout.showsBefore(row)) {
            shapes.add(label(left, at, phrases.say("timeline.mark.before"), Ink.FAINT));
        }
        row.signs().forEach(sign -> shapes.add(label(left + sign.column(), at, sign.text(), ink(sign.worst()))));
        shapes.add(
                label(layout.stateAt(), at, row.state(), ink(row.line().state().condition())));
        return shapes;
    }

    private static Ink ink(Optional<Condition> condition) {
        return condition.filter(known -> known.isWorseThan(Condition.WORN)).isPresent() ? Ink.CAUTION : Ink.STRONG;
    }

    private static Shape label(int column, int row, String text, Ink ink) {
        return new Shape.Label(new Spot(column, middle(row)), text, ink, Shape.Side.START);
    }

    private static Shape line(int from, int to, int row, Ink ink) {
        return new Shape.Line(new Spot(from, middle(row)), new Spot(to + 0.9, middle(row)), ink, false, false);
    }

    /** A row is two letters high, the upper edge of the first at 0. */
    private static double middle(int row) {
        return -2.0 * row - 1;
    }
}
