package thalweg.rig;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import thalweg.fault.Sentence;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Length;
import thalweg.units.Mass;

/** Turns a draft into a rig, or into everything that is wrong with it. */
final class CheckDraft {

    private static final int MOST_STRANDS = 24;
    private static final int LONGEST_NAME = 40;

    private final RigDraft draft;
    private final List<RigFinding> findings = new ArrayList<>();
    private final Set<String> assumed = new LinkedHashSet<>();
    private final CheckTraits traits = new CheckTraits(this::refuse, assumed::add);

    CheckDraft(RigDraft draft) {
        this.draft = draft;
    }

    CheckedRig result() {
        List<RigPoint> points = points();
        Optional<RigLoad> load = load();
        Optional<RigSetup> rig = setup(points, load);
        if (!findings.isEmpty()) {
            return new CheckedRig(Optional.empty(), findings);
        }
        RigInput input =
                new RigInput(draft.name(), points, load.orElseThrow(), rig.orElseThrow(), List.copyOf(assumed));
        Optional<RigInput> redirected =
                draft.redirect().map(over -> redirected(input, over)).orElse(Optional.of(input));
        return new CheckedRig(redirected, findings);
    }

    /** The rig whose rope runs over a redirect; what is wrong with that is told once the rest is right. */
    private Optional<RigInput> redirected(RigInput input, RedirectDraft over) {
        String key = "load.redirect.";
        String name = over.name().isBlank() ? RigRedirect.UNNAMED : over.name();
        if (name.length() > LONGEST_NAME) {
            refuse(key + "name", Sentence.of("is longer than {0} characters", LONGEST_NAME));
        }
        OptionalDouble strength = known(key + "strength_kN", over.strengthKilonewtons(), Range.STRENGTH);
        Optional<Vector3> at = place(key + "at", over.at())
                .filter(place -> place.distance(input.rig().focus()) >= RigInput.ONE_PLACE_METRES);
        if (at.isEmpty() && findings.isEmpty()) {
            refuse(
                    key + "at",
                    Sentence.of(
                            "is the place of the focus; a redirect stands where the rope leads away from the master"));
        }
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        Optional<RigInput> aimed =
                AimAtRedirect.of(input, new RigRedirect(name, at.orElseThrow(), Stated.force(strength), input.load()));
        if (aimed.isEmpty()) {
            refuse(
                    key + "at",
                    Sentence.of(
                            "is so near that the load draws the master up to it, within {0} cm; put it farther from"
                                    + " the focus",
                            Figures.fixed(100 * AimAtRedirect.DRAWN_UP_METRES, 0)));
        }
        return aimed;
    }

    private List<RigPoint> points() {
        List<RigPoint> points = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (int i = 0; i < draft.points().size(); i++) {
            PointDraft point = draft.points().get(i);
            String key = "points[" + i + "]";
            checkName(key + ".name", point.name(), names);
            Optional<Vector3> at = place(key + ".at", point.at());
            for (PointDraft other : draft.points().subList(0, i)) {
                if (at.isPresent() && isAt(other, at.get())) {
                    refuse(
                            key + ".at",
                            Sentence.of("is the place of point {0}; two points need two places", other.name()));
                }
            }
            OptionalDouble strength = known(key + ".strength_kN", point.strengthKilonewtons(), Range.STRENGTH);
            double spread = withDefault(key + ".", "spread", point.spread(), Range.SPREAD, RigDefaults.SPREAD);
            traits.check(key, point);
            Optional<RigSling> sling = point.sling().flatMap(stated -> sling(key, stated, at));
            if (findings.isEmpty()) {
                PointTraits known = traits.of(point.traits());
                points.add(new RigPoint(
                        point.name(),
                        at.orElseThrow(),
                        known.bolt().map(BoltStrength::radial).or(() -> Stated.force(strength)),
                        spread,
                        point.holdsAlone(),
                        known,
                        point.is(),
                        sling));
            }
        }
        return points;
    }

    private Optional<RigSling> sling(String key, SlingDraft sling, Optional<Vector3> at) {
        SetupDraft rig = draft.rig();
        boolean known = at.isPresent() && isSound(rig.focus());
        OptionalDouble way = known ? OptionalDouble.of(at.get().distance(vector(rig.focus()))) : OptionalDouble.empty();
        return new CheckSling(key, sling, this::refuse, assumed).result(rig.kind(), way);
    }

    private void checkName(String key, String name, Set<String> names) {
        if (name.isBlank()) {
            refuse(key, Sentence.of("is missing; every point has a name"));
        } else if (name.length() > LONGEST_NAME) {
            refuse(key, Sentence.of("is longer than {0} characters", LONGEST_NAME));
        } else if (!names.add(name)) {
            refuse(key, Sentence.of("is the name of another point as well: {0}", name));
        }
    }

