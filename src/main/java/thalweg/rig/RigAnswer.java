package thalweg.rig;

import java.util.List;

/**
 * What the model says about a rig. It holds under the assumptions of {@link RigAssumption} and the cautions of
 * {@link RigCaution}, which are shown beside it.
 *
 * @param input what was computed
 * @param steady the rig at rest under a pull at the aim
 * @param sector the same across the directions of the load
 * @param checks the letters that were judged, in the order of the checklist
 */
public record RigAnswer(RigInput input, RigState steady, RigSector sector, List<LetterCheck> checks) {

    public RigAnswer {
        checks = List.copyOf(checks);
    }

    /** Keys of the rig file that were not stated and stand at their defaults. */
    public List<String> assumed() {
        return input.assumed();
    }
}
