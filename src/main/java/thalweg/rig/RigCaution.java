package thalweg.rig;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What whoever reads an answer must be told beside it. Its words are kept by key in the phrases. */
public enum RigCaution {
    /** An aid for trained people and no replacement for anything. */
    TRAINING("rig.caution.training"),
    /** A model, not a measurement. */
    MODEL("rig.caution.model"),
    /** Bounces, falls and the loss of a point are not in these figures. */
    STEADY_ONLY("rig.caution.steady_only"),
    /** What is given after a loss is the peak of a smooth model. */
    PEAK("rig.caution.peak"),
    /** What is left after a loss swings across edges. */
    SWING("rig.caution.swing"),
    /** The model does not see what is wrong with the rock, the points and the material. */
    UNSEEN("rig.caution.unseen"),
    /** A tree's roots and rot are in no figure. */
    TREE("rig.caution.tree"),
    /** A boulder may roll, slide or cut. */
    BOULDER("rig.caution.boulder"),
    /** A chockstone holds in the direction in which it is wedged. */
    CHOCKSTONE("rig.caution.chockstone"),
    /** A thread is as strong as its thinnest bridge of rock, and its edges cut. */
    THREAD("rig.caution.thread"),
    /** What is slung round a point bends over it and may slip along it. */
    SLUNG("rig.caution.slung"),
    /** The sides of a sling spread wider than any table lists. */
    SLING_FLAT("rig.caution.sling_flat"),
    /** Some strengths are not known. */
    STRENGTH_UNKNOWN("rig.caution.strength_unknown"),
    /** A connector is weaker than its figures where it is pulled otherwise than it was tested. */
    CONNECTOR("rig.caution.connector"),
    /** Strands meet at a flat angle, where small errors of length change the forces much. */
    FLAT("rig.caution.flat");

    /** A swing of more than this is told [m]; our choice, what a person would see. */
    private static final double SWINGS_METRES = 0.01;

    private final String key;

    RigCaution(String key) {
        this.key = key;
    }

    /** Under which the phrases keep its sentence. */
    public String key() {
        return key;
    }

    /** Those that stand beside an answer, in the order of reading. */
    public static List<RigCaution> of(RigAnswer answer) {
        return Arrays.stream(values())
                .filter(caution -> caution.concerns(answer))
                .toList();
    }

    private boolean concerns(RigAnswer answer) {
        return switch (this) {
            case TRAINING, MODEL, STEADY_ONLY, UNSEEN -> true;
            case PEAK -> answer.losses().stream().anyMatch(PointLoss::held);
            case SWING ->
                answer.losses().stream()
                        .flatMap(loss -> loss.aftermath().stream())
                        .anyMatch(after -> after.swing().metres() > SWINGS_METRES);
            case TREE -> has(answer, PointKind.TREE);
            case BOULDER -> has(answer, PointKind.BOULDER);
            case CHOCKSTONE -> has(answer, PointKind.CHOCKSTONE);
            case THREAD -> has(answer, PointKind.THREAD);
            case SLUNG ->
                answer.input().points().stream().anyMatch(point -> point.sling().isPresent());
            case SLING_FLAT -> SlungFigures.of(answer).stream().anyMatch(SlungFigures::isFlat);
            case STRENGTH_UNKNOWN -> !answer.input().unknownStrengths().isEmpty();
            case CONNECTOR -> answer.safety().stream().anyMatch(part -> part.kind() == PartSafety.Kind.CONNECTOR);
            case FLAT ->
                answer.sector()
                        .widest()
                        .filter(widest -> widest.angle().degrees() > CheckAngle.NEVER_PAST_DEGREES)
                        .isPresent();
        };
    }

    private static boolean has(RigAnswer answer, PointKind kind) {
        return answer.input().points().stream().anyMatch(point -> point.is().equals(Optional.of(kind)));
    }

    /** Whether it is about points that nobody placed, or what is slung round them. */
    public boolean isNatural() {
        return switch (this) {
            case TREE, BOULDER, CHOCKSTONE, THREAD, SLUNG, SLING_FLAT -> true;
            default -> false;
        };
    }
}
