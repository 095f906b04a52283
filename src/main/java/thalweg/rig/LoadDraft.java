package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;
import thalweg.units.Mass;

/**
 * A load as it was typed or read, right or wrong; empty is not stated.
 *
 * @param massKilograms [kg]; this or the force
 * @param forceKilonewtons [kN]; this or the mass
 * @param towardDegrees aim [°] from straight down, positive to the right
 * @param swayDegrees to either side of the aim [°]
 * @param leanOutDegrees out of the wall [°]
 * @param ropeOutMetres below the master [m]
 * @param ropeStiffnessKilonewtons of that rope, force per unit strain [kN]
 * @param spread of the load [-]
 * @param factor by which the pull is larger than that of the mass or force at rest [-]
 */
public record LoadDraft(
        OptionalDouble massKilograms,
        OptionalDouble forceKilonewtons,
        OptionalDouble towardDegrees,
        OptionalDouble swayDegrees,
        OptionalDouble leanOutDegrees,
        OptionalDouble ropeOutMetres,
        OptionalDouble ropeStiffnessKilonewtons,
        OptionalDouble spread,
        OptionalDouble factor) {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** A load of which no factor is stated. */
    public LoadDraft(
            OptionalDouble massKilograms,
            OptionalDouble forceKilonewtons,
            OptionalDouble towardDegrees,
            OptionalDouble swayDegrees,
            OptionalDouble leanOutDegrees,
            OptionalDouble ropeOutMetres,
            OptionalDouble ropeStiffnessKilonewtons,
            OptionalDouble spread) {
        this(
                massKilograms,
                forceKilonewtons,
                towardDegrees,
                swayDegrees,
                leanOutDegrees,
                ropeOutMetres,
                ropeStiffnessKilonewtons,
                spread,
                NONE);
    }

    /** A mass that hangs; everything else at its default. */
    public static LoadDraft ofMass(double kilograms, double towardDegrees, double swayDegrees) {
        return new LoadDraft(
                OptionalDouble.of(kilograms),
                NONE,
                OptionalDouble.of(towardDegrees),
                OptionalDouble.of(swayDegrees),
                NONE,
                NONE,
                NONE,
                NONE);
    }

    /** A mass that hangs, of which nobody has said how far it sways; everything else at its default. */
    public static LoadDraft ofMass(double kilograms, double towardDegrees) {
        return new LoadDraft(
                OptionalDouble.of(kilograms), NONE, OptionalDouble.of(towardDegrees), NONE, NONE, NONE, NONE, NONE);
    }

    /** A force that pulls; everything else at its default. */
    public static LoadDraft ofForce(double kilonewtons, double towardDegrees, double swayDegrees) {
        return new LoadDraft(
                NONE,
                OptionalDouble.of(kilonewtons),
                OptionalDouble.of(towardDegrees),
                OptionalDouble.of(swayDegrees),
                NONE,
                NONE,
                NONE,
                NONE);
    }

    static LoadDraft of(RigInput input) {
        RigLoad load = input.statedLoad();
        OptionalDouble mass =
                load.mass().map(Mass::kilograms).map(OptionalDouble::of).orElse(NONE);
        return new LoadDraft(
                mass,
                mass.isPresent() ? NONE : OptionalDouble.of(load.atRest().inKilonewtons()),
                OptionalDouble.of(load.toward().degrees()),
                stated(input, "sway_deg", load.sway().degrees()),
                stated(input, "lean_out_deg", load.leanOut().degrees()),
                stated(input, "rope_out_m", load.ropeOut().metres()),
                Stated.kilonewtons(load.ropeStiffness()),
                stated(input, "load_spread", load.spread()),
                load.factor() == 1 ? NONE : OptionalDouble.of(load.factor()));
    }

    private static OptionalDouble stated(RigInput input, String key, double value) {
        return input.assumed().contains(key) ? NONE : OptionalDouble.of(value);
    }

    /** What is wrong with its mass or force, beginning in lower case; empty where nothing is. */
    public Optional<Sentence> objection() {
        return massKilograms.isPresent()
                ? Range.MASS.objection(massKilograms.getAsDouble())
                : forceKilonewtons.isPresent()
                        ? Range.FORCE.objection(forceKilonewtons.getAsDouble())
                        : Optional.empty();
    }

    /** The same load with another aim. */
    public LoadDraft withToward(double degrees) {
        return new LoadDraft(
                massKilograms,
                forceKilonewtons,
                OptionalDouble.of(degrees),
                swayDegrees,
                leanOutDegrees,
                ropeOutMetres,
                ropeStiffnessKilonewtons,
                spread,
                factor);
    }

    /** The same load that sways otherwise. */
    public LoadDraft withSway(double degrees) {
        return new LoadDraft(
                massKilograms,
                forceKilonewtons,
                towardDegrees,
                OptionalDouble.of(degrees),
                leanOutDegrees,
                ropeOutMetres,
                ropeStiffnessKilonewtons,
                spread,
                factor);
    }

    /** The same load that leans otherwise out of the wall. */
    public LoadDraft withLeanOut(double degrees) {
        return new LoadDraft(
                massKilograms,
                forceKilonewtons,
                towardDegrees,
                swayDegrees,
                OptionalDouble.of(degrees),
                ropeOutMetres,
                ropeStiffnessKilonewtons,
                spread,
                factor);
    }

    /** The same load that pulls so many times as hard as at rest. */
    public LoadDraft withFactor(double times) {
        return with(OptionalDouble.of(times));
    }

    /** The same load at rest. */
    public LoadDraft withoutFactor() {
        return with(NONE);
    }

    /**
     * Another load in the same direction, on the same rope.
     *
     * @param kilograms that hang [kg]; this or the force
     * @param kilonewtons that pull [kN]; this or the mass
     * @param times as hard as at rest [-]; empty is none
     */
    public LoadDraft pulling(OptionalDouble kilograms, OptionalDouble kilonewtons, OptionalDouble times) {
        return new LoadDraft(
                kilograms,
                kilonewtons,
                towardDegrees,
                swayDegrees,
                leanOutDegrees,
                ropeOutMetres,
                ropeStiffnessKilonewtons,
                spread,
                times);
    }

    private LoadDraft with(OptionalDouble times) {
        return pulling(massKilograms, forceKilonewtons, times);
    }
}
