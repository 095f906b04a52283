package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.rig.Analyze;
import thalweg.rig.CheckedRig;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigDraft;
import thalweg.rig.RigInput;

/**
 * What the calculator answered.
 *
 * @param figures where the rig can be computed
 * @param refusals why it cannot
 * @param studies what was studied besides
 */
record RigFigures(Optional<RigAnswer> figures, List<Sentence> refusals, RigStudies studies) {

    static final RigFigures NONE = new RigFigures(Optional.empty(), List.of(), RigStudies.NONE);

    RigFigures {
        refusals = List.copyOf(refusals);
    }

    static RigFigures of(Optional<RigDraft> draft) {
        if (draft.isEmpty()) {
            return NONE;
        }
        CheckedRig checked = draft.get().check();
        return new RigFigures(
                checked.input().map(Analyze::of),
                checked.findings().stream().map(one -> one.saying()).toList(),
                RigStudies.NONE);
    }

    RigFigures with(RigStudies others) {
        return new RigFigures(figures, refusals, others);
    }

    /** Whether the figures are about that rig. */
    boolean isOf(RigInput input) {
        return figures.filter(known -> known.input().equals(input)).isPresent();
    }
}
