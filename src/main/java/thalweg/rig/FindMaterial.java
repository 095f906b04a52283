package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import thalweg.fault.Sentence;
import thalweg.units.Length;

/** Adds up what the strands of a rig, their knots and their tails take. */
final class FindMaterial {

    /** A leg of so many strands is a loop. */
    private static final int LOOP = 2;

    private final RigInput input;

    /** All strands but those of slings. */
    private final List<Strand> strands;

    private FindMaterial(RigInput input) {
        this.input = input;
        this.strands = LayStrands.of(input).strands().stream()
                .filter(strand -> StrandNames.slungPoint(input, strand.label()).isEmpty())
                .toList();
    }

    static RigMaterial of(RigInput input) {
        FindMaterial find = new FindMaterial(input);
        List<RigMaterial.Piece> pieces = new ArrayList<>(find.pieces());
        List<String> unknown = new ArrayList<>();
        int slings = 0;
        int legs = 0;
        for (int i = 0; i < input.points().size(); i++) {
            RigPoint point = input.points().get(i);
            if (point.sling().isPresent()) {
                slings++;
                legs += Slung.isLeg(point) ? 1 : 0;
                FindSlingMaterial.of(input, i).ifPresentOrElse(pieces::add, () -> unknown.add(point.name()));
            }
        }
        return new RigMaterial(pieces, input.points().size() + 1 - legs, find.knots() + slings, slings > 0, unknown);
    }

    private List<RigMaterial.Piece> pieces() {
        return switch (input.rig().kind()) {
            case SINGLE -> legs();
            case FOCUSED -> {
                double knot = LOOP * strands.size() * TakeUp.MASTER_KNOT_METRES;
                yield isGathered()
                        ? loop(knot, Sentence.of("one loop through all points, gathered in a knot at the master"))
                        : legs();
            }
            case SLIDING, LOOP -> loop(0, Sentence.of("one loop through all points"));
            case LIMITED -> {
                double knots = limiters() * input.rig().strands() * TakeUp.LIMITER_KNOT_METRES;
                yield loop(knots, Sentence.of("one loop through both points, with a limiter knot in each leg"));
            }
        };
    }

    /** Whether one loop through all points is gathered in a knot at the master. */
    private boolean isGathered() {
        return input.rig().strands() == LOOP && strands.size() > 1;
    }

    private int limiters() {
        return input.rig().limiters().isPresent() ? 2 : 0;
    }

    /** The bend that closes a loop, the knot that gathers legs, limiter knots, and a loop in each end of a lone strand. */
    private int knots() {
        return switch (input.rig().kind()) {
            case SINGLE -> legKnots();
            case FOCUSED -> isGathered() ? 2 : legKnots();
            case SLIDING, LOOP -> 1;
            case LIMITED -> 1 + limiters();
        };
    }

    private int legKnots() {
        return strands.stream()
                .mapToInt(leg -> leg.count() / LOOP + 2 * (leg.count() % LOOP))
                .sum();
    }

    /** Everything from one piece, closed by one ring bend. */
    private List<RigMaterial.Piece> loop(double knots, Sentence what) {
        double spans = strands.stream()
                .mapToDouble(strand -> strand.count() * strand.unloadedMetres())
                .sum();
        return List.of(new RigMaterial.Piece(1, new Length(spans + knots + TakeUp.ringBend()), what));
    }

    /** Each leg by itself: its strands in pairs as loops, and one that is over as a strand with a loop in each end. */
    private List<RigMaterial.Piece> legs() {
        List<RigMaterial.Piece> pieces = new ArrayList<>();
        for (Strand leg : strands) {
            int pairs = leg.count() / LOOP;
            if (pairs > 0) {
                pieces.add(new RigMaterial.Piece(
                        pairs,
                        new Length(LOOP * leg.unloadedMetres() + TakeUp.ringBend()),
                        Sentence.of("loop for the {0}", StrandNames.said(leg.label()))));
            }
            if (leg.count() % LOOP > 0) {
                pieces.add(new RigMaterial.Piece(
                        1,
                        new Length(leg.unloadedMetres() + 2 * TakeUp.END_LOOP_METRES),
                        Sentence.of("strand for the {0}, a loop tied in each end", StrandNames.said(leg.label()))));
            }
        }
        return pieces;
    }
}
