package thalweg.rig;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import thalweg.units.Force;

/** Everything published or derived by hand that the calculator is held against, by heading. */
final class OutsideValues {

    private static final String GAINES = "B. Gaines, *Rappelling* (2013), p. 61";
    private static final String NFPA = "NFPA 1670 Annex A, as printed in a rescue handbook";
    private static final String SLINGS = "sling trade tables after ASME B30.9";
    private static final String BASKET = "AS 1353.1, table of basket hitches";
    private static final String DELANEY = "Delaney, *Physics for Roping Technicians* (2022), p. 88";
    private static final String GERE = "Gere, *Mechanics of Materials*, problem ";

    private static final double POUND = Force.NEWTONS_PER_POUND_FORCE;
    private static final double INCH = 0.0254;

    private OutsideValues() {}

    /** By heading, in the order of the page. */
    static Map<String, List<OutsideValue>> byHeading() {
        Map<String, List<OutsideValue>> all = new LinkedHashMap<>();
        all.put("Two legs on a level", twoLegs());
        all.put("Slings and hitches: the same V, read otherwise", slings());
        all.put("A triangle: one loop through both points", triangle());
        all.put("Legs side by side, fans and tripods", severalLegs());
        all.put("Flat pairs that are just taut", flatPairs());
        all.put("Friction at a sliding master", friction());
        all.put("A rope that is turned at a redirect", redirect());
        all.put("Falls and loads that come suddenly", falls());
        all.put("When a point lets go", losses());
        all.put("Bolts, connectors and old textile", StrengthValues.all());
        return all;
    }

    /** All of them. */
    static Stream<OutsideValue> all() {
        return byHeading().values().stream().flatMap(List::stream);
    }

    private static OutsideValue leg(String degrees, String given, double allowed, String source) {
        return OutsideValue.seen(
                "included angle " + degrees + "°, load on a leg",
                source,
                given,
                "W",
                allowed,
                () -> leg(Double.parseDouble(degrees)));
    }

    /** Two points in one place are refused: an angle of 0 is stood in for by one of a fifteenth of a degree. */
    private static double leg(double degrees) {
        return Trials.partOfPair(RigKind.FOCUSED, Math.max(degrees, 0.07));
    }

    private static List<OutsideValue> twoLegs() {
        List<OutsideValue> values = new ArrayList<>(List.of(
                leg("0", "0.5", 0.005, NFPA),
                leg("30", "0.52", 0.005, GAINES),
                leg("60", "0.58", 0.005, GAINES),
                leg("90", "0.71", 0.005, GAINES),
                leg("90", "0.71", 0.005, NFPA),
                leg("120", "1.00", 0.005, GAINES),
                leg("120", "1.00", 0.005, NFPA),
                leg("150", "1.93", 0.005, GAINES),
                leg("170", "5.7", 0.05, NFPA),
                leg("179", "57.2", 0.115, NFPA + "; a slip of rounding there, so 0.2 % is allowed")));
        for (int degrees : List.of(30, 60, 90, 120, 150, 170, 179)) {
            double exact = 1 / (2 * Math.cos(Math.toRadians(degrees / 2.0)));
            values.add(OutsideValue.derived(
                    "included angle " + degrees + "°, load on a leg",
                    "1 / (2 cos(a/2))",
                    exact,
                    "W",
                    exact * 1e-4,
                    () -> leg(degrees)));
        }
        return values;
    }

    private static List<OutsideValue> slings() {
        List<OutsideValue> values = new ArrayList<>();
        Map<Integer, String> factors = new LinkedHashMap<>();
        factors.put(60, "1.155");
        factors.put(45, "1.414");
        factors.put(30, "2.000");
        factors.forEach((above, factor) -> values.add(OutsideValue.seen(
                "leg " + above + "° above the horizontal, load over half the load",
                SLINGS,
                factor,
                "",
                0.0005,
                () -> 2 * leg(180 - 2 * above))));
        values.add(basket(30, "1.90", 0.035, BASKET + "; exactly 1.93"));
        values.add(basket(60, "1.73", 0.005, BASKET));
        values.add(basket(90, "1.41", 0.005, BASKET));
        values.add(basket(120, "1.00", 0.005, BASKET));
        for (int degrees : List.of(30, 60, 90, 120)) {
            double exact = 1 / (4 * Math.cos(Math.toRadians(degrees / 2.0)));
            values.add(OutsideValue.derived(
                    "sling in a basket round a point, included angle " + degrees
                            + "°, tension in each of its four strands",
                    "1 / (4 cos(a/2))",
                    exact,
                    "W",
                    exact * 1e-4,
                    () -> Trials.strandOfBasket(degrees)));
        }
        return values;
    }