    private Optional<RigLoad> load() {
        LoadDraft load = draft.load();
        if (load.massKilograms().isPresent() == load.forceKilonewtons().isPresent()) {
            refuse(
                    "load",
                    load.massKilograms().isPresent()
                            ? Sentence.of("states both mass_kg and force_kN; state one of them")
                            : Sentence.of("states neither mass_kg nor force_kN; state one of them"));
        }
        OptionalDouble mass = known("load.mass_kg", load.massKilograms(), Range.MASS);
        OptionalDouble pull = known("load.force_kN", load.forceKilonewtons(), Range.FORCE);
        double toward = required("load.toward_deg", load.towardDegrees(), Range.TOWARD);
        double sway = withDefault("load.", "sway_deg", load.swayDegrees(), Range.SWAY, RigDefaults.SWAY_DEGREES);
        double lean =
                withDefault("load.", "lean_out_deg", load.leanOutDegrees(), Range.LEAN, RigDefaults.LEAN_OUT_DEGREES);
        double rope = withDefault("load.", "rope_out_m", load.ropeOutMetres(), Range.ROPE, RigDefaults.ROPE_OUT_METRES);
        OptionalDouble ropeStiffness = known("load.rope_EA_kN", load.ropeStiffnessKilonewtons(), Range.STIFFNESS);
        if (rope > 0 && load.ropeStiffnessKilonewtons().isEmpty()) {
            refuse("load.rope_EA_kN", Sentence.of("is missing, and rope is out: state how the rope stretches"));
        }
        double spread = withDefault("load.", "load_spread", load.spread(), Range.SPREAD, RigDefaults.LOAD_SPREAD);
        double factor = known("load.factor", load.factor(), Range.FACTOR).orElse(1);
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        Optional<Mass> known = mass.isPresent() ? Optional.of(new Mass(mass.getAsDouble())) : Optional.empty();
        Force atRest = known.map(Mass::weight).orElseGet(() -> Force.kilonewtons(pull.orElseThrow()));
        return Optional.of(new RigLoad(
                new Force(factor * atRest.newtons()),
                known,
                new Angle(toward),
                new Angle(sway),
                new Angle(lean),
                new Length(rope),
                Stated.force(ropeStiffness),
                spread,
                factor));
    }

    private Optional<RigSetup> setup(List<RigPoint> points, Optional<RigLoad> load) {
        SetupDraft rig = draft.rig();
        if (rig.kind().isEmpty()) {
            refuse("rig.kind", Sentence.of("is missing; it is one of: {0}", RigKind.words()));
            checkPointCount(1, 6, Sentence.of("a rig"));
        }
        rig.kind().ifPresent(this::checkKind);
        Optional<Vector3> focus = place("rig.focus", rig.focus());
        for (PointDraft point : draft.points()) {
            if (focus.isPresent() && isAt(point, focus.get())) {
                refuse("rig.focus", Sentence.of("is the place of point {0}; every leg needs a length", point.name()));
            }
        }
        double stiffness = required("rig.EA_kN", rig.stiffnessKilonewtons(), Range.STIFFNESS);
        long strands = rig.strands().orElse(RigDefaults.STRANDS);
        if (strands < 1 || strands > MOST_STRANDS) {
            refuse("rig.strands", Sentence.of("is {0}; it must be at least 1 and at most {1}", strands, MOST_STRANDS));
        }
        boolean hasLegs = rig.kind().map(kind -> kind.takes("strands")).orElse(false);
        if (hasLegs && rig.strands().isEmpty()) {
            assumed.add("strands");
        }
        Optional<Sliding> sliding = sliding(rig);
        boolean limited = rig.kind().equals(Optional.of(RigKind.LIMITED));
        CheckLimits limits = new CheckLimits(rig.limits(), this::refuse);
        if (limited) {
            limits.checkAlone();
            assumeForLimited(rig);
        }
        rig.slackMetres().forEach(this::checkSlack);
        OptionalDouble strandStrength = known("rig.strand_kN", rig.strandKilonewtons(), Range.STRENGTH);
        OptionalDouble efficiency = known("rig.knot_efficiency", rig.knotEfficiency(), Range.EFFICIENCY);
        traits.check(rig);
        Optional<Limiters> limiters = Optional.empty();
        if (limited && findings.isEmpty()) {
            double friction = rig.friction().orElse(RigDefaults.FRICTION);
            Force stretch = Force.kilonewtons(stiffness);
            limiters = limits.result(points, load.orElseThrow(), focus.orElseThrow(), stretch, friction);
        }
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        List<Length> slack = points.stream()
                .map(point -> new Length(rig.slackMetres().getOrDefault(point.name(), 0.0)))
                .toList();
        return Optional.of(new RigSetup(
                rig.kind().orElseThrow(),
                focus.orElseThrow(),
                Force.kilonewtons(stiffness),
                hasLegs ? (int) strands : 1,
                slack,
                sliding,
                limiters,
                Stated.force(strandStrength),
                traits.efficiency(rig, efficiency),
                traits.of(rig.traits())));
    }

