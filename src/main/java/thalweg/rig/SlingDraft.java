package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.units.Length;

/**
 * A sling round a point as it was typed or read, right or wrong; empty is not stated.
 *
 * @param tie how it goes round
 * @param widthMetres of the point, between the places where the sling's sides leave it [m]
 * @param aroundMetres the girth of the point [m]
 * @param reachMetres from the point to the sling's end [m]
 * @param stiffnessKilonewtons force per unit strain of one strand [kN]
 * @param strandKilonewtons strength of one strand [kN]
 * @param knotEfficiency share of the strength that its knot leaves [-]
 * @param textile how far its strands have suffered
 */
public record SlingDraft(
        Optional<SlingTie> tie,
        OptionalDouble widthMetres,
        OptionalDouble aroundMetres,
        OptionalDouble reachMetres,
        OptionalDouble stiffnessKilonewtons,
        OptionalDouble strandKilonewtons,
        OptionalDouble knotEfficiency,
        Textile textile) {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** A sling that reaches to the master, of which only what has no default is stated. */
    public static SlingDraft of(SlingTie tie, double widthMetres) {
        return new SlingDraft(
                Optional.of(tie), OptionalDouble.of(widthMetres), NONE, NONE, NONE, NONE, NONE, Textile.UNKNOWN);
    }

    static SlingDraft of(RigSling sling) {
        return new SlingDraft(
                Optional.of(sling.tie()),
                sling.tie().sides() > 1 || sling.width().metres() > 0
                        ? OptionalDouble.of(sling.width().metres())
                        : NONE,
                metres(sling.around()),
                metres(sling.reach()),
                Stated.kilonewtons(sling.stiffness()),
                Stated.kilonewtons(sling.strandStrength()),
                sling.knotEfficiency(),
                sling.textile());
    }

    private static OptionalDouble metres(Optional<Length> length) {
        return length.map(Length::metres).map(OptionalDouble::of).orElse(NONE);
    }

    /** The same sling whose end hangs that far from the point [m]. */
    public SlingDraft withReach(double metres) {
        return new SlingDraft(
                tie,
                widthMetres,
                aroundMetres,
                OptionalDouble.of(metres),
                stiffnessKilonewtons,
                strandKilonewtons,
                knotEfficiency,
                textile);
    }

    /** The same sling round a point of that girth [m]. */
    public SlingDraft withAround(double metres) {
        return new SlingDraft(
                tie,
                widthMetres,
                OptionalDouble.of(metres),
                reachMetres,
                stiffnessKilonewtons,
                strandKilonewtons,
                knotEfficiency,
                textile);
    }

    /** The same sling of strands that stretch so much [kN]. */
    public SlingDraft withStiffness(double kilonewtons) {
        return new SlingDraft(
                tie,
                widthMetres,
                aroundMetres,
                reachMetres,
                OptionalDouble.of(kilonewtons),
                strandKilonewtons,
                knotEfficiency,
                textile);
    }

    /** The same sling of strands of known strength [kN], and the share of it that its knot leaves [-]. */
    public SlingDraft withStrength(double kilonewtons, double efficiency) {
        return new SlingDraft(
                tie,
                widthMetres,
                aroundMetres,
                reachMetres,
                stiffnessKilonewtons,
                OptionalDouble.of(kilonewtons),
                OptionalDouble.of(efficiency),
                textile);
    }

    /** The same sling of strands of which that is known. */
    public SlingDraft withTextile(Textile known) {
        return new SlingDraft(
                tie,
                widthMetres,
                aroundMetres,
                reachMetres,
                stiffnessKilonewtons,
                strandKilonewtons,
                knotEfficiency,
                known);
    }
}
