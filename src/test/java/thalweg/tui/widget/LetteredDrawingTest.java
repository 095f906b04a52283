package thalweg.tui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Glyphs;

/** Pictures that were laid out in letters stand in cells exactly as they were laid. */
class LetteredDrawingTest {

    private static Shape.Line line(double fromX, double fromY, double toX, double toY, Ink ink, boolean arrow) {
        return new Shape.Line(new Spot(fromX, fromY), new Spot(toX, toY), ink, false, arrow);
    }

    private static Shape.Polygon polygon(double x, double y, double width, Ink ink, boolean filled) {
        return new Shape.Polygon(
                List.of(new Spot(x, y), new Spot(x + width, y), new Spot(x + width / 2, y - 0.8)), ink, filled);
    }

    private static final Drawing STEP = new Drawing(
            List.of(
                    line(2.5, -2, 2.5, -6.9, Ink.FAINT, false),
                    line(0.5, -7, 9.5, -7, Ink.MAIN, false),
                    line(9.5, -7, 9.5, -11, Ink.STRONG, false),
                    line(5.5, -7, 8.4, -4.1, Ink.MAIN, true),
                    polygon(2, -7, 1, Ink.MAIN, true),
                    polygon(4, -7, 1, Ink.CAUTION, true),
                    polygon(5, -7, 3, Ink.MAIN, false),
                    new Shape.Label(new Spot(2, -1), "1 drop", Ink.MAIN, Shape.Side.START)),
            "a step",
            OptionalDouble.of(1));

    @Test
    void aLetterIsACellAndSignsStandForSmallShapes() {
        Canvas canvas = Canvas.of(6, 12);

        assertThat(DrawingView.draw(canvas, STEP, Glyphs.ASCII)).isEmpty();
        assertThat(canvas.text()).isEqualTo("""
              1 drop
              :
              :    //
            --o-A===-+
                     |
                     |
            """);
    }

    @Test
    void whatIsOnlyForOrientationIsDottedSoThatItIsToldWithoutColour() {
        Canvas canvas = Canvas.of(6, 12);
        DrawingView.draw(canvas, STEP, Glyphs.BRAILLE);

        int led = Integer.bitCount(canvas.cell(1, 2).text().codePointAt(0) - 0x2800);
        int fallen = Integer.bitCount(canvas.cell(4, 9).text().codePointAt(0) - 0x2800);

        assertThat(led).isEqualTo(2);
        assertThat(fallen).isEqualTo(4);
    }

    @Test
    void aSmallerCanvasCutsItOff() {
        Canvas canvas = Canvas.of(4, 10);
        DrawingView.draw(canvas, STEP, Glyphs.ASCII);

        assertThat(canvas.row(0)).isEqualTo("  1 drop");
        assertThat(canvas.row(3)).startsWith("--o-A");
    }
}
