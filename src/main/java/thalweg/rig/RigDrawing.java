package thalweg.rig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;
import thalweg.fault.Sentence;
import thalweg.units.UnitSystem;

/**
 * The picture of an anchor, seen from the front, in metres: points, strands, limiter knots, the master, the focus as a small
 * cross, the load, and the pull on each point as an arrow along its strand. All arrows have one scale.
 */
public final class RigDrawing {

    /** The arrow of the load is this part of the anchor's extent, unless that makes another arrow leave its strand. */
    private static final double LOAD_ARROW = 0.45;

    /** No pull is drawn longer than this part of the way to where it comes from. */
    private static final double LONGEST_PULL = 0.85;

    /** A redirect that is so many times the anchor's extent away from its master is left out of the picture. */
    private static final double MOST_REDIRECT = 2.5;

    private static final double MARK = 0.018;
    private static final double KNOT = 0.016;
    private static final int LONGEST_NAME = 16;

    private final RigAnswer answer;
    private final RigState state;

    /** The loss after which the state is; empty where every point holds. */
    private final Optional<PointLoss> loss;

    private final UnitSystem units;
    private final Function<Sentence, String> speech;
    private final double extent;

    private RigDrawing(
            RigAnswer answer,
            RigState state,
            Optional<PointLoss> loss,
            UnitSystem units,
            Function<Sentence, String> speech) {
        this.speech = speech;
        this.answer = answer;
        this.state = state;
        this.loss = loss;
        this.units = units;
        this.extent = extent();
    }

    /** The anchor under a load at the aim. */
    public static Drawing of(RigAnswer answer, UnitSystem units, Function<Sentence, String> speech) {
        return of(answer, answer.steady(), units, speech);
    }

    /**
     * The anchor under a load in another direction.
     *
     * @param state one of the answer's, such as a direction of its sector
     */
    public static Drawing of(RigAnswer answer, RigState state, UnitSystem units, Function<Sentence, String> speech) {
        return new RigDrawing(answer, state, Optional.empty(), units, speech).drawing();
    }

    /**
     * The anchor before and after the loss of a point: faint as it hung, and as it comes to rest. Where everything is
     * lost, there is only the faint one.
     *
     * @param loss one of the answer's
     */
    public static Drawing of(RigAnswer answer, PointLoss loss, UnitSystem units, Function<Sentence, String> speech) {
        RigState state = loss.aftermath().map(Aftermath::rest).orElse(answer.steady());
        return new RigDrawing(answer, state, Optional.of(loss), units, speech).drawing();
    }

    private Drawing drawing() {
        boolean held = loss.isEmpty() || loss.get().held();
        List<Shape.Line> before = loss.isEmpty() ? List.of() : strands(answer.steady(), true);
        List<Shape.Line> strands = held ? strands(state, false) : List.of();
        List<Shape.Line> arrows = new ArrayList<>();
        double scale = metresPerKilonewton();
        for (int i = 0; i < state.points().size(); i++) {
            if (held && borne(i)) {
                Vector3 at = answer.input().points().get(i).at();
                Vector3 pull = state.points().get(i).pull().times(scale);
                arrows.add(new Shape.Line(spot(at), spot(at.plus(pull)), Ink.FORCE, false, true));
            }
        }
        Shape.Line load = load(scale);
        List<Spot> marks = new ArrayList<>();
        answer.input().points().forEach(point -> marks.add(spot(point.at())));
        marks.add(spot(state.master()));

        List<Shape> shapes = new ArrayList<>(cross(answer.input().rig().focus()));
        shapes.addAll(widths());
        shapes.addAll(before);
        shapes.addAll(strands);
        shapes.addAll(arrows);
        for (int i = 0; i < state.points().size(); i++) {
            shapes.add(diamond(marks.get(i), lost(i) ? Ink.CAUTION : Ink.MAIN, !lost(i)));
        }
        List<Shape.Line> strokes = new ArrayList<>(before);
        strokes.addAll(strands);
        if (held) {
            state.knots().forEach(knot -> shapes.add(square(spot(knot.at()))));
            shapes.add(load);
            shapes.add(diamond(spot(state.master()), Ink.STRONG, true));
            strokes.add(load);
            List<Shape.Line> rope = overRedirect(load);
            shapes.addAll(rope);
            strokes.addAll(rope);
        }
        shapes.addAll(labels(strokes, marks, held ? Optional.of(load) : Optional.empty()));
        Sentence words = loss.map(lost -> DescribeRig.of(answer, lost, units))
                .orElseGet(() -> DescribeRig.of(answer, state, units));
        return new Drawing(shapes, speech.apply(words));
    }

