package thalweg.sheet.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;

class SvgDrawingTest {

    private static final Spot LOW = new Spot(0, 0);

    private static final Spot HIGH = new Spot(0.4, 0.6);

    private static Shape.Line line(Ink ink, boolean dashed, boolean arrow) {
        return new Shape.Line(LOW, HIGH, ink, dashed, arrow);
    }

    private static Page svg(Shape... shapes) {
        return Page.of(SvgDrawing.write(new Drawing(Arrays.asList(shapes), "what it <says>"), "id", "a & b"));
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    @Test
    void thoseWhoDoNotSeeItHearTitleAndDescription() {
        Page page = svg(line(Ink.MAIN, false, false));
        Element svg = page.elements("svg").get(0);

        assertThat(svg.getAttribute("role")).isEqualTo("img");
        assertThat(svg.getAttribute("aria-labelledby")).isEqualTo("id-title id-desc");
        assertThat(page.elements("title").get(0).getTextContent()).isEqualTo("a & b");
        assertThat(page.elements("desc").get(0).getTextContent()).isEqualTo("what it <says>");
    }

    @Test
    void upIsUp() {
        Element line = svg(line(Ink.MAIN, false, false)).elements("line").get(0);

        assertThat(number(line, "y2")).isLessThan(number(line, "y1"));
        assertThat(number(line, "x2")).isGreaterThan(number(line, "x1"));
    }

    @Test
    void bothDirectionsHaveTheSameScale() {
        Element line = svg(line(Ink.MAIN, false, false)).elements("line").get(0);
        double across = number(line, "x2") - number(line, "x1");
        double up = number(line, "y1") - number(line, "y2");

        assertThat(up / across).isCloseTo(0.6 / 0.4, within(0.01));
    }

    @ParameterizedTest
    @EnumSource(Ink.class)
    void everyInkIsToldByWidthOrBreakingFromEveryOther(Ink ink) {
        String mine = stroke(ink);

        assertThat(Arrays.stream(Ink.values()).filter(other -> other != ink).map(SvgDrawingTest::stroke))
                .doesNotContain(mine);
    }

    private static String stroke(Ink ink) {
        Element line = svg(line(ink, false, false)).elements("g").get(0);
        return line.getAttribute("stroke-width") + " " + line.getAttribute("stroke-dasharray");
    }

    @Test
    void aSlackStrandIsBroken() {
        assertThat(svg(line(Ink.MAIN, true, false)).elements("g").get(0).hasAttribute("stroke-dasharray"))
                .isTrue();
        assertThat(svg(line(Ink.MAIN, false, false)).elements("g").get(0).hasAttribute("stroke-dasharray"))
                .isFalse();
    }

    @Test
    void anArrowEndsInAHeadThatPointsAtItsEnd() {
        Page page = svg(line(Ink.FORCE, false, true));
        Element plain = svg(line(Ink.FORCE, false, false)).elements("line").get(0);

        String tip = page.elements("polygon").get(0).getAttribute("points").split(" ", -1)[0];

        assertThat(tip).isEqualTo(plain.getAttribute("x2") + "," + plain.getAttribute("y2"));
        assertThat(svg(line(Ink.FORCE, false, false)).elements("polygon")).isEmpty();
    }

    @Test
    void anArrowOfNoLengthIsDrawnWithoutAHead() {
        Page page = svg(
                new Shape.Line(LOW, LOW, Ink.FORCE, false, true), new Shape.Line(LOW, HIGH, Ink.FAINT, false, false));

        assertThat(page.elements("polygon")).isEmpty();
        assertThat(page.elements("line")).hasSize(2);
    }

    @Test
    void aSinglePlaceIsADrawingToo() {
        Element svg = svg(new Shape.Label(LOW, "here", Ink.MAIN, Shape.Side.MIDDLE))
                .elements("svg")
                .get(0);

        assertThat(number(svg, "width")).isPositive();
    }

    @ParameterizedTest
    @EnumSource(Shape.Side.class)
    void aLongLabelStaysInsideThePicture(Shape.Side side) {
        String text = "a label of many words that goes on";
        Page page = svg(
                line(Ink.MAIN, false, false),
                new Shape.Label(LOW, text, Ink.MAIN, side),
                new Shape.Label(HIGH, text, Ink.MAIN, side));
        String[] box = page.elements("svg").get(0).getAttribute("viewBox").split(" ", -1);
        double left = Double.parseDouble(box[0]);
        double right = left + Double.parseDouble(box[2]);
        // Half the height of a letter is its least width in any common sans-serif.
        double width = text.length() * SvgFrame.LETTER_HEIGHT * 0.5;

        assertThat(page.elements("text")).allSatisfy(label -> {
            double start = number(label, "x")
                    - switch (side) {
                        case START -> 0;
                        case MIDDLE -> width / 2;
                        case END -> width;
                    };
            assertThat(start).isGreaterThanOrEqualTo(left);
            assertThat(start + width).isLessThanOrEqualTo(right);
        });
    }

    @Test
    void aDrawingWithShortLabelsFitsASmallPhoneWithoutShrinkingLetters() {
        Page page = svg(line(Ink.MAIN, false, false), new Shape.Label(HIGH, "0.47 kN", Ink.MAIN, Shape.Side.START));

        assertThat(Double.parseDouble(
                        page.elements("svg").get(0).getAttribute("viewBox").split(" ", -1)[2]))
                .isLessThanOrEqualTo(328);
    }

    @Test
    void aLabelIsTextWhateverItSays() {
        String hostile = "</text><script>alert(1)</script> & \"q\" \u202E\u0000";
        Page page = svg(line(Ink.MAIN, false, false), new Shape.Label(LOW, hostile, Ink.MAIN, Shape.Side.START));

        assertThat(page.elements("text").get(0).getTextContent())
                .isEqualTo("</text><script>alert(1)</script> & \"q\" \uFFFD\uFFFD");
    }

    @Test
    void filledAndHollowShapesDiffer() {
        List<Spot> corners = List.of(LOW, HIGH, new Spot(1, 0));

        assertThat(svg(new Shape.Polygon(corners, Ink.MAIN, true)).values("fill"))
                .contains("currentColor");
        assertThat(svg(new Shape.Polygon(corners, Ink.MAIN, false)).values("fill"))
                .doesNotContain("currentColor");
    }
}
