package thalweg.rig;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * A way of laying strands as it was typed or read, right or wrong; empty is not stated.
 *
 * @param kind one of {@link RigKind}
 * @param focus two or three numbers [m]; empty where not stated
 * @param stiffnessKilonewtons force per unit strain of one strand [kN]
 * @param strands in each leg
 * @param slackMetres extra length of legs by the name of their point [m]
 * @param captured whether a twist keeps a sliding master inside its loop
 * @param friction of a sliding master [-]
 * @param limits how far the master may slide
 * @param strandKilonewtons strength of one strand [kN]
 * @param knotEfficiency share of the strength that the knots leave [-]
 * @param traits what else is stated of strands and master
 */
public record SetupDraft(
        Optional<RigKind> kind,
        List<Double> focus,
        OptionalDouble stiffnessKilonewtons,
        OptionalLong strands,
        Map<String, Double> slackMetres,
        Optional<Boolean> captured,
        OptionalDouble friction,
        LimitDraft limits,
        OptionalDouble strandKilonewtons,
        OptionalDouble knotEfficiency,
        StrandTraitsDraft traits) {

    public SetupDraft {
        focus = List.copyOf(focus);
        slackMetres = Collections.unmodifiableMap(new LinkedHashMap<>(slackMetres));
    }

    /** A rig of which nothing else is stated. */
    public SetupDraft(
            Optional<RigKind> kind,
            List<Double> focus,
            OptionalDouble stiffnessKilonewtons,
            OptionalLong strands,
            Map<String, Double> slackMetres,
            Optional<Boolean> captured,
            OptionalDouble friction,
            LimitDraft limits,
            OptionalDouble strandKilonewtons,
            OptionalDouble knotEfficiency) {
        this(
                kind,
                focus,
                stiffnessKilonewtons,
                strands,
                slackMetres,
                captured,
                friction,
                limits,
                strandKilonewtons,
                knotEfficiency,
                StrandTraitsDraft.NONE);
    }

    /** A rig of which only what has no default is stated. */
    public static SetupDraft of(
            RigKind kind, double focusX, double focusY, double focusZ, double stiffnessKilonewtons) {
        return new SetupDraft(
                Optional.of(kind),
                List.of(focusX, focusY, focusZ),
                OptionalDouble.of(stiffnessKilonewtons),
                OptionalLong.empty(),
                Map.of(),
                Optional.empty(),
                OptionalDouble.empty(),
                LimitDraft.NONE,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    static SetupDraft of(RigInput input) {
        RigSetup rig = input.rig();
        Map<String, Double> slack = new LinkedHashMap<>();
        for (int i = 0; i < input.points().size(); i++) {
            double metres = rig.slack().get(i).metres();
            if (metres > 0) {
                slack.put(input.points().get(i).name(), metres);
            }
        }
        return new SetupDraft(
                Optional.of(rig.kind()),
                List.of(rig.focus().x(), rig.focus().y(), rig.focus().z()),
                OptionalDouble.of(rig.stiffness().inKilonewtons()),
                rig.kind().takes("strands") && !input.assumed().contains("strands")
                        ? OptionalLong.of(rig.strands())
                        : OptionalLong.empty(),
                slack,
                rig.sliding()
                        .filter(slides -> !input.assumed().contains("captured"))
                        .map(Sliding::captured),
                friction(input),
                LimitDraft.of(input),
                Stated.kilonewtons(rig.strandStrength()),
                rig.traits().knot().isPresent() ? OptionalDouble.empty() : rig.knotEfficiency(),
                StrandTraitsDraft.of(rig.traits()));
    }

    private static OptionalDouble friction(RigInput input) {
        return input.assumed().contains("friction")
                ? OptionalDouble.empty()
                : input.rig().friction();
    }

    /** The same rig tied to another focus. */
    public SetupDraft withFocus(Vector3 place) {
        return new SetupDraft(
                kind,
                List.of(place.x(), place.y(), place.z()),
                stiffnessKilonewtons,
                strands,
                slackMetres,
                captured,
                friction,
                limits,
                strandKilonewtons,
                knotEfficiency,
                traits);
    }

    /** The same rig with that many strands in each leg. */
    public SetupDraft withStrands(long count) {
        return new SetupDraft(
                kind,
                focus,
                stiffnessKilonewtons,
                OptionalLong.of(count),
                slackMetres,
                captured,
                friction,
                limits,
                strandKilonewtons,
                knotEfficiency,
                traits);
    }

    /** The same rig with that much extra length in the legs [m], by the name of their point. */
    public SetupDraft withSlack(Map<String, Double> metres) {
        return new SetupDraft(
                kind,
                focus,
                stiffnessKilonewtons,
                strands,
                metres,
                captured,
                friction,
                limits,
                strandKilonewtons,
                knotEfficiency,
                traits);
    }

    /** The same rig, stating whether a twist captures the master, and its friction [-]. */
    public SetupDraft withSliding(boolean isCaptured, double coefficient) {
        return new SetupDraft(
                kind,
                focus,
                stiffnessKilonewtons,
                strands,
                slackMetres,
                Optional.of(isCaptured),
                OptionalDouble.of(coefficient),
                limits,
                strandKilonewtons,
                knotEfficiency,
                traits);
    }

    /** The same rig with strands of known strength [kN], and the share of it that knots leave [-]. */
    public SetupDraft withStrength(double kilonewtons, double efficiency) {
        return new SetupDraft(
                kind,
                focus,
                stiffnessKilonewtons,
                strands,
                slackMetres,
                captured,
                friction,
                limits,
                OptionalDouble.of(kilonewtons),
                OptionalDouble.of(efficiency),
                traits.tied(Optional.empty()));
    }

    /** The same rig, stating how far its master may slide, and the friction there [-]. */
    public SetupDraft withLimits(LimitDraft draft, double coefficient) {
        return new SetupDraft(
                kind,
                focus,
                stiffnessKilonewtons,
                strands,
                slackMetres,
                captured,
                OptionalDouble.of(coefficient),
                draft,
                strandKilonewtons,
                knotEfficiency,
                traits);
    }

    /** The same rig with strands of that strength [kN], if known. */
    public SetupDraft withStrandStrength(OptionalDouble kilonewtons) {
        return new SetupDraft(
                kind,
                focus,
                stiffnessKilonewtons,
                strands,
                slackMetres,
                captured,
                friction,
                limits,
                kilonewtons,
                knotEfficiency,
                traits);
    }

    /** The same rig, of whose strands and master that is stated. */
    public SetupDraft withTraits(StrandTraitsDraft other) {
        return new SetupDraft(
                kind,
                focus,
                stiffnessKilonewtons,
                strands,
                slackMetres,
                captured,
                friction,
                limits,
                strandKilonewtons,
                knotEfficiency,
                other);
    }

    /** The keys that are stated and belong to some kinds only, in the order of the file. */
    List<String> ownKeys() {
        Map<String, Boolean> stated = new LinkedHashMap<>();
        stated.put("strands", strands.isPresent());
        stated.put("slack_m", !slackMetres.isEmpty());
        stated.put("captured", captured.isPresent());
        stated.put("limit_m", limits.metres().isPresent());
        stated.put("limit_range_deg", limits.rangeDegrees().isPresent());
        stated.put("slider_strands", limits.sliderStrands().isPresent());
        stated.put("friction", friction.isPresent());
        stated.values().removeIf(isStated -> !isStated);
        return List.copyOf(stated.keySet());
    }
}
