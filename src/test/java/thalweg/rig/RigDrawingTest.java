package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.fault.Sentence;
import thalweg.units.UnitSystem;

class RigDrawingTest {

    private static final RigDraft PAIR = Rigs.focused(
            List.of(PointDraft.of("A", -0.3, 0, 0), PointDraft.of("B", 0.3, 0.1, 0.05)),
            new Vector3(0, -0.6, 0),
            0.9,
            0,
            15);

    private static final RigDraft STACK =
            PAIR.withPoints(List.of(PointDraft.of("low bolt", 0, 0, 0), PointDraft.of("high bolt", 0.02, 0.4, 0)));

    private static final RigDraft SLUNG = PAIR.withPoints(List.of(
            PointDraft.of("beech", -0.3, 0, 0)
                    .slungWith(
                            PointKind.TREE, SlingDraft.of(SlingTie.BASKET, 0.2).withReach(0.3)),
            PointDraft.of("bolt", 0.3, 0.1, 0.05)));

    /** What is slung round is a line as long as it is wide, and its sides go from its ends to one place. */
    @Test
    void aTreeIsAsWideAsStatedAndItsSlingHasTwoSides() {
        Drawing drawing = RigDrawing.of(Rigs.answer(SLUNG), UnitSystem.METRIC, Sentence::toString);
        List<Shape.Line> lines = shapes(drawing, Shape.Line.class);
        Shape.Line width = lines.stream()
                .filter(line -> !line.arrow() && line.ink() == Ink.MAIN && Math.abs(length(line) - 0.2) < 1e-9)
                .findFirst()
                .orElseThrow();

        assertThat(lines).anyMatch(line -> line.from().equals(width.from()) && !line.equals(width));
        assertThat(lines).anyMatch(line -> line.from().equals(width.to()) && !line.equals(width));
        assertThat(drawing.description()).contains("Slung round, drawn as wide as stated: beech.");
    }

    @Test
    void aRedirectThatIsNearIsDrawnWithTheLoadBeyondItAndOneThatIsFarIsNot() {
        Drawing near = RigDrawing.of(
                Rigs.answer(PAIR.withRedirect(RedirectDraft.at(0.4, -1, 0))), UnitSystem.METRIC, Sentence::toString);
        Drawing far = RigDrawing.of(
                Rigs.answer(PAIR.withRedirect(RedirectDraft.at(4, -10, 0))), UnitSystem.METRIC, Sentence::toString);

        assertThat(arrows(near, Ink.STRONG)).hasSize(2);
        assertThat(arrows(far, Ink.STRONG)).hasSize(1);
        assertThat(shapes(near, Shape.Label.class))
                .anyMatch(label -> label.text().startsWith("redirect "));
        assertThat(far.description()).contains("The rope runs over redirect, which bears ");
    }

    static Stream<RigDraft> ordinary() {
        return Stream.of(
                PAIR,
                STACK,
                STACK.withRig(STACK.rig().withSlack(Map.of("high bolt", 0.1))),
                PAIR.withPoints(List.of(PointDraft.of("beech", 0.1, 0.2, 0))),
                PAIR.withPoints(List.of(
                        PointDraft.of("old piton", -0.4, 0, 0),
                        PointDraft.of("bolt", 0.02, 0.15, 0),
                        PointDraft.of("chockstone", 0.4, 0.05, 0))),
                PAIR.withPoints(List.of(
                        PointDraft.of("left bolt, old", -0.06, 0, 0),
                        PointDraft.of("new bolt", 0, 0.01, 0),
                        PointDraft.of("right bolt, old", 0.06, 0, 0))),
                PAIR.withRig(SetupDraft.of(RigKind.SLIDING, 0, -0.6, 0, 70)),
                PAIR.withRig(SetupDraft.of(RigKind.LOOP, 0, -0.6, 0, 70)),
                limited(0),
                limited(35),
                SLUNG,
                Rigs.pair(150),
                Rigs.pair(60).withLoad(LoadDraft.ofForce(1, 160, 0)));
    }

