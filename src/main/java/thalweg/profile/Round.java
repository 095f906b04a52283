package thalweg.profile;

import java.util.Arrays;

/** Numbers that people take in at a glance. */
final class Round {

    private static final double[] TIMES = {
        1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 25, 30, 35, 40, 45, 50
    };

    private Round() {}

    /** The largest factor for a scale that is not above that one, 1 or more and 50 at most. */
    static double timesUpTo(double most) {
        return Arrays.stream(TIMES).filter(times -> times <= most).max().orElse(1);
    }

    /** The smallest of 1, 2 and 5 and their tens and tenths that is not below that number, which is above 0. */
    static double stepFrom(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        double digit = least / power;
        double rounded = digit <= 1 ? 1 : digit <= 2 ? 2 : digit <= 5 ? 5 : 10;
        return rounded * power;
    }
}
