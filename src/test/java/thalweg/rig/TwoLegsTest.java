package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two equal legs with the included angle a bear {@code 1 / (2 cos(a/2))} of the load each. */
class TwoLegsTest {

    @ParameterizedTest
    @CsvSource({"30", "60", "100", "140", "170", "178"})
    void theAngleReachedUnderLoadAndTheForceBelongTogether(double degrees) {
        RigState steady = Rigs.answer(Rigs.pair(degrees)).steady();

        double reached = steady.angle().orElseThrow().inRadians();
        assertThat(Math.toDegrees(reached)).isLessThan(degrees);
        assertThat(steady.at("A").force().inKilonewtons()).isCloseTo(1 / (2 * Math.cos(reached / 2)), within(1e-9));
    }
}
