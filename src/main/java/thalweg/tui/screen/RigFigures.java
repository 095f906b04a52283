package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.rig.Analyze;
import thalweg.rig.CheckedRig;
import thalweg.rig.Knot;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigDraft;
import thalweg.rig.RigInput;

/**
 * What the calculator answered.
 *
 * @param figures where the rig can be computed
 * @param refusals why it cannot
 * @param knot by whose name it was chosen what knots leave; empty where a number was typed, or nothing
 * @param studies what was studied besides
 */
record RigFigures(Optional<RigAnswer> figures, List<String> refusals, Optional<Knot> knot, RigStudies studies) {

    static final RigFigures NONE = new RigFigures(Optional.empty(), List.of(), Optional.empty(), RigStudies.NONE);

    RigFigures {
        refusals = List.copyOf(refusals);
    }

    static RigFigures of(Optional<RigDraft> draft, Optional<Knot> knot) {
        if (draft.isEmpty()) {
            return NONE;
        }
        CheckedRig checked = draft.get().check();
        return new RigFigures(
                checked.input().map(Analyze::of),
                checked.findings().stream().map(one -> one.print()).toList(),
                knot,
                RigStudies.NONE);
    }

    RigFigures with(RigStudies others) {
        return new RigFigures(figures, refusals, knot, others);
    }

    /** Whether the figures are about that rig. */
    boolean isOf(RigInput input) {
        return figures.filter(known -> known.input().equals(input)).isPresent();
    }
}
