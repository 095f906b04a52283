package thalweg.rig;

import java.util.List;
import thalweg.fault.Sentence;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/**
 * What a layout takes of webbing or cord, cut from the reel and unstretched, and of connectors.
 *
 * <p>{@link TakeUp} says what knots and tails are taken for. What goes round a tree, a boulder or a thread is in it where
 * a sling is stated and the girth with it.
 *
 * @param pieces to cut, one or more unless all that there is are slings of unknown girth
 * @param connectors one for each point and one at the master; a strand that goes round its point needs none there
 * @param knots to tie where everything is tied on the spot, 1 or more
 * @param slung whether something is slung round a point
 * @param unknown the points whose slings are not in the pieces, since nobody stated the girth
 */
public record RigMaterial(List<Piece> pieces, int connectors, int knots, boolean slung, List<String> unknown) {

    /**
     * Pieces of one length.
     *
     * @param count how many
     * @param length of each, to cut
     * @param what it becomes, as "one loop through all points, with a knot at the master"
     */
    public record Piece(int count, Length length, Sentence what) {

        public Piece {
            if (count < 1 || length.metres() <= 0 || what.toString().isBlank()) {
                throw new IllegalArgumentException("a piece has a length and a use");
            }
        }
    }

    public RigMaterial {
        pieces = List.copyOf(pieces);
        unknown = List.copyOf(unknown);
        if ((pieces.isEmpty() && unknown.isEmpty()) || connectors < 1 || knots < 1) {
            throw new IllegalArgumentException("a rig takes a piece, a knot and a connector, or more");
        }
    }

    /** A length to cut, as shown to a person: to the centimetre or the tenth of a foot, never rounded down. */
    public static String print(Length length, UnitSystem units) {
        double step = units == UnitSystem.METRIC ? 0.01 : 0.1 * Length.METRES_PER_FOOT;
        return new Length(Math.ceil(length.metres() / step - 1e-9) * step).printFine(units);
    }

    /** All pieces together. */
    public Length total() {
        return new Length(pieces.stream()
                .mapToDouble(piece -> piece.count() * piece.length().metres())
                .sum());
    }
}
