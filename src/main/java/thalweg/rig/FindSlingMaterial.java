package thalweg.rig;

import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.units.Length;

/**
 * What a sling takes that is tied on the spot: its sides, its way round the point, and the bend that closes it.
 *
 * <p>A sling leaves the point at its two sides, so that half of the girth lies against it where it is pulled. That is
 * geometry of a round trunk, not a rule of the trade.
 */
final class FindSlingMaterial {

    private FindSlingMaterial() {}

    /** The piece of the sling of a point that has one; empty where nobody stated the girth. */
    static Optional<RigMaterial.Piece> of(RigInput input, int point) {
        RigPoint of = input.points().get(point);
        RigSling sling = of.sling().orElseThrow();
        SlingNodes nodes = SlingNodes.of(input);
        Slung lies = nodes.slung().get(point).orElseThrow();
        double slack = Slung.isLeg(of) ? input.rig().slack().get(point).metres() : 0;
        double sides = lies.sides().stream()
                .mapToDouble(side -> sling.tie().strandsASide() * (side.distance(lies.end()) + slack))
                .sum();
        return sling.around()
                .map(girth -> new RigMaterial.Piece(
                        1,
                        new Length(sides + timesRound(sling.tie()) * girth.metres() + TakeUp.ringBend()),
                        Sentence.of(
                                "loop for the {0}, {1}", StrandNames.said(StrandNames.sling(of)), words(sling.tie()))));
    }

    /** How many times the girth lies round the point. */
    private static double timesRound(SlingTie tie) {
        return switch (tie) {
            case BASKET -> 1;
            case CHOKE -> 2;
            case WRAP_THREE_PULL_TWO -> 2;
            case TIED_ROUND -> 0.5;
        };
    }

    private static Sentence words(SlingTie tie) {
        return switch (tie) {
            case BASKET -> Sentence.of("laid round, both bights clipped");
            case CHOKE -> Sentence.of("choked");
            case WRAP_THREE_PULL_TWO -> Sentence.of("wrapped three times");
            case TIED_ROUND -> Sentence.of("tied round");
        };
    }
}
