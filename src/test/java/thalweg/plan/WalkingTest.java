package thalweg.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WalkingTest {

    /** Worked examples of the standard's rule as published with it: 900 m up over 8 km take 4 h, 1,200 m up 5 h. */
    @Test
    void theStandardsExamplesAreMet() {
        assertThat(Walking.din(8000, 900, 0)).isCloseTo(240, within(1e-9));
        assertThat(Walking.din(8000, 1200, 0)).isCloseTo(300, within(1e-9));
    }

    /** 20 km and 1,600 m up take 6 h 40 min: the published example of the rule. */
    @Test
    void naismithsExampleIsMet() {
        assertThat(Walking.naismith(20_000, 1600)).isCloseTo(400, within(1e-9));
    }

    /** 5.04 km/h on the level and 6 km/h at a slope of -0.05: published with the function. */
    @Test
    void toblersSpeedsAreMet() {
        assertThat(Walking.toblerSpeed(0)).isCloseTo(5.04, within(0.005));
        assertThat(Walking.toblerSpeed(-0.05)).isEqualTo(6);
        assertThat(Walking.tobler(5040, 0, 0)).isCloseTo(60, within(0.1));
    }

    @Test
    void moreWayOrMoreHeightNeverTakesLessTime() {
        for (double metres = 100; metres < 10_000; metres *= 1.7) {
            for (double up = 0; up < 0.8 * metres; up += metres / 7) {
                assertThat(Walking.din(metres * 1.1, up, 10)).isGreaterThan(Walking.din(metres, up, 10));
                assertThat(Walking.din(metres, up + 10, 10)).isGreaterThan(Walking.din(metres, up, 10));
                assertThat(Walking.naismith(metres, up + 10)).isGreaterThan(Walking.naismith(metres, up));
                assertThat(Walking.tobler(metres, up, 0)).isFinite().isPositive();
            }
        }
    }
}
