package thalweg.rig;

import java.util.List;

/**
 * All layouts on the same points under the same load, with what speaks for one of them.
 *
 * @param basis the rig whose points, load and material they share
 * @param priority what matters most to whoever asked
 * @param layouts in a fixed order; a layout that cannot be rigged is there with its reason
 * @param questions the two that decide
 * @param recommendation what the figures come to; no advice to hang on it
 */
public record RigComparison(
        RigInput basis,
        RigPriority priority,
        List<LaidOut> layouts,
        List<RigQuestion> questions,
        RigRecommendation recommendation) {

    public RigComparison {
        layouts = List.copyOf(layouts);
        questions = List.copyOf(questions);
    }
}
