package thalweg.rig;

import java.util.Optional;
import thalweg.units.Angle;

/**
 * Finds how the rope pulls at a master between it and a redirect: always towards the redirect, with the load's weight,
 * wherever the master comes to rest.
 *
 * <p>The rope's part of the energy is its tension times the way from the master to the redirect, which is convex, so the
 * state of rest is found with it as with any other load. Friction at the redirect is not counted. In that state a load
 * that keeps its direction pulls the same, and from there on the rig is one under such a load.
 */
final class AimAtRedirect {

    /** A master that comes to rest nearer to the redirect than this has been drawn up to it [m]; our choice. */
    static final double DRAWN_UP_METRES = 0.02;

    private static final Angle NO_SWAY = new Angle(0);

    private AimAtRedirect() {}

    /**
     * The rig under the pull of the rope over the redirect; empty where the rig would be drawn up to the redirect.
     *
     * @param input the rig with its load hanging free
     * @param redirect not at the focus, with that load beyond it
     */
    static Optional<RigInput> of(RigInput input, RigRedirect redirect) {
        RigLoad free = redirect.beyond();
        Vector3 toFocus = redirect.at().minus(input.rig().focus());
        Vector3 force = toFocus.times(free.weight().inKilonewtons() / toFocus.length());
        Equilibrium rest = FindRest.of(LayStrands.of(input), new Pull(force, Optional.of(redirect.at())));
        Vector3 line = redirect.at().minus(rest.master());
        if (line.length() < DRAWN_UP_METRES) {
            return Optional.empty();
        }
        Vector3 along = line.times(1 / line.length());
        RigLoad pull = new RigLoad(
                free.weight(),
                free.mass(),
                new Angle(Math.toDegrees(Math.atan2(along.x(), -along.y()))),
                NO_SWAY,
                new Angle(Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, along.z()))))),
                free.ropeOut(),
                free.ropeStiffness(),
                free.spread(),
                free.factor());
        return Optional.of(
                new RigInput(input.name(), input.points(), pull, input.rig(), input.assumed(), Optional.of(redirect)));
    }
}
