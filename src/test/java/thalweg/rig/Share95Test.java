package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The interval of Clopper and Pearson against its definition: the binomial tails beyond it are 2.5 % each. */
class Share95Test {

    /** P(from <= X <= to) of a binomial variable, summed term by term. */
    private static double binomial(int trials, double p, int from, int to) {
        double sum = 0;
        for (int k = from; k <= to; k++) {
            double log = 0;
            for (int i = 1; i <= k; i++) {
                log += Math.log((double) (trials - k + i) / i);
            }
            sum += Math.exp(log + k * Math.log(p) + (trials - k) * Math.log1p(-p));
        }
        return sum;
    }

    @ParameterizedTest
    @CsvSource({"1, 10", "5, 10", "9, 10", "3, 250", "40, 1000"})
    void theTailsBeyondTheEndsAreTwoAndAHalfPercent(int count, int trials) {
        Share95 share = new Share95(count, trials);

        assertThat(binomial(trials, share.low(), count, trials)).isCloseTo(0.025, within(1e-6));
        assertThat(binomial(trials, share.high(), 0, count)).isCloseTo(0.025, within(1e-6));
    }

    /** For none of n the upper end is 1 - 0.025^(1/n), and for all of n the lower end is 0.025^(1/n). */
    @Test
    void noneAndAllHaveClosedForms() {
        assertThat(new Share95(0, 50).low()).isZero();
        assertThat(new Share95(0, 50).high()).isCloseTo(1 - Math.pow(0.025, 1 / 50.0), within(1e-9));
        assertThat(new Share95(50, 50).low()).isCloseTo(Math.pow(0.025, 1 / 50.0), within(1e-9));
        assertThat(new Share95(50, 50).high()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "5, 10, 50 % (18 to 82 %)",
        "12, 100000, 0.012 % (0.0062 to 0.021 %)",
        "6721, 100000, 6.7 % (6.5 to 6.9 %)",
        "100000, 100000, 100 % (99 to 100 %)"
    })
    void aShareIsPrintedWithItsInterval(int count, int trials, String printed) {
        assertThat(new Share95(count, trials).print()).isEqualTo(printed);
    }
}
