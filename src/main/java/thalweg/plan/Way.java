package thalweg.plan;

import java.util.Optional;

/**
 * A way on foot, to the canyon or back from it.
 *
 * @param metres along it [m], 0 or more; empty where only a time is known
 * @param up [m], 0 or more
 * @param down [m], 0 or more
 * @param statedMinutes as the records state it [min]; empty where they do not
 */
public record Way(Optional<Double> metres, double up, double down, Optional<Integer> statedMinutes) {

    /** A way of which nothing is known. */
    public static final Way UNKNOWN = new Way(Optional.empty(), 0, 0, Optional.empty());

    public Way {
        if (metres.filter(length -> length < 0).isPresent() || up < 0 || down < 0) {
            throw new IllegalArgumentException("a way has a length and heights of 0 or more");
        }
    }

    /** By the standard's rule where its length is known, else as stated [min]; empty where neither is. */
    public Optional<Double> minutes() {
        return metres.map(length -> Walking.din(length, up, down)).or(() -> statedMinutes.map(Integer::doubleValue));
    }
}
