package thalweg.rig;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.hipparchus.distribution.continuous.BetaDistribution;
import thalweg.fault.Sentence;

/**
 * How often something happened in trials, with the 95 % interval of Clopper and Pearson for the chance behind it.
 *
 * @param count how often, 0 to trials
 * @param trials how many there were, 1 or more
 * @see "Clopper and Pearson, The use of confidence or fiducial limits illustrated in the case of the binomial, Biometrika
 *     26, 1934, 404"
 */
public record Share95(int count, int trials) {

    private static final double EITHER_SIDE = 0.025;

    public Share95 {
        if (trials < 1 || count < 0 || count > trials) {
            throw new IllegalArgumentException("a share counts some of one or more trials");
        }
    }

    /** The share [-], 0 to 1. */
    public double share() {
        return (double) count / trials;
    }

    /** The lower end of the interval [-]. */
    public double low() {
        return count == 0
                ? 0
                : new BetaDistribution(count, trials - count + 1.0).inverseCumulativeProbability(EITHER_SIDE);
    }

    /** The upper end of the interval [-]. */
    public double high() {
        return count == trials
                ? 1
                : new BetaDistribution(count + 1.0, trials - count).inverseCumulativeProbability(1 - EITHER_SIDE);
    }

    /**
     * The share with its interval as a part of a sentence, as "0.12 % (0.10 to 0.15 %)". Nothing that was counted is not
     * called impossible.
     */
    public Sentence saying() {
        if (count == 0) {
            return Sentence.of("0 of {0}, under 3/{0} if your beliefs hold; hidden defects excluded", trials);
        }
        return Sentence.of(
                "{0} % ({1} to {2} %)",
                percent(share(), RoundingMode.HALF_UP),
                percent(low(), RoundingMode.FLOOR),
                percent(high(), RoundingMode.CEILING));
    }

    /** The same in English. */
    public String print() {
        return saying().toString();
    }

    /** Two digits that count, rounded so that an interval never looks narrower than it is. */
    private static String percent(double share, RoundingMode rounding) {
        double percent = 100 * share;
        int decimals = (int) Math.max(0, Math.min(6, 1 - Math.floor(Math.log10(percent))));
        return BigDecimal.valueOf(percent).setScale(decimals, rounding).toPlainString();
    }
}