    private static OutsideValue basket(int degrees, String multiple, double allowed, String source) {
        return OutsideValue.seen(
                "basket hitch, included angle " + degrees + "°, multiple of the single rating",
                source,
                multiple,
                "",
                allowed,
                () -> 1 / (2 * Trials.strandOfBasket(degrees)));
    }

    private static OutsideValue triangle(int degrees, String given, double allowed, String source) {
        return OutsideValue.seen(
                "bottom angle " + degrees + "°, force on a point",
                source,
                given,
                "W",
                allowed,
                () -> Trials.partOfPair(RigKind.LOOP, degrees));
    }

    private static List<OutsideValue> triangle() {
        List<OutsideValue> values = new ArrayList<>(List.of(
                triangle(30, "0.82", 0.005, GAINES),
                triangle(60, "1.00", 0.005, GAINES),
                triangle(90, "1.31", 0.005, GAINES),
                triangle(120, "1.93", 0.005, GAINES),
                triangle(150, "3.80", 0.038, GAINES + "; rounded there, so 1 % is allowed")));
        for (int degrees : List.of(30, 60, 90, 120, 150)) {
            double exact = 1 / (2 * Math.cos(Math.toRadians(45 + degrees / 4.0)));
            values.add(OutsideValue.derived(
                    "bottom angle " + degrees + "°, force on a point",
                    "1 / (2 cos(45° + a/4)): one tension all around",
                    exact,
                    "W",
                    exact * 1e-4,
                    () -> Trials.partOfPair(RigKind.LOOP, degrees)));
        }
        return values;
    }

    private static List<OutsideValue> severalLegs() {
        List<OutsideValue> values = new ArrayList<>();
        List<PointDraft> inOneLine = List.of(PointDraft.of("near", 0, 1, 0), PointDraft.of("far", 0, 2, 0));
        values.add(OutsideValue.derived(
                "two legs in one line, 1 m and 2 m: load on the near point",
                "in proportion to EA / L",
                2.0 / 3,
                "W",
                1e-5,
                () -> Trials.parts(inOneLine).getOrDefault("near", 0.0)));
        for (int degrees : List.of(10, 30, 45, 60)) {
            double t = Math.toRadians(degrees);
            double whole = 1 + 2 * Math.pow(Math.cos(t), 3);
            List<PointDraft> fan = List.of(
                    PointDraft.of("left", -Math.tan(t), 1, 0),
                    PointDraft.of("middle", 0, 1, 0),
                    PointDraft.of("right", Math.tan(t), 1, 0));
            values.add(OutsideValue.derived(
                    "fan of three legs, outer ones " + degrees + "° off: load on the middle point",
                    "1 / (1 + 2 cos³ t)",
                    1 / whole,
                    "W",
                    1e-5,
                    () -> Trials.parts(fan).getOrDefault("middle", 0.0)));
            values.add(OutsideValue.derived(
                    "the same: load on an outer point",
                    "cos² t / (1 + 2 cos³ t)",
                    Math.cos(t) * Math.cos(t) / whole,
                    "W",
                    1e-5,
                    () -> Trials.parts(fan).getOrDefault("left", 0.0)));
        }
        for (int degrees : List.of(10, 35, 60, 75)) {
            double t = Math.toRadians(degrees);
            List<PointDraft> feet = Stream.of(10, 130, 250)
                    .map(turn -> PointDraft.of(
                            "at " + turn,
                            Math.sin(t) * Math.cos(Math.toRadians(turn)),
                            Math.cos(t),
                            Math.sin(t) * Math.sin(Math.toRadians(turn))))
                    .toList();
            values.add(OutsideValue.derived(
                    "tripod, legs " + degrees + "° off the load: load on a point",
                    "1 / (3 cos t)",
                    1 / (3 * Math.cos(t)),
                    "W",
                    1e-5,
                    () -> Trials.parts(feet).getOrDefault("at 130", 0.0)));
        }
        return values;
    }

