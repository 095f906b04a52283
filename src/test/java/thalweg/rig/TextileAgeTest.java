package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What age leaves, where somebody published it, and nothing where nobody did. */
class TextileAgeTest {

    /**
     * The published figures: DAV Panorama 4/2015, p. 60 (20 and 16 of 22 kN), WSTDA outdoor exposure test 1997 to 2004
     * (nylon 50 to 60 % lost after 36 months, polyester near 30 %).
     */
    @ParameterizedTest
    @CsvSource({
        "UHMWPE,    INDOORS,  2.9, 0.909091",
        "UHMWPE,    INDOORS,  3,   0.727273",
        "UHMWPE,    INDOORS,  5,   0.727273",
        "NYLON,     OUTDOORS, 3,   0.45",
        "POLYESTER, OUTDOORS, 1,   0.70",
        "POLYESTER, OUTDOORS, 3,   0.70",
    })
    void publishedFiguresAreTheNominalOnes(Fibre fibre, Kept kept, double years, double left) {
        AgeShare share = TextileAge.of(fibre, kept, years);

        assertThat(share.factor().orElseThrow().nominal()).isCloseTo(left, within(1e-6));
        assertThat(share.unknown()).isFalse();
    }

    @Test
    void nylonAfterThirtySixMonthsLiesBetweenThePublishedEnds() {
        StrengthFactor factor =
                TextileAge.of(Fibre.NYLON, Kept.OUTDOORS, 3).factor().orElseThrow();

        assertThat(factor.low()).isCloseTo(0.40, within(1e-12));
        assertThat(factor.high()).isCloseTo(0.50, within(1e-12));
        assertThat(factor.source()).isEqualTo(FactorSource.DERIVED);
        assertThat(factor.words()).contains("WSTDA");
    }

    @Test
    void newNylonHasLostNothing() {
        assertThat(TextileAge.of(Fibre.NYLON, Kept.OUTDOORS, 0)
                        .factor()
                        .orElseThrow()
                        .low())
                .isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "NYLON,     OUTDOORS, 3.1,  0.5",
        "POLYESTER, OUTDOORS, 3.1,  0.7",
        "UHMWPE,    INDOORS,  5.1,  0.727273",
        "UHMWPE,    OUTDOORS, 1,    0.909091",
        "UHMWPE,    OUTDOORS, 4,    0.727273",
        "NYLON,     OUTDOORS, 11,   0.5",
    })
    void beyondWhatWasTestedItIsUnknownWithWhatItIsAtMost(Fibre fibre, Kept kept, double years, double atMost) {
        AgeShare share = TextileAge.of(fibre, kept, years);

        assertThat(share.factor()).isEmpty();
        assertThat(share.unknown()).isTrue();
        assertThat(share.atMost().orElseThrow()).isCloseTo(atMost, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"NYLON", "POLYESTER"})
    void whatNobodyPublishedIsNotAllowedForUntilTheMakersLimit(Fibre fibre) {
        AgeShare young = TextileAge.of(fibre, Kept.INDOORS, 10);
        AgeShare old = TextileAge.of(fibre, Kept.INDOORS, 10.1);

        assertThat(young.factor()).isEmpty();
        assertThat(young.unknown()).isFalse();
        assertThat(young.saying().toString()).startsWith("age is not allowed for: no published figure");
        assertThat(old.unknown()).isTrue();
        assertThat(old.saying().toString()).contains("past the 10 years");
    }

    @ParameterizedTest
    @CsvSource({"NYLON, OUTDOORS", "POLYESTER, OUTDOORS", "UHMWPE, INDOORS"})
    void olderIsNeverStronger(Fibre fibre, Kept kept) {
        double low = 1;
        double nominal = 1;
        double high = 1;
        for (double years = 0; years <= 5; years += 0.05) {
            AgeShare share = TextileAge.of(fibre, kept, years);
            if (share.factor().isPresent()) {
                StrengthFactor factor = share.factor().get();
                assertThat(factor.low()).isLessThanOrEqualTo(low);
                assertThat(factor.nominal()).isLessThanOrEqualTo(nominal);
                assertThat(factor.high()).isLessThanOrEqualTo(high);
                low = factor.low();
                nominal = factor.nominal();
                high = factor.high();
            } else {
                assertThat(share.atMost().orElseThrow()).isLessThanOrEqualTo(high);
            }
        }
    }

    @Test
    void anAgeBelowNothingIsRefused() {
        assertThatThrownBy(() -> TextileAge.of(Fibre.NYLON, Kept.INDOORS, -1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
