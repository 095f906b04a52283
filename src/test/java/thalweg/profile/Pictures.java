package thalweg.profile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.logbook.CanyonRecord;
import thalweg.service.LoadPhrases;
import thalweg.text.Width;
import thalweg.units.UnitSystem;

/** Reads pictures of profiles back as a person does: by the figures of their scales. */
final class Pictures {

    static final ProfileWords METRIC = new ProfileWords(LoadPhrases.english(), UnitSystem.METRIC);

    static final ProfileWords IMPERIAL = new ProfileWords(LoadPhrases.english(), UnitSystem.IMPERIAL);

    private Pictures() {}

    static ProfilePicture of(CanyonRecord record, int columns, int rows) {
        return of(record, new Room(columns, rows), METRIC);
    }

    static ProfilePicture of(CanyonRecord record, Room room, ProfileWords words) {
        Profile profile = Profile.of(record);
        return ProfileDrawing.of(profile, profile.whole(), room, Optional.empty(), words);
    }

    static List<Shape.Label> labels(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Shape.Label.class::isInstance)
                .map(Shape.Label.class::cast)
                .toList();
    }

    static List<String> texts(Drawing drawing) {
        return labels(drawing).stream().map(Shape.Label::text).toList();
    }

    static Stream<Shape.Line> lines(Drawing drawing, Ink ink) {
        return drawing.shapes().stream()
                .filter(Shape.Line.class::isInstance)
                .map(Shape.Line.class::cast)
                .filter(line -> line.ink() == ink);
    }

    /** The falls of known height, in their order: strong upright strokes. */
    static List<Shape.Line> falls(Drawing drawing) {
        return lines(drawing, Ink.STRONG).filter(line -> !line.dashed()).toList();
    }

    static double height(Shape.Line fall) {
        return fall.from().y() - fall.to().y();
    }

    /** Where the figures of the scale of distances stand, by the number before their unit. */
    static Map<Double, Double> distances(Drawing drawing) {
        double last = labels(drawing).stream()
                .mapToDouble(label -> label.at().y())
                .min()
                .orElse(0);
        Map<Double, Double> scale = new TreeMap<>();
        labels(drawing).stream()
                .filter(label -> label.ink() == Ink.FAINT && label.at().y() == last)
                .forEach(label -> lines(drawing, Ink.FAINT)
                        .filter(line ->
                                line.from().x() == line.to().x() && line.to().y() < last)
                        .filter(line ->
                                Math.floor(line.from().x()) == label.at().x() - 1)
                        .forEach(line ->
                                scale.put(number(label.text()), line.from().x())));
        return scale;
    }

    /** The same of the scale of heights. */
    static Map<Double, Double> heights(Drawing drawing) {
        Map<Double, Double> scale = new TreeMap<>();
        labels(drawing).stream()
                .filter(label -> label.ink() == Ink.FAINT)
                .forEach(label -> lines(drawing, Ink.FAINT)
                        .filter(line -> line.from().y() == line.to().y())
                        .filter(line -> line.from().y() == label.at().y())
                        .forEach(line ->
                                scale.put(number(label.text()), line.from().y())));
        return scale;
    }

    private static double number(String figure) {
        return Double.parseDouble(figure.split(" ", -1)[0]);
    }

    /** Letters to one unit of a scale, from its outermost figures. */
    static double perUnit(Map<Double, Double> scale) {
        List<Double> figures = List.copyOf(scale.keySet());
        double first = figures.get(0);
        double last = figures.get(figures.size() - 1);
        return Math.abs((at(scale, last) - at(scale, first)) / (last - first));
    }

    static double at(Map<Double, Double> scale, double figure) {
        return Optional.ofNullable(scale.get(figure)).orElseThrow();
    }

    /** What a place at that spot would read off the scale of distances. */
    static double read(Map<Double, Double> scale, double x) {
        double first = scale.keySet().iterator().next();
        return first + (x - at(scale, first)) / perUnit(scale);
    }

    /** The cells that a label covers: first column, the one after the last, row. */
    static int[] cells(Shape.Label label) {
        int width = Width.of(label.text());
        int at = (int) label.at().x();
        int column = label.side() == Shape.Side.END ? at - width : at;
        return new int[] {column, column + width, (int) Math.floor(-label.at().y() / 2)};
    }
}
