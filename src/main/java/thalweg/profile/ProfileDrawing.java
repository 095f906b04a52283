package thalweg.profile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;
import thalweg.units.UnitSystem;

/** Draws a part of a profile in some room, with the number of each place, scales, and marks for what is unknown. */
public final class ProfileDrawing {

    private final Profile profile;
    private final Window window;
    private final ProfileWords words;
    private final UnitSystem units;
    private final int chosen;
    private final List<Stop> stops;
    private final List<List<String>> texts;
    private final List<Stretch> path;
    private final Layout layout;
    private final Frame frame;

    private ProfileDrawing(ProfileDrawing roomy, int without) {
        this.profile = roomy.profile;
        this.window = roomy.window;
        this.words = roomy.words;
        this.units = roomy.units;
        this.chosen = roomy.chosen;
        this.stops = roomy.stops;
        this.texts = roomy.texts;
        this.path = roomy.path;
        this.layout = roomy.layout.without(without);
        this.frame = layout.frame();
    }

    private ProfileDrawing(Profile profile, Window window, Room room, Optional<Integer> chosen, ProfileWords words) {
        this.profile = profile;
        this.window = window;
        this.words = words;
        this.units = words.units();
        this.stops = profile.stops().stream()
                .filter(stop -> window.holds(stop.along()))
                .toList();
        this.chosen =
                chosen.map(index -> stops.indexOf(profile.stops().get(index))).orElse(-1);
        this.texts = stops.stream().map(words.captions()::of).toList();
        this.path = profile.path().stream()
                .flatMap(stretch -> stretch.within(window).stream())
                .toList();
        double top = downs().min().orElse(0);
        double depth = downs().max().orElse(0) - top;
        this.layout = Layout.of(profile.spacing() == Spacing.TO_SCALE, window, top, depth, room, units);
        this.frame = layout.frame();
    }

    /**
     * The picture.
     *
     * @param profile that can be drawn
     * @param window of it that is drawn
     * @param room that is enough; the picture takes all its columns and as many rows as it needs
     * @param chosen the place that is marked, counted from 0, if any; inside the window
     * @param words in which it is told
     */
    public static ProfilePicture of(
            Profile profile, Window window, Room room, Optional<Integer> chosen, ProfileWords words) {
        if (!profile.canBeDrawn() || !room.isEnough()) {
            throw new IllegalArgumentException("a profile is drawn where there is something to draw and room for it");
        }
        ProfileDrawing roomy = new ProfileDrawing(profile, window, room, chosen, words);
        return new ProfileDrawing(roomy, roomy.freeRows()).picture();
    }

    private DoubleStream downs() {
        return Stream.concat(
                        path.stream().flatMap(stretch -> Stream.of(stretch.fromDown(), stretch.toDown())),
                        stops.stream().map(Stop::lip))
                .mapToDouble(Double::doubleValue);
    }

    /** Everything on the picture but the scales. */
    private record Content(
            List<Labels.Site> sites, List<Shape> line, List<Shape> marks, List<Shape.Label> signs, Labels labels) {}

