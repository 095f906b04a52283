package thalweg.why;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import thalweg.rig.FrictionRange;
import thalweg.rig.PointForce;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigKind;
import thalweg.rig.RigPoint;
import thalweg.rig.RigState;
import thalweg.rig.StrandPull;
import thalweg.rig.Vector3;
import thalweg.rig.WorstForce;
import thalweg.sheet.LossWords;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.why.Figure.Topic;
import thalweg.why.Ground.Kind;

/** Explains the figures of the rig at rest: pulls and shares at the aim and over the sway, angles, what friction may leave. */
final class ExplainRest {

    private final RigAnswer answer;
    private final RigState swung;
    private final Grounds grounds;
    private final Words words;

    /**
     * @param swung the state that is shown beside the one at the aim, or that one
     */
    ExplainRest(RigAnswer answer, RigState swung, Grounds grounds, Words words) {
        this.answer = answer;
        this.swung = swung;
        this.grounds = grounds;
        this.words = words;
    }

    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        figures.add(angle());
        answer.sector().widest().ifPresent(widest -> figures.add(widest(widest.angle(), widest.direction())));
        for (PointForce force : answer.steady().points()) {
            figures.add(atAim(force));
            figures.add(worst(answer.sector().worstOf(force.point())));
        }
        if (!swung.direction().equals(answer.steady().direction())) {
            figures.add(swung());
        }
        answer.friction().ifPresent(friction -> figures.add(friction(friction)));
        return figures;
    }

    private Figure angle() {
        RigState steady = answer.steady();
        return new Figure(
                Topic.REST,
                words.say("why.angle"),
                steady.angle()
                        .map(angle -> words.say("why.angle.value", angle.printFine(), angle.print()))
                        .orElse(words.say("why.angle.none")),
                List.of(
                        steady.angle().isPresent()
                                ? words.say("why.angle.how", words.place(steady.master()))
                                : words.say("rig.no_angle")),
                grounds.atRest(),
                words.say("why.model.source"),
                words.say("why.angle.not"));
    }

    private Figure widest(Angle angle, Angle direction) {
        return new Figure(
                Topic.REST,
                words.say("why.widest"),
                words.say("why.toward", angle.printFine(), direction.print()),
                List.of(words.say("why.worst.how")),
                grounds.atRest(Kind.SWAY),
                words.say("why.model.source"),
                words.say("why.angle.not"));
    }

    private Figure atAim(PointForce force) {
        List<String> how = new ArrayList<>();
        how.add(balance(answer.steady(), force));
        double all = answer.steady().points().stream()
                .mapToDouble(point -> point.force().inKilonewtons())
                .sum();
        how.add(words.say(
                "why.share", words.force(force.force()), words.kilonewtons(all), words.percent(force.share())));
        return new Figure(
                Topic.REST,
                words.say("why.at_aim", force.point()),
                words.say("why.at_aim.value", words.force(force.force()), words.percent(force.share())),
                how,
                grounds.atRest(),
                words.say("why.model.source"),
                words.say("why.at_rest.not"));
    }

    /** How the pull on a point comes about: where that is short, as a formula with the rig's own numbers. */
    private String balance(RigState state, PointForce force) {
        List<StrandPull> loaded =
                state.strands().stream().filter(StrandPull::loaded).toList();
        boolean slung =
                answer.input().points().stream().anyMatch(point -> point.sling().isPresent());
        boolean legs = !slung
                && loaded.stream()
                        .allMatch(strand -> !strand.closed() && strand.path().size() == 2);
        RigKind kind = answer.input().rig().kind();
        if (legs && force.share() == 0) {
            return words.say("why.balance.slack", force.point());
        }
        if (!legs || kind == RigKind.LIMITED || loaded.size() > 2) {
            return words.say(
                    !slung && (kind == RigKind.FOCUSED || kind == RigKind.SINGLE)
                            ? "why.balance.legs"
                            : "why.balance.strands",
                    words.place(state.master()),
                    force.point());
        }
        return loaded.size() == 1
                ? words.say("why.balance.one", force.point(), words.force(load()))
                : twoLegs(state, force);
    }

    private Force load() {
        return answer.input().load().weight();
    }

    /** Three forces in balance: each is to the sine of the angle between the two others as any other one is. */
    private String twoLegs(RigState state, PointForce force) {
        Vector3 down = answer.input().load().direction(state.direction());
        PointForce other = state.points().stream()
                .filter(point -> !point.point().equals(force.point()) && point.share() > 0)
                .max((one, two) -> Double.compare(one.share(), two.share()))
                .orElseThrow();
        double own = fromLoad(state, force.point(), down);
        double others = fromLoad(state, other.point(), down);
        return words.say(
                "why.balance.two",
                words.place(state.master()),
                force.point(),
                new Angle(own).printFine(),
                other.point(),
                new Angle(others).printFine(),
                words.force(load()),
                new Angle(own + others).printFine(),
                words.force(force.force()));
    }

    /** Between the leg to a point and the line of the load, above the master [°]. */
    private double fromLoad(RigState state, String name, Vector3 down) {
        Vector3 at = answer.input().points().stream()
                .filter(point -> point.name().equals(name))
                .map(RigPoint::at)
                .findFirst()
                .orElseThrow();
        Vector3 leg = at.minus(state.master());
        double cosine = -leg.dot(down) / leg.length();
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
    }

    private Figure worst(WorstForce worst) {
        List<String> how = new ArrayList<>();
        how.add(
                answer.input().load().sway().degrees() == 0
                        ? words.say("why.worst.still")
                        : words.say("why.worst.how"));
        boolean friction = answer.frictionAdds(worst.point());
        if (friction) {
            how.add(words.say(
                    "why.worst.friction",
                    words.force(worst.force()),
                    Words.fixed(
                            answer.hardest(worst.point()).newtons()
                                    / worst.force().newtons(),
                            2),
                    words.force(answer.hardest(worst.point()))));
        }
        return new Figure(
                Topic.REST,
                words.say("why.worst", worst.point()),
                words.say(
                        "why.toward",
                        words.force(answer.hardest(worst.point())),
                        worst.direction().print()),
                how,
                friction ? grounds.atRest(Kind.SWAY, Kind.FRICTION) : grounds.atRest(Kind.SWAY),
                words.say("why.model.source"),
                words.say("why.at_rest.not"));
    }

    private Figure swung() {
        String points = swung.points().stream()
                .map(point -> words.say(
                        "rig.swung.point",
                        point.point(),
                        words.force(point.force()),
                        Words.fixed(100 * point.share(), 0)))
                .collect(Collectors.joining(", "));
        String angle = swung.angle().map(Angle::print).orElse(words.say("why.angle.none"));
        return new Figure(
                Topic.REST,
                words.say("why.swung", swung.direction().printFine()),
                words.say("why.swung.value", points, angle),
                List.of(words.say("why.swung.how", words.place(swung.master()))),
                grounds.atRest(Kind.SWAY),
                words.say("why.model.source"),
                words.say("why.at_rest.not"));
    }

    private Figure friction(FrictionRange friction) {
        String value = friction.known()
                ? new LossWords(words.phrases(), words.units()).shares(friction)
                : words.say("unknown");
        double coefficient = answer.input().rig().friction().orElse(0);
        return new Figure(
                Topic.REST,
                words.say("why.friction"),
                value,
                List.of(
                        friction.known()
                                ? words.say("why.friction.how", words.plain(coefficient))
                                : words.say(friction.saying())),
                grounds.atRest(Kind.FRICTION),
                words.say("why.friction.source"),
                words.say("why.friction.not"));
    }
}
