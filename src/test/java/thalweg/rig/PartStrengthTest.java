package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.fault.Sentence;
import thalweg.units.Force;

/** What is left of a strength, and what is said of it. */
class PartStrengthTest {

    private static final StrengthFactor HALF =
            StrengthFactor.of("condition", 0.5, FactorSource.OUR_CHOICE, Sentence.of("it was found worn"));

    private static final StrengthFactor KNOT =
            new StrengthFactor("knot", 0.55, 0.64, 0.70, FactorSource.PUBLISHED, Sentence.of("water knot"));

    private static PartStrength of(double kilonewtons, StrengthFactor... factors) {
        StrengthChain chain = new StrengthChain(Optional.of(Force.kilonewtons(kilonewtons)), Sentence.of("not known"));
        List.of(factors).forEach(chain::times);
        return chain.done();
    }

    @Test
    void factorsAreMultipliedEachWithItsOwnRange() {
        PartStrength left = of(20, HALF, KNOT);

        assertThat(left.left().orElseThrow().inKilonewtons()).isCloseTo(6.4, within(1e-12));
        assertThat(left.low().orElseThrow().inKilonewtons()).isCloseTo(5.5, within(1e-12));
        assertThat(left.high().orElseThrow().inKilonewtons()).isCloseTo(7.0, within(1e-12));
        assertThat(left.isRange()).isTrue();
    }

    @Test
    void withoutFactorsTheStatedStrengthIsLeftToTheDigit() {
        assertThat(of(17.8).left()).contains(Force.kilonewtons(17.8));
        assertThat(of(17.8).isRange()).isFalse();
    }

    @Test
    void oneUnknownFactorMakesAllUnknownButNotTheMost() {
        PartStrength doubtful = new StrengthChain(Optional.of(Force.kilonewtons(20)), Sentence.of("not known"))
                .times(HALF)
                .unknown(Sentence.of("A was found doubtful"))
                .done();

        assertThat(doubtful.left()).isEmpty();
        assertThat(doubtful.low()).isEmpty();
        assertThat(doubtful.why()).isEqualTo("A was found doubtful");
        assertThat(doubtful.atMost().orElseThrow().inKilonewtons()).isCloseTo(10, within(1e-12));
    }

    @Test
    void withoutAStrengthTheFirstReasonIsEnough() {
        PartStrength unknown = new StrengthChain(Optional.empty(), Sentence.of("the strength of A is not known"))
                .unknown(Sentence.of("A was found doubtful"))
                .done();

        assertThat(unknown.why()).isEqualTo("the strength of A is not known");
        assertThat(unknown.atMost()).isEmpty();
    }

    @Test
    void aFactorPrintsItsFigureItsRangeAndItsSource() {
        assertThat(KNOT.print()).isEqualTo("knot 0.64 (0.55 to 0.7), published: water knot");
        assertThat(HALF.print()).isEqualTo("condition 0.5, our choice: it was found worn");
    }

    @Test
    void sharesOutOfOrderAreRefused() {
        assertThatThrownBy(() -> new StrengthFactor("knot", 0.7, 0.6, 0.8, FactorSource.MEMORY, Sentence.of("a knot")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StrengthFactor.of("knot", 1.2, FactorSource.STATED, Sentence.of("a knot")))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
