package thalweg.rig;

import java.util.Optional;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Length;

/**
 * Works out what a redirect bears, {@code 2 T sin(deflection / 2)} with the same tension on both sides, and what the rig
 * does without it.
 */
final class FindRedirect {

    /** Between directions that are looked at for the worst, at most [°]. */
    private static final double STEP_DEGREES = 0.1;

    private final RigInput input;
    private final RigRedirect redirect;
    private final RigLoad beyond;

    /** From the master towards the redirect, a unit vector. */
    private final Vector3 before;

    private FindRedirect(RigInput input, RigRedirect redirect) {
        this.input = input;
        this.redirect = redirect;
        this.beyond = redirect.beyond();
        this.before = input.load().direction(input.load().toward());
    }

    /**
     * The figures; empty for a rig without a redirect.
     *
     * @param steady the rig at rest under the pull towards the redirect
     */
    static Optional<RedirectFigures> of(RigInput input, RigState steady) {
        return input.redirect().map(redirect -> new FindRedirect(input, redirect).figures(steady));
    }

    private RedirectFigures figures(RigState steady) {
        Angle worst = beyond.toward();
        double sway = beyond.sway().degrees();
        int steps = (int) Math.ceil(2 * sway / STEP_DEGREES);
        for (int i = 0; i <= steps && steps > 0; i++) {
            Angle toward = new Angle(beyond.toward().degrees() + sway * (2.0 * i / steps - 1));
            if (deflection(toward) > deflection(worst)) {
                worst = toward;
            }
        }
        double atAim = deflection(beyond.toward());
        return new RedirectFigures(
                redirect, new Angle(atAim), force(atAim), force(deflection(worst)), worst, freed(steady, atAim));
    }

    private double deflection(Angle toward) {
        return before.degreesTo(beyond.direction(toward));
    }

    private Force force(double deflection) {
        return new Force(2 * beyond.weight().newtons() * Math.sin(Math.toRadians(deflection / 2)));
    }

    private RedirectFigures.Freed freed(RigState steady, double turn) {
        RigInput free = input.freed();
        return new RedirectFigures.Freed(
                new RestState(free).under(beyond.toward()),
                Analyze.worst(free),
                new Angle(turn),
                slack(steady.master()));
    }

    /** The way over the redirect, less the straight way from the master to the load where it hangs. */
    private Optional<Length> slack(Vector3 master) {
        double toRedirect = master.distance(redirect.at());
        double hanging = beyond.ropeOut().metres() - toRedirect;
        if (hanging <= 0) {
            return Optional.empty();
        }
        Vector3 load = redirect.at().plus(beyond.direction(beyond.toward()).times(hanging));
        return Optional.of(new Length(Math.max(0, toRedirect + hanging - master.distance(load))));
    }
}
