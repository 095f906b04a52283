package thalweg.sheet;

import java.util.List;
import java.util.Optional;
import thalweg.drawing.Drawing;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;
import thalweg.units.Angle;
import thalweg.units.Force;

/**
 * A rig analysis read back into figures, ready to be shown.
 *
 * @param entry the name of the logbook entry it is kept in
 * @param on when it was made
 * @param by who attached it; empty text where unknown
 * @param program version of the program that computed it
 * @param rig what the rig is called; empty text where it has no name
 * @param layout how the strands are laid, in a word
 * @param load what hangs there and how it may move, in words with units
 * @param points in the order of the rig, not empty
 * @param angle the largest between two loaded strands at the master, at the aim [°]; empty with fewer than two
 * @param worstAngle the largest over the sector [°]
 * @param losses what comes of the loss of each point, in the order of the rig
 * @param checks lines of the checklist, in order
 * @param safety how many times each part would hold the largest forces on it
 * @param strengths what the strengths in these rest on, a sentence a line
 * @param material what it takes to rig it, in words with units; empty text where that was not computed
 * @param assumed what nobody stated, so that the program assumed it
 * @param drawing the anchor with its forces
 * @param remarks what the records say of the points that it counts on
 * @param staleChanges the parts that have changed since, each with what became of it; empty where none has
 */
public record AnalysisFigures(
        Uid entry,
        PartialDate on,
        String by,
        String program,
        String rig,
        String layout,
        String load,
        List<PointFigures> points,
        Optional<Angle> angle,
        Optional<Angle> worstAngle,
        List<LossFigures> losses,
        List<CheckLine> checks,
        List<SafetyLine> safety,
        List<String> strengths,
        String material,
        List<Assumption> assumed,
        Drawing drawing,
        List<PointRemarks.Remark> remarks,
        List<String> staleChanges) {

    /**
     * The force on one point.
     *
     * @param name of the point
     * @param steady at the aim
     * @param worst the largest over the sector, with what friction may add
     * @param worstAt the direction of the load at which that is [°], from straight down, positive to the right as seen
     *     by someone who faces the anchor
     * @param byFriction whether friction adds to the largest
     * @param share of the sum of the forces on all points, at the aim, 0 to 1
     */
    public record PointFigures(
            String name, Force steady, Force worst, Angle worstAt, boolean byFriction, double share) {

        public PointFigures {
            if (name.isBlank() || !(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("a point has a name and a share from 0 to 1");
            }
        }
    }

    /**
     * One line of the checklist.
     *
     * @param letter or letters that stand for it: E, A, R, NE, S or T
     * @param verdict in a word
     * @param why one sentence
     */
    public record CheckLine(String letter, String verdict, String why) {

        public CheckLine {
            if (letter.isBlank() || verdict.isBlank() || why.isBlank()) {
                throw new IllegalArgumentException("a check says which, how it came out and why");
            }
        }
    }

    /**
     * How many times one part would hold the largest forces on it, by what is left of its strength.
     *
     * @param part a point or a strand
     * @param steady in words, at rest over the sector: how many times, or why that is unknown
     * @param afterLoss in words, over the model peak after the loss of a point
     */
    public record SafetyLine(String part, String steady, String afterLoss) {

        public SafetyLine {
            if (part.isBlank() || steady.isBlank() || afterLoss.isBlank()) {
                throw new IllegalArgumentException("a line says of which part, and both figures or why there are none");
            }
        }
    }

    /**
     * Something that nobody stated.
     *
     * @param key its name in a rig file
     * @param value what the program took instead, with its unit; empty text where that was not kept
     */
    public record Assumption(String key, String value) {

        public Assumption {
            if (key.isBlank()) {
                throw new IllegalArgumentException("an assumption is about something");
            }
        }
    }

    public AnalysisFigures {
        points = List.copyOf(points);
        losses = List.copyOf(losses);
        checks = List.copyOf(checks);
        safety = List.copyOf(safety);
        strengths = List.copyOf(strengths);
        assumed = List.copyOf(assumed);
        remarks = List.copyOf(remarks);
        staleChanges = List.copyOf(staleChanges);
        if (points.isEmpty() || layout.isBlank() || load.isBlank() || program.isBlank()) {
            throw new IllegalArgumentException("an analysis is about points, a layout and a load");
        }
    }

    /** The same, attached by somebody of that name. */
    AnalysisFigures signed(String name) {
        return new AnalysisFigures(
                entry,
                on,
                name,
                program,
                rig,
                layout,
                load,
                points,
                angle,
                worstAngle,
                losses,
                checks,
                safety,
                strengths,
                material,
                assumed,
                drawing,
                remarks,
                staleChanges);
    }
}
