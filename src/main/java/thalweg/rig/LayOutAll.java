package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import thalweg.fault.Sentence;
import thalweg.units.Angle;

/** Rigs the points of one rig in every layout, with the same focus, load and material. */
final class LayOutAll {

    /** A limited rig of the comparison lets its load go at least so far to either side before a knot stops it [°]. */
    static final double LEAST_FREE_DEGREES = 5;

    /** Strands between limiter knots, so that one cut does not lose everything. */
    private static final long SLIDER_STRANDS = 2;

    /** A focus that moves less is left where it is [m]. */
    private static final double MOVED_METRES = 0.01;

    private final RigInput basis;

    LayOutAll(RigInput basis) {
        this.basis = basis;
    }

    /** Every layout, each worked out. */
    List<LaidOut> all() {
        List<LaidOut> layouts = new ArrayList<>();
        if (basis.points().size() == 1) {
            layouts.add(laid(RigKind.SINGLE));
            return layouts;
        }
        LaidOut focused = laid(RigKind.FOCUSED);
        layouts.add(focused);
        focused.answer().flatMap(answer -> moved(answer.input())).ifPresent(layouts::add);
        layouts.add(laid(RigKind.LIMITED));
        layouts.add(laid(RigKind.SLIDING));
        layouts.add(laid(RigKind.LOOP));
        return layouts;
    }

    private LaidOut laid(RigKind kind) {
        CheckedRig checked = rig(kind, basis.statedLoad().sway().degrees());
        return checked.input()
                .map(input -> new LaidOut(kind, false, Optional.of(Analyze.of(input)), Sentence.NONE))
                .orElseGet(() -> new LaidOut(kind, false, Optional.empty(), reason(kind, checked)));
    }

    private Sentence reason(RigKind kind, CheckedRig checked) {
        int count = basis.points().size();
        return count > kind.mostPoints()
                ? Sentence.of("It takes {0} points, and here are {1}.", kind.mostPoints(), count)
                : Sentence.joined(
                        " ", checked.findings().stream().map(RigFinding::saying).toList());
    }

    /** The layout where the load sways that far to either side [°], or what keeps the points from being rigged so. */
    CheckedRig rig(RigKind kind, double sway) {
        RigDraft draft = RigDraft.of(basis).withLoad(LoadDraft.of(basis).withSway(sway));
        return kind == basis.rig().kind()
                ? draft.check()
                : draft.withRig(setup(kind, sway)).check();
    }

    private SetupDraft setup(RigKind kind, double sway) {
        SetupDraft stated = SetupDraft.of(basis);
        Angle toward = basis.load().toward();
        double atMaster = basis.redirect().isPresent() ? 0 : sway;
        double free = Math.max(atMaster, LEAST_FREE_DEGREES);
        return new SetupDraft(
                Optional.of(kind),
                stated.focus(),
                stated.stiffnessKilonewtons(),
                kind.takes("strands") ? stated.strands() : OptionalLong.empty(),
                Map.of(),
                Optional.empty(),
                kind.takes("friction") ? stated.friction() : OptionalDouble.empty(),
                kind == RigKind.LIMITED
                        ? LimitDraft.over(toward.degrees() - free, toward.degrees() + free)
                                .withStrands(SLIDER_STRANDS)
                        : LimitDraft.NONE,
                stated.strandKilonewtons(),
                stated.knotEfficiency(),
                stated.traits());
    }

    private static Optional<LaidOut> moved(RigInput focused) {
        return FindBestFocus.of(focused)
                .found()
                .filter(best -> best.focus().distance(focused.rig().focus()) > MOVED_METRES)
                .flatMap(best -> RigDraft.of(focused)
                        .withRig(SetupDraft.of(focused).withFocus(best.focus()))
                        .check()
                        .input())
                .map(input -> new LaidOut(RigKind.FOCUSED, true, Optional.of(Analyze.of(input)), Sentence.NONE));
    }
}
