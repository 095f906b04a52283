package thalweg.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import thalweg.settings.TripFigure;

/**
 * How a group's own trips went against the figures, and what that makes of the paces of its next one.
 *
 * <p>Of the legs of all trips together the factor is the median of taken over planned, and the spread is the median distance
 * of the logarithms from theirs, both as good as blind to a time that was noted wrong.
 *
 * @param trips that were asked for; those that tell nothing are among them
 * @see "Hampel, The influence curve and its role in robust estimation, 1974: the median absolute deviation"
 */
public record OwnPace(List<PacedTrip> trips) {

    /** Fewer tell nothing. Our choice. */
    public static final int FEWEST_LEGS = 3;

    /** Legs of fewer trips say little of how one day differs from another. Our choice. */
    public static final int FEWEST_TRIPS = 3;

    /** Makes of the median distance the standard deviation of what is normally distributed: one over its third quartile. */
    private static final double NORMAL = 1.4826;

    /** The median of n values scatters by this over n of their variance, where they are many and normally distributed. */
    private static final double OF_THE_MEDIAN = Math.PI / 2;

    public OwnPace {
        trips = List.copyOf(trips);
    }

    private List<Double> ratios() {
        return trips.stream().flatMap(trip -> trip.ratios().stream()).toList();
    }

    /** Legs that tell. */
    public int legs() {
        return ratios().size();
    }

    /** Trips that have such legs. */
    public long telling() {
        return trips.stream().filter(trip -> !trip.ratios().isEmpty()).count();
    }

    /** Legs whose noted times cannot be. */
    public int leftOut() {
        return trips.stream().mapToInt(PacedTrip::leftOut).sum();
    }

    /** Whether there are legs of trips enough to tell how days differ. */
    public boolean knowsDays() {
        return telling() >= FEWEST_TRIPS;
    }

    /** How many times as long as by the figures it takes [-]; empty where the legs are too few to tell. */
    public Optional<Double> factor() {
        return legs() < FEWEST_LEGS ? Optional.empty() : middle(ratios()).map(Math::exp);
    }

    /**
     * Of the paces from one day to the next, as the standard deviation of the logarithm [-]: that of the legs, wider for what
     * so few say of the middle, and no narrower than usual where they are of too few days. Empty where the factor is.
     *
     * @param usual what holds without own trips [-]
     */
    public Optional<Double> spread(double usual) {
        return factor().map(factor -> {
            double[] logs = logs(ratios());
            double middle = Math.log(factor);
            double[] off = new double[logs.length];
            for (int i = 0; i < logs.length; i++) {
                off[i] = Math.abs(logs[i] - middle);
            }
            double own = NORMAL * median(off) * Math.sqrt(1 + OF_THE_MEDIAN / logs.length);
            return Math.min(TripFigure.SPREAD.most(), knowsDays() ? own : Math.max(usual, own));
        });
    }

    /** The paces of the next trip; those of the figures where the legs are too few to tell. */
    public Paces of(Paces figures) {
        return factor().map(factor -> figures.slower(factor)
                        .withSpread(spread(figures.spread()).orElseThrow()))
                .orElse(figures);
    }

    /** The median of the logarithms; empty where there are none. */
    static Optional<Double> middle(List<Double> ratios) {
        return ratios.isEmpty() ? Optional.empty() : Optional.of(median(logs(ratios)));
    }

    private static double[] logs(List<Double> ratios) {
        return ratios.stream().mapToDouble(StrictMath::log).toArray();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