    private Content content() {
        List<Shape> marks = new ArrayList<>();
        List<Labels.Site> sites = new ArrayList<>();
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            double next = i + 1 < stops.size() ? stops.get(i + 1).along() : window.to();
            List<Shape> its = new Marks(frame)
                    .of(stop, (next - stop.along()) * frame.scale().along());
            marks.addAll(its);
            sites.add(site(stop, its));
        }
        List<Shape> line = path.stream().map(this::stroke).toList();
        Cells cells = new Cells(frame.lastRow() + 1, frame.firstColumn(), frame.columns());
        line.forEach(cells::draw);
        marks.forEach(cells::draw);
        Labels labels = new Labels(words.captions(), sites, texts, chosen, cells);
        List<Shape.Label> signs = new ArrayList<>();
        if (chosen >= 0) {
            pointer(labels, sites.get(chosen)).ifPresent(signs::add);
        }
        labels.number();
        signs.addAll(unknowns(labels));
        labels.lengthen();
        return new Content(sites, line, marks, signs, labels);
    }

    /** How many rows at the top hold nothing. */
    private int freeRows() {
        Content content = content();
        int marks = content.marks().stream()
                .flatMap(shape -> shape.spots().stream())
                .mapToInt(spot -> Frame.row(spot.y()))
                .min()
                .orElse(frame.sky());
        int labels =
                content.labels().placed().stream().mapToInt(Placed::row).min().orElse(frame.sky());
        return Math.max(0, Math.min(frame.sky(), Math.min(marks, labels)));
    }

    private ProfilePicture picture() {
        Content content = content();
        List<Shape> shapes = new ArrayList<>();
        profile.known()
                .flatMap(window::and)
                .ifPresent(known -> shapes.addAll(new Ticks(units).distances(frame, known)));
        shapes.addAll(new Ticks(units).heights(frame, layout.heights()));
        List<Placed> placed = content.labels().placed();
        placed.stream()
                .filter(label -> label.side() != Placed.Side.BESIDE)
                .forEach(label -> shapes.add(lead(label, content.sites())));
        shapes.addAll(content.line());
        shapes.addAll(content.marks());
        shapes.addAll(content.signs());
        placed.forEach(label -> shapes.add(label(label)));
        List<Stop> unnumbered = content.labels().unnumbered();
        String description = words.description(profile, times(), unnumbered);
        Drawing drawing = new Drawing(List.copyOf(shapes), description, OptionalDouble.of(1));
        return new ProfilePicture(
                drawing,
                words.caption(profile, times(), stops, unnumbered),
                words.brief(profile, times(), unnumbered),
                content.sites().stream()
                        .map(site -> new ProfilePicture.Where(site.stop().number() - 1, site.column()))
                        .toList());
    }

    /** How many times as large heights are drawn as distances, where both are to scale and something goes down. */
    private OptionalDouble times() {
        boolean both =
                profile.spacing() == Spacing.TO_SCALE && !layout.heights().isEmpty();
        return both ? OptionalDouble.of(frame.scale().down() / frame.scale().along()) : OptionalDouble.empty();
    }

    private Shape stroke(Stretch stretch) {
        return new Shape.Line(
                frame.spot(stretch.fromAlong(), stretch.fromDown()),
                frame.spot(stretch.toAlong(), stretch.toDown()),
                stretch.fall() ? Ink.STRONG : Ink.MAIN,
                !stretch.known(),
                false);
    }

    /** Only marks in the column of the place are in the way of a stroke to it. */
    private Labels.Site site(Stop stop, List<Shape> marks) {
        double lip = frame.y(stop.lip());
        double foot = frame.y(stop.foot());
        double x = frame.x(stop.along());
        double[] near = marks.stream()
                .flatMap(shape -> shape.spots().stream())
                .filter(spot -> Math.abs(spot.x() - x) < Marks.HALF_WIDTH)
                .mapToDouble(Spot::y)
                .toArray();
        double highest = Math.max(lip, Arrays.stream(near).max().orElse(lip));
        double lowest = Math.min(foot, Arrays.stream(near).min().orElse(foot));
        return new Labels.Site(
                stop,
                frame.column(stop.along()),
                Frame.row(highest) - 1,
                Frame.row(lowest) + 1,
                Frame.row(lip),
                Frame.row(foot));
    }

    /** Points at the chosen place from below, or from above where the line leaves no cell below. */
    private Optional<Shape.Label> pointer(Labels labels, Labels.Site site) {
        return IntStream.rangeClosed(site.rowBelow(), frame.lastRow())
                .mapToObj(row -> sign(labels, row, site.column(), "^", Ink.STRONG))
                .flatMap(Optional::stream)
                .findFirst()
                .or(() -> IntStream.iterate(site.rowAbove(), row -> row >= 0, row -> row - 1)
                        .mapToObj(row -> sign(labels, row, site.column(), "v", Ink.STRONG))
                        .flatMap(Optional::stream)
                        .findFirst());
    }

    /** A question mark below the first of stretches in a row whose length is unknown; the caption says whose are. */
    private List<Shape.Label> unknowns(Labels labels) {
        List<Shape.Label> signs = new ArrayList<>();
        boolean before = true;
        for (Stretch stretch : path) {
            if (stretch.fall() || profile.spacing() != Spacing.TO_SCALE) {
                continue;
            }
            if (before && !stretch.known()) {
                int column = (frame.column(stretch.fromAlong()) + frame.column(stretch.toAlong())) / 2;
                int row = Frame.row(frame.y((stretch.fromDown() + stretch.toDown()) / 2)) + 1;
                sign(labels, row, column, "?", Ink.MAIN).ifPresent(signs::add);
            }
            before = stretch.known();
        }
        return signs;
    }

    private static Optional<Shape.Label> sign(Labels labels, int row, int column, String text, Ink ink) {
        return labels.takeIfFree(row, column)
                ? Optional.of(new Shape.Label(new Spot(column, Frame.middle(row)), text, ink, Shape.Side.START))
                : Optional.empty();
    }

    private Shape lead(Placed label, List<Labels.Site> sites) {
        boolean above = label.side() == Placed.Side.ABOVE;
        Stop stop = sites.get(above ? label.first() : label.last()).stop();
        double x = frame.x(stop.along());
        double text = Frame.middle(label.row()) + (above ? -1 : 1);
        double line = above ? frame.y(stop.lip()) : frame.y(stop.foot());
        boolean isChosen = chosen >= label.first() && chosen <= label.last();
        return new Shape.Line(new Spot(x, text), new Spot(x, line), isChosen ? Ink.MAIN : Ink.FAINT, false, false);
    }

    /** Letters may come out narrower than their cells: then the end of the text that is at its place stays there. */
    private Shape label(Placed label) {
        boolean isChosen = chosen >= label.first() && chosen <= label.last();
        boolean atEnd = label.endsAtItsPlace();
        return new Shape.Label(
                new Spot(atEnd ? label.column() + label.width() : label.column(), Frame.middle(label.row())),
                label.text(),
                isChosen ? Ink.STRONG : Ink.MAIN,
                atEnd ? Shape.Side.END : Shape.Side.START);
    }
}
