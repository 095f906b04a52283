package thalweg.rig;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import thalweg.fault.Sentence;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Length;

/** Turns the limits of a draft into the places of knots, or into everything that is wrong with them. */
final class CheckLimits {

    private static final int MOST_STRANDS = 2;
    private static final String METRES = "rig.limit_m";
    private static final String RANGE = "rig.limit_range_deg";

    /** Knots nearer to the master, or to a point, than this are there [m]. */
    private static final double NONE = RigInput.ONE_PLACE_METRES;

    private final LimitDraft draft;
    private final BiConsumer<String, Sentence> refuse;

    /**
     * @param refuse takes a key and what is wrong with it
     */
    CheckLimits(LimitDraft draft, BiConsumer<String, Sentence> refuse) {
        this.draft = draft;
        this.refuse = refuse;
    }

    /** Refuses whatever is wrong by itself, whatever the points are. */
    void checkAlone() {
        if (draft.metres().isPresent() == draft.rangeDegrees().isPresent()) {
            refuse.accept(
                    "rig",
                    draft.metres().isPresent()
                            ? Sentence.of("states both limit_m and limit_range_deg; state one of them")
                            : Sentence.of(
                                    "states neither limit_m nor limit_range_deg; a limited rig needs one of them"));
        }
        draft.metres()
                .ifPresent(metres ->
                        checkPair(METRES, metres, Range.LENGTH, Sentence.of("a number for each of the two points")));
        draft.rangeDegrees().ifPresent(this::checkRange);
        draft.sliderStrands().ifPresent(count -> {
            if (count < 1 || count > MOST_STRANDS) {
                refuse.accept("rig.slider_strands", Sentence.of("is {0}; it must be 1 or {1}", count, MOST_STRANDS));
            }
        });
    }

    private boolean checkPair(String key, List<Double> numbers, Range range, Sentence what) {
        if (numbers.size() != 2) {
            refuse.accept(
                    key,
                    numbers.size() == 1
                            ? Sentence.of("has 1 number; it takes {0}", what)
                            : Sentence.of("has {0} numbers; it takes {1}", numbers.size(), what));
            return false;
        }
        boolean sound = true;
        for (double number : numbers) {
            Optional<Sentence> objection = range.objection(number);
            objection.ifPresent(sentence -> refuse.accept(key, Sentence.of("holds a number that {0}", sentence)));
            sound = sound && objection.isEmpty();
        }
        return sound;
    }

    private void checkRange(List<Double> degrees) {
        if (checkPair(RANGE, degrees, Range.TOWARD, Sentence.of("two directions, from and to"))
                && degrees.get(0) > degrees.get(1)) {
            refuse.accept(
                    RANGE,
                    Sentence.of(
                            "goes from {0}° to {1}°; the first must not be above the second",
                            Figures.plain(degrees.get(0)), Figures.plain(degrees.get(1))));
        }
    }

    /**
     * Where the knots are; empty where that is refused.
     *
     * @param points two
     */
    Optional<Limiters> result(List<RigPoint> points, RigLoad load, Vector3 focus, Force stiffness, double friction) {
        int strands = (int) draft.sliderStrands().orElse(RigDefaults.SLIDER_STRANDS);
        Optional<LimitRange> range = draft.rangeDegrees()
                .map(degrees -> new LimitRange(new Angle(degrees.get(0)), new Angle(degrees.get(1))));
        Optional<List<Length>> limits = range.isPresent()
                ? found(points, focus, FindLimits.of(points, load, focus, stiffness, range.get()))
                : stated(points, focus);
        return limits.map(fromFocus -> new Limiters(fromFocus, strands, friction, range));
    }

    private Optional<List<Length>> stated(List<RigPoint> points, Vector3 focus) {
        List<Double> metres = draft.metres().orElseThrow();
        boolean sound = true;
        for (int i = 0; i < metres.size(); i++) {
            double leg = way(points.get(i), focus);
            if (metres.get(i) <= 0 || metres.get(i) > leg - NONE) {
                refuse.accept(
                        METRES,
                        Sentence.of(
                                "is {0} m for point {1}; it must be above 0 and below the {2} m from the focus to {3}",
                                Figures.plain(metres.get(i)),
                                points.get(i).name(),
                                Figures.fixed(leg, 3),
                                Slung.endsBefore(points.get(i))
                                        ? Sentence.of("the end of its sling")
                                        : Sentence.of("the point")));
                sound = false;
            }
        }
        return sound ? Optional.of(metres.stream().map(Length::new).toList()) : Optional.empty();
    }

    private Optional<List<Length>> found(List<RigPoint> points, Vector3 focus, List<Length> limits) {
        boolean sound = true;
        for (int i = 0; i < limits.size(); i++) {
            if (limits.get(i).metres() > way(points.get(i), focus) - NONE) {
                refuse.accept(
                        RANGE,
                        Sentence.of(
                                "lets the master slide up to point {0}, so that no leg would be left above its knot;"
                                        + " narrow the range",
                                points.get(i).name()));
                sound = false;
            }
        }
        if (limits.stream().mapToDouble(Length::metres).sum() < NONE) {
            refuse.accept(
                    RANGE,
                    Sentence.of("asks for less than 1 mm of sliding, so both knots would be at the master; widen the"
                            + " range, or tie a focused rig"));
            sound = false;
        }
        return sound ? Optional.of(limits) : Optional.empty();
    }

    private static double way(RigPoint point, Vector3 focus) {
        return Slung.end(point, focus).distance(focus);
    }
}
