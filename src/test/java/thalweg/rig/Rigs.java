package thalweg.rig;

import java.util.List;

/** Rigs for the tests. */
final class Rigs {

    static final double STIFFNESS_KN = 70;

    private Rigs() {}

    /** A focused rig under a force. */
    static RigDraft focused(List<PointDraft> points, Vector3 focus, double kilonewtons, double toward, double sway) {
        return new RigDraft(
                "",
                points,
                LoadDraft.ofForce(kilonewtons, toward, sway),
                SetupDraft.of(RigKind.FOCUSED, focus.x(), focus.y(), focus.z(), STIFFNESS_KN));
    }

    /** Two points on a level, one metre of leg each, meeting at that included angle under one kilonewton. */
    static RigDraft pair(double includedDegrees) {
        double half = Math.toRadians(includedDegrees / 2);
        return focused(
                List.of(
                        PointDraft.of("A", -Math.sin(half), Math.cos(half), 0),
                        PointDraft.of("B", Math.sin(half), Math.cos(half), 0)),
                Vector3.ZERO,
                1,
                0,
                0);
    }

    /** The answer to a draft that is a rig. */
    static RigAnswer answer(RigDraft draft) {
        return Analyze.of(input(draft));
    }

    /** A rig at rest at the aim, without what happens when a point lets go. */
    static RigState steady(RigInput input) {
        return new RestState(input).under(input.load().toward());
    }

    /** The rig of a draft that is one. */
    static RigInput input(RigDraft draft) {
        CheckedRig checked = draft.check();
        return checked.input()
                .orElseThrow(() -> new AssertionError(checked.findings().toString()));
    }
}