    /** How the master slides; empty for a rig on which it is tied. */
    private Optional<Sliding> sliding(SetupDraft rig) {
        OptionalDouble stated = known("rig.friction", rig.friction(), Range.FRICTION);
        if (!rig.kind().equals(Optional.of(RigKind.SLIDING))) {
            return Optional.empty();
        }
        if (rig.captured().isEmpty()) {
            assumed.add("captured");
        }
        if (stated.isEmpty()) {
            assumed.add("friction");
        }
        double friction = stated.orElse(RigDefaults.FRICTION);
        return Range.FRICTION.objection(friction).isPresent()
                ? Optional.empty()
                : Optional.of(new Sliding(rig.captured().orElse(RigDefaults.CAPTURED), friction));
    }

    private void assumeForLimited(SetupDraft rig) {
        if (rig.limits().sliderStrands().isEmpty()) {
            assumed.add("slider_strands");
        }
        if (rig.friction().isEmpty()) {
            assumed.add("friction");
        }
    }

    private void checkKind(RigKind kind) {
        checkPointCount(kind.fewestPoints(), kind.mostPoints(), Sentence.plain(kind.word()));
        for (String key : draft.rig().ownKeys()) {
            if (!kind.takes(key)) {
                refuse(
                        "rig." + key,
                        Sentence.of(
                                "does not belong to a rig of kind {0}; it belongs to: {1}",
                                kind.word(), RigKind.wordsOfThoseThatTake(key)));
            }
        }
    }

    private void checkPointCount(int fewest, int most, Sentence what) {
        int count = draft.points().size();
        if (count < fewest || count > most) {
            Sentence range =
                    fewest == most ? Sentence.of("exactly {0}", fewest) : Sentence.of("{0} to {1}", fewest, most);
            refuse(
                    "points",
                    count == 1
                            ? Sentence.of("holds 1 point; {0} takes {1}", what, range)
                            : Sentence.of("holds {0} points; {1} takes {2}", count, what, range));
        }
    }

    private void checkSlack(String name, double metres) {
        String key = "rig.slack_m." + name;
        known(key, OptionalDouble.of(metres), Range.LENGTH);
        if (draft.points().stream().noneMatch(point -> point.name().equals(name))) {
            refuse(key, Sentence.of("names no point of this rig"));
        }
    }

    private static boolean isAt(PointDraft point, Vector3 place) {
        return isSound(point.at()) && vector(point.at()).distance(place) < RigInput.ONE_PLACE_METRES;
    }

    private static boolean isSound(List<Double> place) {
        return place.size() >= 2 && place.stream().allMatch(Double::isFinite);
    }

    private Optional<Vector3> place(String key, List<Double> numbers) {
        if (numbers.isEmpty()) {
            refuse(key, Sentence.of("is missing; it is two or three numbers in metres"));
            return Optional.empty();
        }
        if (numbers.size() < 2 || numbers.size() > 3) {
            refuse(key, Sentence.of("has {0} numbers; it must have two or three", numbers.size()));
            return Optional.empty();
        }
        int before = findings.size();
        for (double number : numbers) {
            Range.PLACE
                    .objection(number)
                    .ifPresent(objection -> refuse(key, Sentence.of("holds a number that {0}", objection)));
        }
        return findings.size() > before ? Optional.empty() : Optional.of(vector(numbers));
    }

    private static Vector3 vector(List<Double> numbers) {
        return new Vector3(numbers.get(0), numbers.get(1), numbers.size() > 2 ? numbers.get(2) : 0);
    }

    private OptionalDouble known(String key, OptionalDouble value, Range range) {
        value.ifPresent(number -> range.objection(number).ifPresent(objection -> refuse(key, objection)));
        return value;
    }

    private double required(String key, OptionalDouble value, Range range) {
        if (value.isEmpty()) {
            refuse(key, Sentence.of("is missing"));
        }
        return known(key, value, range).orElse(0);
    }

    private double withDefault(String path, String key, OptionalDouble value, Range range, double otherwise) {
        if (value.isEmpty()) {
            assumed.add(key);
        }
        return known(path + key, value, range).orElse(otherwise);
    }

    private void refuse(String key, Sentence what) {
        findings.add(new RigFinding(key, what));
    }
}
