package thalweg.tui.screen;

import java.util.Optional;
import thalweg.rig.PointLoss;
import thalweg.rig.RigAnswer;

/**
 * What of a rig is shown.
 *
 * @param top first line of the text
 * @param textOnly whether a narrow terminal shows the text in place of the drawing
 * @param lost the point, counted from 0, that the drawing shows before and after its loss; below 0 for none
 */
record RigView(int top, boolean textOnly, int lost) {

    static final RigView FIRST = new RigView(0, false, -1);

    RigView scrolledTo(int line) {
        return new RigView(line, textOnly, lost);
    }

    RigView turned() {
        return new RigView(0, !textOnly, lost);
    }

    /** The top of the text, also where a terminal is so small that it shows the drawing or the text. */
    RigView atText() {
        return new RigView(0, true, lost);
    }

    /** The loss of the next point, after the last one the whole rig again. */
    RigView nextLoss(int points) {
        return new RigView(0, false, lost + 1 < points ? lost + 1 : -1);
    }

    Optional<PointLoss> loss(Optional<RigAnswer> answer) {
        return answer.filter(known -> lost >= 0 && lost < known.losses().size())
                .map(known -> known.losses().get(lost));
    }
}