    private static <S extends Shape> List<S> shapes(Drawing drawing, Class<S> kind) {
        return drawing.shapes().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static List<Shape.Line> arrows(Drawing drawing, Ink ink) {
        return shapes(drawing, Shape.Line.class).stream()
                .filter(line -> line.arrow() && line.ink() == ink)
                .toList();
    }

    private static double length(Shape.Line line) {
        return Math.hypot(
                line.to().x() - line.from().x(), line.to().y() - line.from().y());
    }

    @ParameterizedTest
    @MethodSource("ordinary")
    void labelsDoNotOverlap(RigDraft draft) {
        assertNoLabelOverAnother(RigDrawing.of(Rigs.answer(draft), UnitSystem.METRIC, Sentence::toString));
    }

    private static void assertNoLabelOverAnother(Drawing drawing) {
        double extent = Math.max(drawing.right() - drawing.left(), drawing.top() - drawing.bottom());
        LabelRoom room = new LabelRoom(extent * 0.9, List.of(), List.of());
        List<Shape.Label> labels = shapes(drawing, Shape.Label.class);

        for (Shape.Label one : labels) {
            for (Shape.Label other : labels) {
                assertThat(one.equals(other) || !room.box(one).meets(room.box(other)))
                        .as("%s over %s", one, other)
                        .isTrue();
            }
        }
    }

    @Test
    void arrowsAreAsLongAsTheirForceToOneScale() {
        RigAnswer answer =
                Rigs.answer(PAIR.withPoints(List.of(PointDraft.of("A", -0.3, 0, 0), PointDraft.of("B", 0.3, 0.1, 0))));
        Drawing drawing = RigDrawing.of(answer, UnitSystem.METRIC, Sentence::toString);
        double metresPerKilonewton = length(arrows(drawing, Ink.STRONG).get(0)) / 0.9;

        List<Shape.Line> pulls = arrows(drawing, Ink.FORCE);

        assertThat(pulls).hasSize(2);
        for (int i = 0; i < 2; i++) {
            double force = answer.steady().points().get(i).force().inKilonewtons();
            assertThat(length(pulls.get(i))).isCloseTo(force * metresPerKilonewton, within(1e-9));
        }
    }

    @Test
    void aSlackLegIsDashedAndHasNoArrow() {
        Drawing drawing = RigDrawing.of(
                Rigs.answer(STACK.withRig(STACK.rig().withSlack(Map.of("high bolt", 0.1)))),
                UnitSystem.METRIC,
                Sentence::toString);

        assertThat(shapes(drawing, Shape.Line.class).stream().filter(Shape.Line::dashed))
                .hasSize(1);
        assertThat(arrows(drawing, Ink.FORCE)).hasSize(1);
        assertThat(shapes(drawing, Shape.Label.class))
                .extracting(Shape.Label::text)
                .contains("high bolt slack");
        assertThat(drawing.description()).contains("Hanging slack: high bolt leg.");
    }

    @Test
    void itNamesPointsForcesLoadAndAngleInTheUnitsOfTheReader() {
        RigAnswer answer = Rigs.answer(Rigs.pair(60).withLoad(LoadDraft.ofForce(0.9, 0, 0)));

        assertThat(shapes(RigDrawing.of(answer, UnitSystem.METRIC, Sentence::toString), Shape.Label.class))
                .extracting(Shape.Label::text)
                .containsExactlyInAnyOrder("A 0.52 kN", "B 0.52 kN", "load 0.90 kN", "60°");
        assertThat(shapes(RigDrawing.of(answer, UnitSystem.IMPERIAL, Sentence::toString), Shape.Label.class))
                .extracting(Shape.Label::text)
                .contains("A 117 lbf", "load 202 lbf");
    }

    private static RigDraft limited(double toward) {
        return PAIR.withLoad(LoadDraft.ofForce(0.9, toward, 15))
                .withRig(SetupDraft.of(RigKind.LIMITED, 0, -0.6, 0, 70).withLimits(LimitDraft.at(0.1, 0.15), 0.2));
    }

    private static List<Shape.Polygon> squares(Drawing drawing) {
        return shapes(drawing, Shape.Polygon.class).stream()
                .filter(mark -> mark.spots().get(0).x() == mark.spots().get(1).x())
                .toList();
    }

    @Test
    void limiterKnotsAreDrawnWhereTheyHangAndTheContactIsSaid() {
        RigAnswer off = Rigs.answer(limited(0));
        RigAnswer against = Rigs.answer(limited(35));
        Drawing drawing = RigDrawing.of(off, UnitSystem.METRIC, Sentence::toString);

        assertThat(squares(drawing)).hasSize(2);
        Shape.Polygon first = squares(drawing).get(0);
        Vector3 knot = off.steady().knots().get(0).at();
        assertThat((first.spots().get(0).x() + first.spots().get(2).x()) / 2).isCloseTo(knot.x(), within(1e-9));
        assertThat((first.spots().get(0).y() + first.spots().get(2).y()) / 2).isCloseTo(knot.y(), within(1e-9));
        assertThat(drawing.description()).endsWith("The master is off both limiter knots, which are drawn as squares.");
        assertThat(RigDrawing.of(against, UnitSystem.METRIC, Sentence::toString).description())
                .contains("The master rests against the limiter knot of B.");
        assertThat(squares(RigDrawing.of(off, off.losses().get(0), UnitSystem.METRIC, Sentence::toString)))
                .hasSize(1);
    }

    @Test
    void itSaysInWordsWhatItShows() {
        RigAnswer answer = Rigs.answer(Rigs.pair(60).withLoad(LoadDraft.ofForce(0.9, 0, 10)));

        assertThat(RigDrawing.of(answer, UnitSystem.METRIC, Sentence::toString).description())
                .isEqualTo("The anchor seen from the front under 0.90 kN straight down:"
                        + " A bears 0.52 kN (50 %), B bears 0.52 kN (50 %)."
                        + " The widest angle between loaded strands is 60°.");
        RigState last = answer.sector().directions().get(20);
        assertThat(RigDrawing.of(answer, last, UnitSystem.METRIC, Sentence::toString)
                        .description())
                .contains("10.0° from straight down to the right");
    }

    @Test
    void aLossIsDrawnBeforeAndAfter() {
        RigAnswer answer = Rigs.answer(PAIR);
        PointLoss loss = answer.losses().get(0);
        Drawing drawing = RigDrawing.of(answer, loss, UnitSystem.METRIC, Sentence::toString);

        List<Shape.Line> lines = shapes(drawing, Shape.Line.class);
        assertThat(lines.stream().filter(line -> line.dashed() && line.ink() == Ink.FAINT))
                .hasSize(2);
        assertThat(lines.stream().filter(line -> !line.dashed() && line.ink() == Ink.MAIN))
                .hasSize(1);
        assertThat(shapes(drawing, Shape.Label.class).stream().map(Shape.Label::text))
                .anyMatch("A lost"::equals)
                .anyMatch(text -> text.matches("B 0\\.90 kN, peak 1\\.\\d\\d kN"));
        assertThat(drawing.description())
                .contains("before A let go", "B bears 0.90 kN after a model peak of 1.", " m lower and ");
    }

    @Test
    void whereEverythingIsLostNothingIsDrawnButWhatWas() {
        RigDraft sliding =
                PAIR.withRig(SetupDraft.of(RigKind.SLIDING, 0, -0.6, 0, 70).withSliding(false, 0.2));
        RigAnswer answer = Rigs.answer(sliding);
        Drawing drawing = RigDrawing.of(answer, answer.losses().get(1), UnitSystem.METRIC, Sentence::toString);

        assertThat(shapes(drawing, Shape.Line.class))
                .noneMatch(Shape.Line::arrow)
                .allMatch(line -> line.ink() == Ink.FAINT);
        assertThat(shapes(drawing, Shape.Label.class))
                .extracting(Shape.Label::text)
                .containsExactlyInAnyOrder("A", "B lost");
        assertThat(drawing.description()).contains("Nothing holds the load any more.");
    }

    @ParameterizedTest
    @MethodSource("ordinary")
    void labelsOfALossDoNotOverlapEither(RigDraft draft) {
        RigAnswer answer = Rigs.answer(draft);
        for (PointLoss loss : answer.losses()) {
            assertNoLabelOverAnother(RigDrawing.of(answer, loss, UnitSystem.METRIC, Sentence::toString));
        }
    }
}
