package thalweg.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Chooses the ropes to carry: the lightest set that serves every drop and still does when any one rope of it is lost; where
 * no set does that, the lightest that serves every drop. All sets are looked at, so that there is no lighter one.
 *
 * <p>A drop is served by one rope that hangs doubled, or by two that each reach. The wetness and the reserve of
 * {@link RopeMargin} are taken off first.
 */
public final class ChooseRopes {

    /** All sets of more would be too many to look at. */
    public static final int MOST_ROPES = 12;

    private final List<RopeAtHand> ropes;
    private final RopeMargin margin;
    private final double[] usable;
    private final double[] cost;
    private final boolean weighed;

    private ChooseRopes(List<RopeAtHand> ropes, RopeMargin margin) {
        this.ropes = ropes;
        this.margin = margin;
        this.weighed = ropes.stream().allMatch(rope -> rope.kilograms().isPresent());
        this.usable = ropes.stream().mapToDouble(margin::usable).toArray();
        this.cost = ropes.stream()
                .mapToDouble(rope ->
                        weighed ? rope.kilograms().orElseThrow() : rope.length().metres())
                .toArray();
    }

    /**
     * The choice.
     *
     * @param drops in any order; those of unknown length count for nothing and are told
     * @param ropes at hand, at most {@value #MOST_ROPES}
     */
    public static RopeChoice of(List<RopeNeed> drops, List<RopeAtHand> ropes, RopeMargin margin) {
        if (ropes.size() > MOST_ROPES) {
            throw new IllegalArgumentException("at most " + MOST_ROPES + " ropes are chosen from");
        }
        return new ChooseRopes(List.copyOf(ropes), margin).choice(drops);
    }

    private RopeChoice choice(List<RopeNeed> drops) {
        double[] lengths = known(drops);
        Optional<Integer> spare = lightest(lengths, true);
        Optional<Integer> plain = spare.isPresent() ? spare : lightest(lengths, false);
        int set = plain.orElseGet(() -> lengths.length == 0 ? 0 : (1 << ropes.size()) - 1);
        List<Integer> deciding = new ArrayList<>();
        if (plain.isPresent()) {
            double most = max(lengths);
            double less = lightest(
                            IntStream.range(0, lengths.length)
                                    .mapToDouble(i -> lengths[i])
                                    .filter(length -> length < most)
                                    .toArray(),
                            spare.isPresent())
                    .map(this::cost)
                    .orElse(Double.POSITIVE_INFINITY);
            if (less < cost(set)) {
                IntStream.range(0, drops.size())
                        .filter(i -> drops.get(i)
                                .length()
                                .filter(length -> length.metres() == most)
                                .isPresent())
                        .forEach(deciding::add);
            }
        }
        return new RopeChoice(
                margin,
                IntStream.range(0, ropes.size())
                        .filter(i -> has(set, i))
                        .boxed()
                        .toList(),
                plain.isPresent(),
                spare.isPresent(),
                weighed ? OptionalDouble.of(cost(set)) : OptionalDouble.empty(),
                drops.stream().map(drop -> drop(drop, set)).toList(),
                deciding);
    }

    private RopeChoice.Drop drop(RopeNeed need, int set) {
        return new RopeChoice.Drop(
                need,
                need.length().map(length -> technique(length.metres(), set)),
                need.length().map(length -> afterLoss(length.metres(), set)),
                need.length().map(length -> lowered(length.metres(), set)));
    }

    private static double[] known(List<RopeNeed> drops) {
        return drops.stream()
                .flatMap(drop -> drop.length().stream())
                .mapToDouble(length -> length.metres())
                .toArray();
    }

    private static double max(double[] lengths) {
        double most = 0;
        for (double length : lengths) {
            most = Math.max(most, length);
        }
        return most;
    }

    /** The lightest set that serves; among equals the one of fewer ropes, then the one named first. */
    private Optional<Integer> lightest(double[] lengths, boolean withSpare) {
        // Whatever serves the longest drop serves the others too: every technique takes more of longer ones.
        double longest = max(lengths);
        Optional<Integer> best = Optional.empty();
        for (int set = 0; set < 1 << ropes.size(); set++) {
            Technique technique = withSpare ? afterLoss(longest, set) : technique(longest, set);
            boolean serves = lengths.length == 0 || technique.compareTo(Technique.TWO_ROPES) <= 0;
            if (serves && (best.isEmpty() || lighter(set, best.get()))) {
                best = Optional.of(set);
            }
        }
        return best;
    }

    private boolean lighter(int one, int other) {
        double difference = cost(one) - cost(other);
        double tie = 1e-9 * Math.max(1, cost(other));
        return difference < -tie || (difference < tie && Integer.bitCount(one) < Integer.bitCount(other));
    }

    private double cost(int set) {
        double sum = 0;
        for (int i = 0; i < cost.length; i++) {
            sum += has(set, i) ? cost[i] : 0;
        }
        return sum;
    }

    /** Whether one rope reaches, so that whoever is above can lower the others on it. */
    private boolean lowered(double metres, int set) {
        return IntStream.range(0, usable.length).anyMatch(i -> has(set, i) && usable[i] >= margin.single(metres));
    }

    private Technique technique(double metres, int set) {
        double longest = 0;
        double second = 0;
        double all = 0;
        for (int i = 0; i < usable.length; i++) {
            if (has(set, i)) {
                second = Math.max(second, Math.min(longest, usable[i]));
                longest = Math.max(longest, usable[i]);
                all += usable[i];
            }
        }
        if (longest >= margin.doubled(metres)) {
            return Technique.DOUBLED;
        }
        if (second >= margin.single(metres)) {
            return Technique.TWO_ROPES;
        }
        if (longest >= margin.single(metres)) {
            return Technique.LOWERED;
        }
        return all >= margin.single(metres) ? Technique.KNOT_TO_PASS : Technique.NONE;
    }

    /** With the rope lost whose loss is worst; without any rope nothing can be lost. */
    private Technique afterLoss(double metres, int set) {
        Technique worst = set == 0 ? technique(metres, set) : Technique.DOUBLED;
        for (int i = 0; i < usable.length; i++) {
            if (has(set, i)) {
                Technique left = technique(metres, set & ~(1 << i));
                worst = left.compareTo(worst) > 0 ? left : worst;
            }
        }
        return worst;
    }

    private static boolean has(int set, int index) {
        return (set >> index & 1) == 1;
    }
}
