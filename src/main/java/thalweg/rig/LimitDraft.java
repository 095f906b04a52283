package thalweg.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import thalweg.units.Length;

/**
 * How far a master may slide between limiter knots, as it was typed or read, right or wrong; empty is not stated.
 *
 * @param metres how far the knot of each leg is from the focus, in the order of the points [m]
 * @param rangeDegrees two directions of the load between which the master is to come up against no knot [°]
 * @param sliderStrands parallel strands between the knots
 */
public record LimitDraft(
        Optional<List<Double>> metres, Optional<List<Double>> rangeDegrees, OptionalLong sliderStrands) {

    /** Nothing is stated, as for a rig without limiters. */
    public static final LimitDraft NONE = new LimitDraft(Optional.empty(), Optional.empty(), OptionalLong.empty());

    public LimitDraft {
        metres = metres.map(List::copyOf);
        rangeDegrees = rangeDegrees.map(List::copyOf);
    }

    /** Knots so far from the focus [m]. */
    public static LimitDraft at(double first, double second) {
        return new LimitDraft(Optional.of(List.of(first, second)), Optional.empty(), OptionalLong.empty());
    }

    /** Knots that leave the master free between two directions of the load [°]. */
    public static LimitDraft over(double from, double to) {
        return new LimitDraft(Optional.empty(), Optional.of(List.of(from, to)), OptionalLong.empty());
    }

    /** The same knots, with that many strands between them. */
    public LimitDraft withStrands(long count) {
        return new LimitDraft(metres, rangeDegrees, OptionalLong.of(count));
    }

    static LimitDraft of(RigInput input) {
        Optional<Limiters> limiters = input.rig().limiters();
        if (limiters.isEmpty()) {
            return NONE;
        }
        Limiters known = limiters.get();
        List<Double> metres = known.fromFocus().stream().map(Length::metres).toList();
        return new LimitDraft(
                known.range().isPresent() ? Optional.empty() : Optional.of(metres),
                known.range()
                        .map(range -> List.of(range.from().degrees(), range.to().degrees())),
                input.assumed().contains("slider_strands")
                        ? OptionalLong.empty()
                        : OptionalLong.of(known.sliderStrands()));
    }
}
