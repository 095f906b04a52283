package thalweg.tui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Cell;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Style;

/** Pictures in cells. */
class DrawingViewTest {

    private static Shape line(double fromX, double fromY, double toX, double toY) {
        return new Shape.Line(new Spot(fromX, fromY), new Spot(toX, toY), Ink.MAIN, false, false);
    }

    private static Shape label(double x, double y, String text, Shape.Side side) {
        return new Shape.Label(new Spot(x, y), text, Ink.STRONG, side);
    }

    private static final Drawing ANCHOR = new Drawing(
            List.of(
                    line(0, 4, 2, 0),
                    line(4, 4, 2, 0),
                    label(0, 4, "bolt", Shape.Side.END),
                    label(4, 4, "tree", Shape.Side.START)),
            "two strands to one point");

    private static Canvas drawn(Drawing drawing, Glyphs glyphs, int rows, int columns) {
        Canvas canvas = Canvas.of(rows, columns);
        DrawingView.draw(canvas, drawing, glyphs);
        return canvas;
    }

    @Test
    void strokesLeanInAscii() {
        assertThat(drawn(ANCHOR, Glyphs.ASCII, 7, 30).text()).isEqualTo("""

                      bolt\\         /tree
                           \\       /
                            \\     /
                             \\   /
                              \\ /
                               +
                """);
    }

    @ParameterizedTest
    @EnumSource(Glyphs.class)
    void bothScalesAreAlike(Glyphs glyphs) {
        Drawing square = new Drawing(
                List.of(new Shape.Polygon(
                        List.of(new Spot(0, 0), new Spot(1, 0), new Spot(1, 1), new Spot(0, 1)), Ink.MAIN, false)),
                "a square");
        Canvas canvas = drawn(square, glyphs, 12, 60);
        int high = 0;
        int wide = 0;
        for (int row = 0; row < canvas.rows(); row++) {
            String text = canvas.row(row);
            high += text.isBlank() ? 0 : 1;
            wide = Math.max(
                    wide, text.length() - (text.length() - text.stripLeading().length()));
        }

        assertThat(wide).isBetween(2 * high - 3, 2 * high + 1);
    }

    @Test
    void aFilledOutlineIsInkedInside() {
        Drawing bar = new Drawing(
                List.of(new Shape.Polygon(
                        List.of(new Spot(0, 0), new Spot(4, 0), new Spot(4, 2), new Spot(0, 2)), Ink.MAIN, true)),
                "a bar");

        assertThat(drawn(bar, Glyphs.BLOCKS, 6, 20).text()).contains("████████████");
        assertThat(drawn(bar, Glyphs.ASCII, 6, 20).text()).contains("###").contains("---");
    }

    @Test
    void anArrowHasAHeadInItsOwnStyle() {
        Drawing plain = new Drawing(List.of(line(0, 2, 0, 0)), "a line");
        Drawing arrow =
                new Drawing(List.of(new Shape.Line(new Spot(0, 2), new Spot(0, 0), Ink.FORCE, false, true)), "a force");

        assertThat(inked(drawn(arrow, Glyphs.BRAILLE, 9, 20), Style.KEY))
                .isGreaterThan(inked(drawn(plain, Glyphs.BRAILLE, 9, 20), Style.NORMAL));
    }

    /** How many cells hold a sign in that style. */
    private static int inked(Canvas canvas, Style style) {
        int inked = 0;
        for (int row = 0; row < canvas.rows(); row++) {
            for (int column = 0; column < canvas.columns(); column++) {
                Cell cell = canvas.cell(row, column);
                inked += !cell.text().isBlank() && cell.style() == style ? 1 : 0;
            }
        }
        return inked;
    }

    @Test
    void aDashedStrokeHasGaps() {
        Drawing dashed = new Drawing(
                List.of(new Shape.Line(new Spot(0, 0), new Spot(9, 0), Ink.MAIN, true, false)), "a slack strand");

        assertThat(drawn(dashed, Glyphs.ASCII, 5, 40).text().strip()).contains("---   ---");
    }

    @Test
    void labelsThatWouldCrossStandAboveOneAnother() {
        Drawing crowd = new Drawing(
                List.of(
                        line(0, 0, 10, 0),
                        label(5, 0, "12.0 kN", Shape.Side.MIDDLE),
                        label(5.2, 0, "3.45 kN", Shape.Side.MIDDLE),
                        label(4.8, 0, "890 N", Shape.Side.MIDDLE)),
                "three figures at one place");
        Canvas canvas = Canvas.of(9, 40);

        List<String> left = DrawingView.draw(canvas, crowd, Glyphs.ASCII);

        assertThat(left).isEmpty();
        assertThat(canvas.text()).contains("12.0 kN").contains("3.45 kN").contains("890 N");
    }

    @Test
    void labelsWithoutRoomAreHandedBackWhole() {
        List<Shape> shapes = new ArrayList<>(List.of(line(0, 0, 1, 0)));
        for (int i = 0; i < 10; i++) {
            shapes.add(label(0.5, 0, "point " + i, Shape.Side.MIDDLE));
        }
        Canvas canvas = Canvas.of(11, 40);

        List<String> left = DrawingView.draw(canvas, new Drawing(shapes, "ten at one place"), Glyphs.ASCII);

        assertThat(left).containsExactly("point 7", "point 8", "point 9");
        assertThat(canvas.text()).contains("point 0", "point 1", "point 2", "point 3", "point 4", "point 5", "point 6");
    }

    @Test
    void aLabelThatIsWiderThanThePictureIsHandedBackAndNotCut() {
        Drawing wide = new Drawing(
                List.of(line(0, 0, 1, 1), label(0, 0, "12.0 kN on the bolt to the left", Shape.Side.START)), "wide");
        Canvas canvas = Canvas.of(5, 20);

        assertThat(DrawingView.draw(canvas, wide, Glyphs.ASCII)).containsExactly("12.0 kN on the bolt to the left");
        assertThat(canvas.text()).doesNotContain("12");
    }

    @Test
    void whereThereIsNoRoomAtAllEveryLabelIsHandedBack() {
        assertThat(DrawingView.draw(Canvas.of(2, 80), ANCHOR, Glyphs.BRAILLE)).containsExactly("bolt", "tree");
    }

    @ParameterizedTest
    @EnumSource(Glyphs.class)
    void everySizeIsDrawnAlsoOfOneSpotOnly(Glyphs glyphs) {
        Drawing spot = new Drawing(List.of(line(3, 3, 3, 3), label(3, 3, "漢字", Shape.Side.MIDDLE)), "a spot");
        for (int rows = 0; rows < 20; rows++) {
            for (int columns = 0; columns < 40; columns += 3) {
                assertThat(drawn(ANCHOR, glyphs, rows, columns).rows()).isEqualTo(rows);
                assertThat(drawn(spot, glyphs, rows, columns).rows()).isEqualTo(rows);
            }
        }
    }

    @Test
    void asciiMeansAscii() {
        assertThat(drawn(ANCHOR, Glyphs.ASCII, 20, 60).text()).matches("\\p{ASCII}*");
    }
}
