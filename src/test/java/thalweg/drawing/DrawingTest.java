package thalweg.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class DrawingTest {

    private static final Shape LINE = new Shape.Line(new Spot(-1, 2), new Spot(3, -4), Ink.MAIN, false, true);
    private static final Shape LABEL = new Shape.Label(new Spot(5, 0), "12.0 kN", Ink.FORCE, Shape.Side.START);
    private static final Shape POLYGON =
            new Shape.Polygon(List.of(new Spot(0, 0), new Spot(1, 0), new Spot(0, 7)), Ink.FAINT, true);

    @Test
    void itsEdgesHoldEverySpotOfEveryShape() {
        Drawing drawing = new Drawing(List.of(LINE, LABEL, POLYGON), "an anchor");

        assertThat(drawing.left()).isEqualTo(-1);
        assertThat(drawing.right()).isEqualTo(5);
        assertThat(drawing.bottom()).isEqualTo(-4);
        assertThat(drawing.top()).isEqualTo(7);
    }

    @Test
    void eachKindOfShapeReachesItsOwnFunction() {
        assertThat(List.of(LINE, POLYGON, LABEL))
                .map(shape -> shape.<String>match(line -> "line", polygon -> "polygon", label -> "label"))
                .containsExactly("line", "polygon", "label");
        assertThat(Shape.class.getPermittedSubclasses()).hasSize(3);
    }

    @Test
    void anEmptyOrWordlessDrawingIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Drawing(List.of(), "nothing"));
        assertThatIllegalArgumentException().isThrownBy(() -> new Drawing(List.of(LINE), " "));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Shape.Polygon(List.of(new Spot(0, 0), new Spot(1, 1)), Ink.MAIN, false));
        assertThatIllegalArgumentException().isThrownBy(() -> new Spot(Double.NaN, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Spot(0, Double.POSITIVE_INFINITY));
    }

    @Test
    void onlySomeDrawingsAreLaidOutForLetters() {
        assertThat(new Drawing(List.of(LINE), "a line").letter()).isEmpty();
        assertThat(new Drawing(List.of(LINE), "a line", OptionalDouble.of(0.5)).letter())
                .hasValue(0.5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Drawing(List.of(LINE), "a line", OptionalDouble.of(0)));
    }

    @Test
    void theListsItWasGivenCanChangeWithoutChangingIt() {
        List<Shape> shapes = new ArrayList<>(List.of(LINE));
        Drawing drawing = new Drawing(shapes, "a line");

        shapes.add(LABEL);

        assertThat(drawing.shapes()).containsExactly(LINE);
    }
}
