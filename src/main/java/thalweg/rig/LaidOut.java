package thalweg.rig;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;

/**
 * One way of rigging the points of a comparison.
 *
 * @param kind the layout
 * @param focusMoved whether the focus is not the one that was given but {@link FindBestFocus}'s
 * @param answer what the model says; empty where the points cannot be rigged so
 * @param saying they cannot; empty text where they can
 */
public record LaidOut(RigKind kind, boolean focusMoved, Optional<RigAnswer> answer, Sentence saying) {

    public LaidOut {
        if (answer.isPresent() != saying.equals(Sentence.NONE)) {
            throw new IllegalArgumentException("a layout has an answer, or a reason why not");
        }
    }

    /** "focused", "focused with the focus moved". */
    public String label() {
        return called().toString();
    }

    /** Why there is no answer, in English. */
    public String why() {
        return saying.toString();
    }

    /** Its label as it is said. */
    Sentence called() {
        return moved(Sentence.word(word()));
    }

    /** The same at the beginning of a sentence. */
    Sentence calledFirst() {
        return moved(Sentence.word(Character.toUpperCase(word().charAt(0)) + word().substring(1)));
    }

    private Sentence moved(Sentence kindOfRig) {
        return focusMoved ? Sentence.of("{0} with the focus moved", kindOfRig) : kindOfRig;
    }

    private String word() {
        return kind == RigKind.LOOP ? "triangle" : kind.word();
    }

    /** Whether the master stays held when any one point lets go. */
    boolean holdsEveryLoss() {
        return known().losses().stream().allMatch(PointLoss::held);
    }

    /** Whether the master stays held when any one strand is cut. */
    boolean holdsEveryCut() {
        return known().cuts().stream().allMatch(StrandCut::held);
    }

    /** Whether some part is known to be weaker than what a loss puts on it. */
    boolean knownTooWeak() {
        return known().losses().stream()
                .flatMap(loss -> loss.aftermath().stream())
                .anyMatch(after -> after.within().verdict().equals(Optional.of(false)));
    }

    /** How far the master drops at most when a point goes [m], 0 or more; infinite where a loss is not held. */
    public double farthestDrop() {
        if (!holdsEveryLoss()) {
            return Double.POSITIVE_INFINITY;
        }
        return known().losses().stream()
                .mapToDouble(loss ->
                        Math.max(0, loss.aftermath().orElseThrow().drop().metres()))
                .max()
                .orElse(0);
    }

    /** How far it falls at most before anything holds again [m]. */
    double farthestFall() {
        return known().losses().stream()
                .flatMap(loss -> loss.aftermath().stream())
                .mapToDouble(after -> after.freeTravel().metres())
                .max()
                .orElse(0);
    }

    /**
     * The least strength over hardest steady pull, of all points [-], with what friction may put on a point; empty where a
     * strength is unknown.
     */
    public OptionalDouble leastRatio() {
        RigInput input = known().input();
        return input.unknownStrengths().isEmpty()
                ? input.points().stream()
                        .mapToDouble(point ->
                                input.strengthOf(point).left().orElseThrow().inKilonewtons()
                                        / known().counted(point.name()).inKilonewtons())
                        .min()
                : OptionalDouble.empty();
    }

    /** "stated" where every strength is the stated one, else "taken". */
    String believed() {
        return known().input().believed();
    }

    /** The hardest steady pull on any point [kN], with what friction may put on it. */
    public double hardestPull() {
        return known().input().points().stream()
                .mapToDouble(point -> hardestPull(point.name()))
                .max()
                .orElseThrow();
    }

    /** The largest share that any point may carry, anywhere in the sector, with friction [-]. */
    public double largestShare() {
        RigAnswer answer = known();
        double most = answer.sector().directions().stream()
                .flatMap(state -> state.points().stream())
                .mapToDouble(PointForce::share)
                .max()
                .orElseThrow();
        return answer.friction().map(FrictionRange::shares).orElse(List.of()).stream()
                .mapToDouble(ShareRange::most)
                .max()
                .stream()
                .map(friction -> Math.max(most, friction))
                .findFirst()
                .orElse(most);
    }

    private double hardestPull(String point) {
        return known().hardest(point).inKilonewtons();
    }

    /** The verdict on one letter; empty where the layout has no answer. */
    public Optional<RigVerdict> verdict(CheckLetter letter) {
        return answer.flatMap(known -> known.checks().stream()
                .filter(check -> check.letter() == letter)
                .map(LetterCheck::verdict)
                .min(Comparator.naturalOrder()));
    }

    private RigAnswer known() {
        return answer.orElseThrow();
    }
}
