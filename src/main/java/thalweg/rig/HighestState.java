package thalweg.rig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Finds where in a sector a figure is highest.
 *
 * <p>A force or an angle has a kink wherever a strand becomes slack or a master comes up against a knot, so it may rise
 * and fall several times. It is looked at in every whole degree or so, and then between the neighbours of each direction
 * from which it falls to both sides. Between these it is taken to rise and then to fall.
 */
final class HighestState {

    /** Two figures nearer than this, in parts of either, are equals: rounding must not choose the direction. */
    static final double TIE = 1e-9;

    /** So many fine steps lie between the looks, at most: a degree. */
    private static final int STRIDE = 10;

    private final IntFunction<RigState> states;
    private final List<Integer> looks;

    /**
     * @param states by fine steps from the aim
     * @param reported how many directions to either side are reported, and looked at whatever lies between
     * @param finePerStep fine steps from one of these to the next, 0 or more
     */
    HighestState(IntFunction<RigState> states, int reported, int finePerStep) {
        this.states = states;
        this.looks = new ArrayList<>();
        for (int step = -reported; step < reported; step++) {
            for (int fine = 0; fine < finePerStep; fine += STRIDE) {
                looks.add(step * finePerStep + fine);
            }
        }
        looks.add(reported * finePerStep);
    }

    /** The highest; among equals the one nearest to the aim. */
    RigState of(ToDoubleFunction<RigState> figure) {
        int highest = 0;
        for (int look : outwards(looks)) {
            highest = better(look, highest, figure);
        }
        List<Integer> tops = new ArrayList<>();
        for (int i = 0; i < looks.size(); i++) {
            int low = looks.get(Math.max(0, i - 1));
            int high = looks.get(Math.min(looks.size() - 1, i + 1));
            if (isTop(looks.get(i), low, high, figure)) {
                tops.add(between(low, high, figure));
            }
        }
        for (int top : outwards(tops)) {
            highest = better(top, highest, figure);
        }
        return states.apply(highest);
    }

    /** Whether the figure is no higher on either side, and not the same on both. */
    private boolean isTop(int look, int low, int high, ToDoubleFunction<RigState> figure) {
        boolean rises = look != low && better(look, low, figure) == look;
        boolean falls = look != high && better(look, high, figure) == look;
        return (rises || falls) && better(low, look, figure) == look && better(high, look, figure) == look;
    }

    private int between(int from, int to, ToDoubleFunction<RigState> figure) {
        int low = from;
        int high = to;
        while (high - low > 2) {
            int left = low + (high - low) / 3;
            int right = high - (high - low) / 3;
            int better = Math.abs(left) <= Math.abs(right) ? better(right, left, figure) : better(left, right, figure);
            if (better == right) {
                low = left;
            } else {
                high = right;
            }
        }
        List<Integer> last = outwards(IntStream.rangeClosed(low, high).boxed().toList());
        int highest = last.get(0);
        for (int fine : last) {
            highest = better(fine, highest, figure);
        }
        return highest;
    }

    private int better(int candidate, int before, ToDoubleFunction<RigState> figure) {
        double figureBefore = figure.applyAsDouble(states.apply(before));
        return figure.applyAsDouble(states.apply(candidate)) > figureBefore + TIE * Math.abs(figureBefore)
                ? candidate
                : before;
    }

    private static List<Integer> outwards(List<Integer> steps) {
        return steps.stream().sorted(Comparator.comparingInt(Math::abs)).toList();
    }
}
