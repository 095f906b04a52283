package thalweg.rig;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;

/**
 * A way of laying strands as it was typed or read, right or wrong; empty is not stated.
 *
 * @param kind one of the words of {@link RigKind}, built or not
 * @param focus two or three numbers [m]; empty where not stated
 * @param stiffnessKilonewtons force per unit strain of one strand [kN]
 * @param strands in each leg
 * @param slackMetres extra length of legs by the name of their point [m]
 * @param strandKilonewtons strength of one strand [kN]
 * @param knotEfficiency share of the strength that the knots leave [-]
 * @param otherKeys further keys of the rig object that were stated, such as "captured"; they belong to other kinds
 */
public record SetupDraft(
        Optional<RigKind> kind,
        List<Double> focus,
        OptionalDouble stiffnessKilonewtons,
        OptionalLong strands,
        Map<String, Double> slackMetres,
        OptionalDouble strandKilonewtons,
        OptionalDouble knotEfficiency,
        Set<String> otherKeys) {

    public SetupDraft {
        focus = List.copyOf(focus);
        slackMetres = Collections.unmodifiableMap(new LinkedHashMap<>(slackMetres));
        otherKeys = Collections.unmodifiableSet(new TreeSet<>(otherKeys));
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
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Set.of());
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
                input.assumed().contains("strands") ? OptionalLong.empty() : OptionalLong.of(rig.strands()),
                slack,
                rig.strandStrength()
                        .map(strength -> OptionalDouble.of(strength.inKilonewtons()))
                        .orElse(OptionalDouble.empty()),
                rig.knotEfficiency(),
                Set.of());
    }

    /** The same rig tied to another focus. */
    public SetupDraft withFocus(Vector3 place) {
        return new SetupDraft(
                kind,
                List.of(place.x(), place.y(), place.z()),
                stiffnessKilonewtons,
                strands,
                slackMetres,
                strandKilonewtons,
                knotEfficiency,
                otherKeys);
    }

    /** The same rig with that many strands in each leg. */
    public SetupDraft withStrands(long count) {
        return new SetupDraft(
                kind,
                focus,
                stiffnessKilonewtons,
                OptionalLong.of(count),
                slackMetres,
                strandKilonewtons,
                knotEfficiency,
                otherKeys);
    }

    /** The same rig with that much extra length in the legs [m], by the name of their point. */
    public SetupDraft withSlack(Map<String, Double> metres) {
        return new SetupDraft(
                kind, focus, stiffnessKilonewtons, strands, metres, strandKilonewtons, knotEfficiency, otherKeys);
    }
}