    /** The redirect, where it is near enough to be in the picture. */
    private Optional<RigRedirect> redirect() {
        return answer.input()
                .redirect()
                .filter(over -> over.at().distance(state.master()) < MOST_REDIRECT * anchorExtent());
    }

    /** The rope on from the pull's arrow to the redirect, and how the load pulls from there. */
    private List<Shape.Line> overRedirect(Shape.Line pull) {
        return redirect()
                .map(over -> {
                    RigLoad beyond = over.beyond();
                    double arrow = Math.hypot(
                            pull.to().x() - pull.from().x(),
                            pull.to().y() - pull.from().y());
                    Vector3 way = beyond.direction(beyond.toward()).times(arrow);
                    return List.of(
                            new Shape.Line(spot(state.master()), spot(over.at()), Ink.STRONG, true, false),
                            new Shape.Line(spot(over.at()), spot(over.at().plus(way)), Ink.STRONG, false, true));
                })
                .orElse(List.of());
    }

    /** What is slung round, as wide as it is where the sling leaves it. */
    private List<Shape> widths() {
        return SlingNodes.of(answer.input()).slung().stream()
                .flatMap(slung -> slung.stream())
                .map(Slung::sides)
                .filter(sides -> sides.size() > 1)
                .map(sides -> (Shape) new Shape.Line(spot(sides.get(0)), spot(sides.get(1)), Ink.MAIN, false, false))
                .toList();
    }

    private boolean lost(int point) {
        return loss.filter(lost ->
                        lost.point().equals(answer.input().points().get(point).name()))
                .isPresent();
    }

    private static List<Shape.Line> strands(RigState state, boolean faint) {
        List<Shape.Line> lines = new ArrayList<>();
        for (StrandPull strand : state.strands()) {
            List<Vector3> path = strand.path();
            int stretches = strand.closed() ? path.size() : path.size() - 1;
            for (int j = 0; j < stretches; j++) {
                Spot from = spot(path.get(j));
                Spot to = spot(path.get((j + 1) % path.size()));
                lines.add(new Shape.Line(from, to, faint ? Ink.FAINT : Ink.MAIN, faint || !strand.loaded(), false));
            }
        }
        return lines;
    }

    private Shape.Line load(double scale) {
        Vector3 pull = answer.input()
                .load()
                .direction(state.direction())
                .times(scale * answer.input().load().weight().inKilonewtons());
        return new Shape.Line(spot(state.master()), spot(state.master().plus(pull)), Ink.STRONG, false, true);
    }

    private List<Shape.Label> labels(List<Shape.Line> strokes, List<Spot> marks, Optional<Shape.Line> load) {
        LabelRoom room = new LabelRoom(Math.max(extent, span(strokes)), strokes, marks);
        List<Integer> fromTheTop = new ArrayList<>();
        for (int i = 0; i < state.points().size(); i++) {
            fromTheTop.add(i);
        }
        fromTheTop.sort(Comparator.comparingDouble(i -> -marks.get(i).y()));
        for (int i : fromTheTop) {
            String name = shortened(state.points().get(i).point());
            room.beside(marks.get(i), name + bears(i), lost(i) ? Ink.CAUTION : Ink.MAIN, false);
        }
        load.ifPresent(arrow -> {
            room.past(
                    arrow.to(),
                    arrow.to().y() - arrow.from().y(),
                    speech.apply(Sentence.of(
                            "load {0}", answer.input().load().weight().print(units))),
                    Ink.STRONG);
            state.angle().ifPresent(angle -> room.beside(spot(state.master()), angle.print(), Ink.MAIN, true));
            redirect()
                    .ifPresent(over ->
                            room.beside(spot(over.at()), shortened(over.name()) + onRedirect(), Ink.MAIN, true));
        });
        return room.labels();
    }

    private String onRedirect() {
        return answer.redirect()
                .map(figures -> " " + figures.force().print(units))
                .orElse("");
    }

