package thalweg.rig;

import java.util.List;
import java.util.Optional;
import thalweg.units.Force;
import thalweg.units.Length;

/**
 * What the model says about a rig. It holds under the assumptions of {@link RigAssumption} and the cautions of
 * {@link RigCaution}, which are shown beside it.
 *
 * @param input what was computed
 * @param steady the rig at rest under a pull at the aim
 * @param sector the same across the directions of the load
 * @param friction between which shares friction may hold a master that slides, at the aim; empty where it is tied
 * @param losses what happens when each point lets go, in the order of the input
 * @param cuts what happens when each strand is cut
 * @param checks the letters that were judged, in the order of the checklist
 * @param safety how many times each point, and then each strand, would hold the largest forces on it
 * @param material what it takes of webbing or cord, and of connectors
 * @param redirect what it bears over which the rope runs, and what its loss does; empty for a rig without one
 */
public record RigAnswer(
        RigInput input,
        RigState steady,
        RigSector sector,
        Optional<FrictionRange> friction,
        List<PointLoss> losses,
        List<StrandCut> cuts,
        List<LetterCheck> checks,
        List<PartSafety> safety,
        RigMaterial material,
        Optional<RedirectFigures> redirect) {

    public RigAnswer {
        losses = List.copyOf(losses);
        cuts = List.copyOf(cuts);
        checks = List.copyOf(checks);
        safety = List.copyOf(safety);
    }

    /** How far the limiter knots are from the focus, in the order of the points; empty for a rig without any. */
    public Optional<List<Length>> limits() {
        return input.rig().limiters().map(Limiters::fromFocus);
    }

    /** The hardest steady pull on a point over the sector, with what friction may add to it. */
    public Force hardest(String point) {
        return new FrictionAllowance(steady, friction).largest(sector.worstOf(point));
    }

    /** The steady pull that counts most against the strength of a point over the sector, with what friction may add to it. */
    Force counted(String point) {
        return new FrictionAllowance(steady, friction).counted(sector.countedOn(point));
    }

    /** Whether friction may add to the pull on a point, so that two figures are to be shown. */
    public boolean frictionAdds(String point) {
        return new FrictionAllowance(steady, friction).times(point) > 1;
    }

    /** Keys of the rig file that were not stated and stand at their defaults. */
    public List<String> assumed() {
        return input.assumed();
    }
}
