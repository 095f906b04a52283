package thalweg.rig;

import java.util.stream.Collectors;
import thalweg.units.Angle;
import thalweg.units.UnitSystem;

/** Says in words what a picture of a rig shows. */
final class DescribeRig {

    private DescribeRig() {}

    static String of(RigAnswer answer, RigState state, UnitSystem units) {
        RigLoad load = answer.input().load();
        String points = state.points().stream()
                .map(point -> point.point() + " bears " + point.force().print(units) + " ("
                        + Figures.percent(point.share()) + ")")
                .collect(Collectors.joining(", "));
        String slack = state.strands().stream()
                .filter(strand -> !strand.loaded())
                .map(StrandPull::label)
                .distinct()
                .collect(Collectors.joining(", "));
        return "The anchor seen from the front under " + load.weight().print(units) + " " + towards(state.direction())
                + leaning(load.leanOut()) + ": " + points + "."
                + state.angle()
                        .map(angle -> " The widest angle between loaded strands is " + angle.print() + ".")
                        .orElse(" Only one strand is loaded, so there is no angle.")
                + (slack.isEmpty() ? "" : " Hanging slack: " + slack + ".")
                + slings(answer)
                + redirect(answer, units)
                + knots(state);
    }

    private static String redirect(RigAnswer answer, UnitSystem units) {
        return answer.redirect()
                .map(figures -> " The rope runs over " + figures.redirect().name() + ", which bears "
                        + figures.force().print(units) + ".")
                .orElse("");
    }

    private static String slings(RigAnswer answer) {
        String slung = answer.input().points().stream()
                .filter(point -> point.sling().isPresent())
                .map(RigPoint::name)
                .collect(Collectors.joining(", "));
        return slung.isEmpty() ? "" : " Slung round, drawn as wide as stated: " + slung + ".";
    }

    private static String knots(RigState state) {
        if (state.knots().isEmpty()) {
            return "";
        }
        String against = state.knots().stream()
                .filter(KnotPlace::againstMaster)
                .map(KnotPlace::point)
                .collect(Collectors.joining(" and of "));
        return against.isEmpty()
                ? " The master is off both limiter knots, which are drawn as squares."
                : " The master rests against the limiter knot of " + against + ".";
    }

    /** Before and after the loss of a point. */
    static String of(RigAnswer answer, PointLoss loss, UnitSystem units) {
        String head = "The anchor seen from the front, faint as it hung before " + loss.point() + " let go";
        if (loss.aftermath().isEmpty()) {
            return head + ". Nothing holds the load any more.";
        }
        Aftermath after = loss.aftermath().get();
        String points = after.rest().points().stream()
                .filter(point -> !point.point().equals(loss.point()))
                .map(point -> point.point() + " bears " + point.force().print(units)
                        + after.peaks()
                                .flatMap(peaks -> peaks.on(point.point()))
                                .map(peak -> " after a model peak of " + peak.print(units))
                                .orElse(" after an unknown peak"))
                .collect(Collectors.joining(", "));
        return head + ", and as it comes to rest " + after.drop().printFine(units) + " lower and "
                + after.swing().printFine(units) + " to the side: " + points + ".";
    }

    private static String towards(Angle direction) {
        String size = Figures.fixed(Math.abs(direction.degrees()), 1);
        if (size.equals("0.0")) {
            return "straight down";
        }
        return size + "° from straight down to the " + (direction.degrees() > 0 ? "right" : "left");
    }

    private static String leaning(Angle lean) {
        if (lean.degrees() == 0) {
            return "";
        }
        return ", " + Figures.fixed(Math.abs(lean.degrees()), 1) + "° "
                + (lean.degrees() > 0 ? "out of the wall" : "into the wall");
    }
}
