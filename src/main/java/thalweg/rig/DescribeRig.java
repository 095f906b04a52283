package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.fault.Sentence;
import thalweg.units.Angle;
import thalweg.units.UnitSystem;

/** Says in words what a picture of a rig shows. */
final class DescribeRig {

    private DescribeRig() {}

    static Sentence of(RigAnswer answer, RigState state, UnitSystem units) {
        RigLoad load = answer.input().load();
        List<Sentence> said = new ArrayList<>();
        Sentence points = Sentence.joined(
                ", ",
                state.points().stream()
                        .map(point -> Sentence.of(
                                "{0} bears {1} ({2})",
                                point.point(), point.force().print(units), Figures.percent(point.share())))
                        .toList());
        said.add(Sentence.of(
                "The anchor seen from the front under {0} {1}: {2}.",
                load.weight().print(units), leaning(towards(state.direction()), load.leanOut()), points));
        said.add(state.angle()
                .map(angle -> Sentence.of("The widest angle between loaded strands is {0}.", angle.print()))
                .orElseGet(() -> Sentence.of("Only one strand is loaded, so there is no angle.")));
        List<Sentence> slack = state.strands().stream()
                .filter(strand -> !strand.loaded())
                .map(StrandPull::label)
                .distinct()
                .map(StrandNames::said)
                .toList();
        if (!slack.isEmpty()) {
            said.add(Sentence.of("Hanging slack: {0}.", Sentence.joined(", ", slack)));
        }
        slings(answer).ifPresent(said::add);
        answer.redirect()
                .ifPresent(figures -> said.add(Sentence.of(
                        "The rope runs over {0}, which bears {1}.",
                        figures.redirect().name(), figures.force().print(units))));
        knots(state).ifPresent(said::add);
        return Sentence.joined(" ", said);
    }

    private static Optional<Sentence> slings(RigAnswer answer) {
        String slung = answer.input().points().stream()
                .filter(point -> point.sling().isPresent())
                .map(RigPoint::name)
                .collect(Collectors.joining(", "));
        return slung.isEmpty()
                ? Optional.empty()
                : Optional.of(Sentence.of("Slung round, drawn as wide as stated: {0}.", slung));
    }

    private static Optional<Sentence> knots(RigState state) {
        if (state.knots().isEmpty()) {
            return Optional.empty();
        }
        List<String> against = state.knots().stream()
                .filter(KnotPlace::againstMaster)
                .map(KnotPlace::point)
                .toList();
        return Optional.of(
                switch (against.size()) {
                    case 0 -> Sentence.of("The master is off both limiter knots, which are drawn as squares.");
                    case 1 -> Sentence.of("The master rests against the limiter knot of {0}.", against.get(0));
                    default ->
                        Sentence.of(
                                "The master rests against the limiter knot of {0} and of {1}.",
                                against.get(0), against.get(1));
                });
    }

    /** Before and after the loss of a point. */
    static Sentence of(RigAnswer answer, PointLoss loss, UnitSystem units) {
        if (loss.aftermath().isEmpty()) {
            return Sentence.of(
                    "The anchor seen from the front, faint as it hung before {0} let go. Nothing holds the load any more.",
                    loss.point());
        }
        Aftermath after = loss.aftermath().get();
        Sentence points = Sentence.joined(
                ", ",
                after.rest().points().stream()
                        .filter(point -> !point.point().equals(loss.point()))
                        .map(point -> borne(point, after, units))
                        .toList());
        return Sentence.of(
                "The anchor seen from the front, faint as it hung before {0} let go, and as it comes to rest {1} lower and"
                        + " {2} to the side: {3}.",
                loss.point(), after.drop().printFine(units), after.swing().printFine(units), points);
    }

    private static Sentence borne(PointForce point, Aftermath after, UnitSystem units) {
        String force = point.force().print(units);
        return after.peaks()
                .flatMap(peaks -> peaks.on(point.point()))
                .map(peak ->
                        Sentence.of("{0} bears {1} after a model peak of {2}", point.point(), force, peak.print(units)))
                .orElseGet(() -> Sentence.of("{0} bears {1} after an unknown peak", point.point(), force));
    }

    private static Sentence towards(Angle direction) {
        String size = Figures.fixed(Math.abs(direction.degrees()), 1);
        if (size.equals("0.0")) {
            return Sentence.of("straight down");
        }
        return direction.degrees() > 0
                ? Sentence.of("{0}° from straight down to the right", size)
                : Sentence.of("{0}° from straight down to the left", size);
    }

    private static Sentence leaning(Sentence towards, Angle lean) {
        String size = Figures.fixed(Math.abs(lean.degrees()), 1);
        if (lean.degrees() == 0) {
            return towards;
        }
        return lean.degrees() > 0
                ? Sentence.of("{0}, {1}° out of the wall", towards, size)
                : Sentence.of("{0}, {1}° into the wall", towards, size);
    }
}