    private static List<OutsideValue> flatPairs() {
        double weight = 1e-5;
        double pair = 1000 * Math.cbrt(2 * Rigs.STIFFNESS_KN * weight * weight / 8);
        return List.of(
                OutsideValue.derived(
                        "two legs of two strands in one line, 70 kN each, under 0.01 N: force on a point",
                        "(EA W² / 8)^(1/3)",
                        pair,
                        "N",
                        pair * 1e-4,
                        () -> 1000 * Trials.flat(RigKind.FOCUSED, weight)),
                OutsideValue.derived(
                        "the same as a sliding loop",
                        "(EA W² / 8)^(1/3)",
                        pair,
                        "N",
                        pair * 1e-4,
                        () -> 1000 * Trials.flat(RigKind.SLIDING, weight)));
    }

    private static List<OutsideValue> friction() {
        double tight = Math.atan(1 / 1.32);
        return List.of(
                OutsideValue.seen(
                        "a quarter of a turn, friction 0.175: tighter over looser side",
                        DELANEY,
                        "1.32",
                        "",
                        0.005,
                        () -> Trials.mostOverLeast(
                                PointDraft.of("tight", -Math.sin(tight), Math.cos(tight), 0),
                                PointDraft.of("loose", Math.cos(tight), Math.sin(tight), 0),
                                0.175)),
                OutsideValue.seen(
                        "half a turn, friction 0.175: tighter over looser side",
                        DELANEY,
                        "1.73",
                        "",
                        0.005,
                        () -> Trials.mostOverLeast(
                                PointDraft.of("low", 0, 1, 0), PointDraft.of("high", 0, 2, 0), 0.175)));
    }

    private static List<OutsideValue> redirect() {
        List<OutsideValue> values = new ArrayList<>();
        for (int degrees : List.of(0, 60, 90, 120, 180)) {
            double exact = 2 * Math.sin(Math.toRadians(degrees / 2.0));
            values.add(OutsideValue.derived(
                    "deflection " + degrees + "°, force on the redirect",
                    "plain statics: two tensions T at an angle, 2 T sin(d/2)",
                    exact,
                    "T",
                    1e-4,
                    () -> Trials.onRedirect(degrees)));
        }
        return values;
    }

