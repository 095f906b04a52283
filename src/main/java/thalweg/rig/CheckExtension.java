package thalweg.rig;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;

/** Judges the letters NE of the checklist: how far the master drops when a point lets go. */
final class CheckExtension {

    /**
     * Design limit of a load-sharing anchor study [m].
     *
     * @see "McKently, Parker and Smith, International Technical Rescue Symposium: extension at most 30 cm"
     */
    static final double DESIGN_LIMIT_METRES = 0.30;

    /** Up to this drop, and without a fall, it is called good [m]; our choice. */
    static final double GOOD_METRES = 0.10;

    /** A free travel up to this is not called a fall [m]; our choice. */
    static final double FALL_METRES = 0.005;

    private CheckExtension() {}

    static LetterCheck of(List<PointLoss> losses) {
        Optional<PointLoss> farthest = losses.stream()
                .filter(PointLoss::held)
                .max(Comparator.comparingDouble(
                        loss -> loss.aftermath().orElseThrow().drop().metres()));
        if (farthest.isEmpty()) {
            return new LetterCheck(
                    CheckLetter.NE,
                    RigVerdict.UNKNOWN,
                    OptionalDouble.empty(),
                    Sentence.of(
                            "No loss leaves anything for the master to hang on, so there is no extension to judge."));
        }
        boolean falls = losses.stream()
                .flatMap(loss -> loss.aftermath().stream())
                .anyMatch(after -> after.freeTravel().metres() > FALL_METRES);
        double drop =
                Math.max(0, farthest.get().aftermath().orElseThrow().drop().metres());
        RigVerdict verdict = drop > DESIGN_LIMIT_METRES
                ? RigVerdict.POOR
                : drop > GOOD_METRES || falls ? RigVerdict.WATCH : RigVerdict.GOOD;
        return new LetterCheck(
                CheckLetter.NE,
                verdict,
                OptionalDouble.of(drop),
                Sentence.of("{0} {1}", says(farthest.get()), line(verdict, falls)));
    }

    private static Sentence says(PointLoss loss) {
        Aftermath after = loss.aftermath().orElseThrow();
        String drop = Figures.metres(Math.max(0, after.drop().metres()));
        String swing = Figures.metres(after.swing().metres());
        return after.freeTravel().metres() > FALL_METRES
                ? Sentence.of(
                        "The master drops farthest when {0} goes: by {1}, {2} of it in free fall, with a swing of {3}.",
                        loss.point(), drop, Figures.metres(after.freeTravel().metres()), swing)
                : Sentence.of(
                        "The master drops farthest when {0} goes: by {1}, with a swing of {2}.",
                        loss.point(), drop, swing);
    }

    private static Sentence line(RigVerdict verdict, boolean falls) {
        String limit = Figures.metres(DESIGN_LIMIT_METRES);
        String good = Figures.metres(GOOD_METRES);
        if (verdict == RigVerdict.POOR) {
            return Sentence.of(
                    "That is past the {0} to which one study of load-sharing anchors kept its designs.", limit);
        }
        return falls
                ? Sentence.of(
                        "It falls before a strand holds again; our own line for good is {0} without a fall, and one"
                                + " study of load-sharing anchors kept its designs to {1}.",
                        good, limit)
                : Sentence.of(
                        "It never hangs on nothing; our own line for good is {0} without a fall, and one study of"
                                + " load-sharing anchors kept its designs to {1}.",
                        good, limit);
    }
}
