package thalweg.bench;

import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * One row of the table. Each figure is given as it is printed, empty where there is none.
 *
 * @param group that it belongs to
 * @param what was measured
 * @param middle the mean, or the median where the row says so
 * @param spread half of the interval in which the mean lies with a likelihood of 99.9 %
 * @param processor the processor's own time, without the compiler and the collector
 * @param p95 which 95 of 100 stayed below
 * @param target in words
 */
record Figure(String group, String what, String middle, String spread, String processor, String p95, String target) {

    private static final String ROW = "%-8s  %-52s  %10s  %10s  %10s  %10s  %s";

    /** What stands above the columns. */
    static String head() {
        return String.format(Locale.ROOT, ROW, "GROUP", "WHAT", "MEAN", "+-", "CPU", "P95", "TARGET");
    }

    /** Median and 95 of 100 of times that were taken one by one [µs]. */
    static Figure ofTimes(String group, String what, double[] times, String target) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        // The nearest rank, which for few times is the slowest but one or the slowest.
        int p95 = (int) Math.ceil(0.95 * sorted.length) - 1;
        return new Figure(
                group,
                what + ", median of " + sorted.length,
                time(sorted[(sorted.length - 1) / 2]),
                "",
                "",
                time(sorted[p95]),
                target);
    }

    /** One figure that is no time. */
    static Figure of(String group, String what, String value, String target) {
        return new Figure(group, what, value, "", "", "", target);
    }

    /** As a row of the table. */
    String row() {
        return String.format(Locale.ROOT, ROW, group, what, middle, spread, processor, p95, target)
                .stripTrailing();
    }

    /** A time as it is printed, empty where there is none [µs]. */
    static String time(OptionalDouble microseconds) {
        return microseconds.isPresent() ? time(microseconds.getAsDouble()) : "";
    }

    /** A time as it is printed [µs]. */
    static String time(double microseconds) {
        return microseconds < 1000
                ? String.format(Locale.ROOT, "%.3g us", microseconds)
                : String.format(Locale.ROOT, "%.1f ms", microseconds / 1000);
    }
}