    private static List<OutsideValue> falls() {
        List<OutsideValue> values = new ArrayList<>();
        String spring = "5.0 N falls 200 mm on a spring of 90 N/m: ";
        values.add(OutsideValue.seen(
                spring + "factor", GERE + "2.8-4", "3.9", "W", 0.05, () -> Trials.fall(5, 0.2, 90, 1) / 5));
        values.add(OutsideValue.seen(
                spring + "stretch", GERE + "2.8-4", "215", "mm", 0.5, () -> 1000 * Trials.fall(5, 0.2, 90, 1) / 90));
        String pound = "1.0 lb falls 12 in on a spring of 0.5 lb/in: ";
        values.add(OutsideValue.seen(
                pound + "factor", GERE + "2.8-5", "4.6", "W", 0.05, () -> poundThatFallsAFoot() / POUND));
        values.add(OutsideValue.seen(
                pound + "stretch", GERE + "2.8-5", "9.21", "in", 0.01, () -> poundThatFallsAFoot() / (0.5 * POUND)));
        String bar = "150 lb fall 2.0 in on a steel bar of 48 in and 0.75 in²: ";
        values.add(OutsideValue.seen(
                bar + "factor", GERE + "2.8-1", "113", "W", 0.5, () -> collarOnABar() / (150 * POUND)));
        values.add(OutsideValue.seen(
                bar + "stress", GERE + "2.8-1", "22,600", "psi", 50, () -> collarOnABar() / POUND / 0.75));
        values.add(OutsideValue.seen(
                bar + "stretch", GERE + "2.8-1", "0.0361", "in", 5e-5, () -> collarOnABar() / BAR / INCH));
        for (double height : List.of(0.0, 0.001, 0.05, 0.4, 1.2)) {
            double exact = 900 * (1 + Math.sqrt(1 + 2 * 50_000 * height / 900));
            values.add(OutsideValue.derived(
                    height == 0
                            ? "900 N laid suddenly on a spring of 50 kN/m"
                            : "900 N fall " + height + " m on a spring of 50 kN/m",
                    height == 0 ? "2 W" : "W (1 + sqrt(1 + 2 k h / W))",
                    exact,
                    "N",
                    exact * 2e-5,
                    () -> Trials.fall(900, height, 50_000, 1.5)));
        }
        values.add(OutsideValue.derived(
                "80 kg fall 4.6 m on 2.6 m of a rope of 24.09 kN, which was taken from a label of 9 kN",
                "mg + sqrt((mg)² + 2 m g k f), Goldstone, *The Standard Equation for Impact Force*; fall of EN 892",
                9,
                "kN",
                0.005,
                () -> Trials.fall(80 * 9.80665, 4.6, 24_090 / 2.6, 2.6) / 1000));
        return values;
    }

    private static final double BAR = 30e6 * 0.75 / 48 * POUND / INCH;

    private static double poundThatFallsAFoot() {
        return Trials.fall(POUND, 12 * INCH, 0.5 * POUND / INCH, 2);
    }

    private static double collarOnABar() {
        return Trials.fall(150 * POUND, 2 * INCH, BAR, 48 * INCH);
    }

    private static List<OutsideValue> losses() {
        List<OutsideValue> values = new ArrayList<>();
        RigDraft parallel = Rigs.focused(
                List.of(PointDraft.of("A", -0.001, 2, 0), PointDraft.of("B", 0.001, 2, 0)), Vector3.ZERO, 1, 0, 0);
        values.add(OutsideValue.derived(
                "one of two parallel legs goes: peak on the other",
                "half is there, the other half comes suddenly: 1.5 W",
                1.5,
                "W",
                1e-3,
                () -> Trials.peakOnB(parallel)));
        for (int half : List.of(5, 20, 45, 60)) {
            double t = Math.toRadians(half);
            double exact = 3 - 2 * Math.cos(t) + Math.abs(Math.cos(t) - 1 / (2 * Math.cos(t)));
            values.add(OutsideValue.derived(
                    "stiff V, " + half + "° to either side, loses a leg: peak on the other point",
                    "3 - 2 cos t + abs(cos t - 1 / (2 cos t))",
                    exact,
                    "W",
                    exact * 5e-3,
                    () -> Trials.stiffV(half)));
        }
        values.add(OutsideValue.derived(
                "a mass on one leg that is let go 30° from below, just taut: peak",
                "swing 3 - 2 cos t and jerk cos t",
                3 - Math.cos(Math.toRadians(30)),
                "W",
                0.01,
                () -> Trials.pendulum(30)));
        values.add(bound("two parallel legs", parallel));
        values.add(bound("sliding rig of 60°", pairOf(RigKind.SLIDING)));
        values.add(bound("triangle of 60°", pairOf(RigKind.LOOP)));
        return values;
    }

    private static RigDraft pairOf(RigKind kind) {
        return Rigs.pair(60).withRig(SetupDraft.of(kind, 0, 0, 0, Rigs.STIFFNESS_KN));
    }

    private static OutsideValue bound(String what, RigDraft draft) {
        return new OutsideValue(
                what + ", loses a point: peak over what the energy at the start allows",
                "W (1 + sqrt(1 + 2 k h / W + (k e0 / W)²))",
                OutsideValue.Standing.DERIVED,
                "1",
                "",
                1e-4,
                true,
                () -> Trials.partOfBound(draft));
    }
}
