package thalweg.tui.screen;

import java.util.Optional;
import thalweg.rig.PointLoss;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigSector;
import thalweg.rig.RigState;

/**
 * What of a rig is shown.
 *
 * @param top first line of the text
 * @param textOnly whether a narrow terminal shows the text in place of the drawing
 * @param lost the point, counted from 0, that the drawing shows before and after its loss; below 0 for none
 * @param swung how many directions of the sector away from the aim the drawing shows the load, negative to the left
 */
record RigView(int top, boolean textOnly, int lost, int swung) {

    static final RigView FIRST = new RigView(0, false, -1, 0);

    RigView scrolledTo(int line) {
        return new RigView(line, textOnly, lost, swung);
    }

    RigView turned() {
        return new RigView(0, !textOnly, lost, swung);
    }

    /** The top of the text, also where a terminal is so small that it shows the drawing or the text. */
    RigView atText() {
        return new RigView(0, true, lost, swung);
    }

    /** The loss of the next point, after the last one the whole rig again. */
    RigView nextLoss(int points) {
        return new RigView(0, false, lost + 1 < points ? lost + 1 : -1, 0);
    }

    /** The load swung on by so many directions, as far as the sway goes; no loss is shown then. */
    RigView swung(int by) {
        int half = RigSector.DIRECTIONS / 2;
        return new RigView(top, false, -1, Math.max(-half, Math.min(half, swung + by)));
    }

    /** The state that the drawing shows where no loss is. */
    RigState state(RigAnswer answer) {
        return answer.sector().directions().get(RigSector.DIRECTIONS / 2 + swung);
    }

    Optional<PointLoss> loss(Optional<RigAnswer> answer) {
        return answer.filter(known -> lost >= 0 && lost < known.losses().size())
                .map(known -> known.losses().get(lost));
    }
}
