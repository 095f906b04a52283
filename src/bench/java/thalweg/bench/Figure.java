package thalweg.bench;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * One thing that was measured.
 *
 * @param group it belongs to
 * @param what it is
 * @param mean on the clock [µs]
 * @param spread half of the interval that holds the mean with 99.9 %, where it was estimated [µs]
 * @param processor time that it took [µs]
 * @param p95 which 95 of 100 stayed below [µs]
 * @param target in words; empty where there is none
 */
record Figure(
        String group,
        String what,
        double mean,
        OptionalDouble spread,
        OptionalDouble processor,
        OptionalDouble p95,
        String target) {

    private static final String ROW = "%-8s  %-44s  %10s  %10s  %10s  %10s  %s";

    /** What stands above the columns. */
    static String head() {
        return String.format(Locale.ROOT, ROW, "GROUP", "WHAT", "MEAN", "+-", "CPU", "P95", "TARGET");
    }

    /** As a row of the table. */
    String row() {
        return String.format(
                        Locale.ROOT, ROW, group, what, time(mean), time(spread), time(processor), time(p95), target)
                .stripTrailing();
    }

    private static String time(OptionalDouble microseconds) {
        return microseconds.isPresent() ? time(microseconds.getAsDouble()) : "";
    }

    private static String time(double microseconds) {
        return microseconds < 1000
                ? String.format(Locale.ROOT, "%.3g us", microseconds)
                : String.format(Locale.ROOT, "%.1f ms", microseconds / 1000);
    }
}