    /** What a point bears, with a space before it; after a loss its peak as well. */
    private String bears(int point) {
        if (lost(point)) {
            return speech.apply(Sentence.of(" lost"));
        }
        if (loss.isPresent() && !loss.get().held()) {
            return "";
        }
        PointForce bears = state.points().get(point);
        String force = borne(point) ? bears.force().print(units) : speech.apply(Sentence.of("slack"));
        return loss.flatMap(PointLoss::aftermath)
                .flatMap(Aftermath::peaks)
                .flatMap(peaks -> peaks.on(bears.point()))
                .map(peak -> speech.apply(Sentence.of(" {0}, peak {1}", force, peak.print(units))))
                .orElse(" " + force);
    }

    private boolean borne(int point) {
        return state.points().get(point).force().newtons()
                >= Analyze.LOADED * answer.input().load().weight().newtons();
    }

    private double metresPerKilonewton() {
        double scale = LOAD_ARROW * extent / answer.input().load().weight().inKilonewtons();
        for (int i = 0; i < state.points().size(); i++) {
            if (borne(i)) {
                double way = answer.input().points().get(i).at().distance(state.master());
                scale = Math.min(
                        scale, LONGEST_PULL * way / state.points().get(i).pull().length());
            }
        }
        return scale;
    }

    private double extent() {
        return extent(redirect().map(over -> List.of(over.at())).orElse(List.of()));
    }

    private double anchorExtent() {
        return extent(List.of());
    }

    private double extent(List<Vector3> besides) {
        List<Vector3> places = new ArrayList<>(besides);
        answer.input().points().forEach(point -> places.add(point.at()));
        SlingNodes.of(answer.input()).slung().forEach(slung -> slung.ifPresent(lies -> places.addAll(lies.sides())));
        places.add(state.master());
        places.add(answer.steady().master());
        places.add(answer.input().rig().focus());
        double width = spread(places.stream().mapToDouble(Vector3::x).toArray());
        double height = spread(places.stream().mapToDouble(Vector3::y).toArray());
        double depth = spread(places.stream().mapToDouble(Vector3::z).toArray());
        return Math.max(width, Math.max(height, depth));
    }

    private static double span(List<Shape.Line> strokes) {
        double[] xs = strokes.stream()
                .flatMap(stroke -> stroke.spots().stream())
                .mapToDouble(Spot::x)
                .toArray();
        double[] ys = strokes.stream()
                .flatMap(stroke -> stroke.spots().stream())
                .mapToDouble(Spot::y)
                .toArray();
        return Math.max(spread(xs), spread(ys));
    }

    private static double spread(double[] numbers) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double number : numbers) {
            least = Math.min(least, number);
            most = Math.max(most, number);
        }
        return most - least;
    }

    private List<Shape> cross(Vector3 focus) {
        double arm = 2 * MARK * extent;
        Spot left = new Spot(focus.x() - arm, focus.y());
        Spot right = new Spot(focus.x() + arm, focus.y());
        Spot below = new Spot(focus.x(), focus.y() - arm);
        Spot above = new Spot(focus.x(), focus.y() + arm);
        return List.of(
                new Shape.Line(left, right, Ink.FAINT, false, false),
                new Shape.Line(below, above, Ink.FAINT, false, false));
    }

    /** A limiter knot; where the master rests against it, the master's own mark lies over it. */
    private Shape square(Spot middle) {
        double arm = KNOT * extent;
        return new Shape.Polygon(
                List.of(
                        new Spot(middle.x() - arm, middle.y() - arm),
                        new Spot(middle.x() - arm, middle.y() + arm),
                        new Spot(middle.x() + arm, middle.y() + arm),
                        new Spot(middle.x() + arm, middle.y() - arm)),
                Ink.MAIN,
                true);
    }

    private Shape diamond(Spot middle, Ink ink, boolean filled) {
        double arm = MARK * extent;
        return new Shape.Polygon(
                List.of(
                        new Spot(middle.x() - arm, middle.y()),
                        new Spot(middle.x(), middle.y() + arm),
                        new Spot(middle.x() + arm, middle.y()),
                        new Spot(middle.x(), middle.y() - arm)),
                ink,
                filled);
    }

    private static Spot spot(Vector3 place) {
        return new Spot(place.x(), place.y());
    }

    private static String shortened(String name) {
        int letters = name.codePointCount(0, name.length());
        return letters <= LONGEST_NAME ? name : name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME - 1)) + "…";
    }
}
