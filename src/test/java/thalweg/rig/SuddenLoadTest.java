package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.units.Force;
import thalweg.units.Length;

class SuddenLoadTest {

    /** Weight [N], height [m], spring [N/m], factor as printed. Source: Gere, Mechanics of Materials, 2.8. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            5.0,       0.2,    90,       3.9
            4.4482216, 0.3048, 87.5635,  4.6
            """)
    void itAgreesWithWorkedProblems(double newtons, double metres, double spring, double factor) {
        assertThat(SuddenLoad.factor(new Length(metres), spring, new Force(newtons)))
                .isCloseTo(factor, within(0.05));
    }

    /** Problem 2.8-1: 150 lb from 2.0 in onto a bar of 48 in, 0.75 sq in and 30e6 psi: factor 113. */
    @Test
    void itAgreesWithAFallOnABar() {
        double spring = 30e6 * 0.75 / 48 * Force.NEWTONS_PER_POUND_FORCE / 0.0254;

        double factor =
                SuddenLoad.factor(new Length(2 * 0.0254), spring, new Force(150 * Force.NEWTONS_PER_POUND_FORCE));

        assertThat(factor).isCloseTo(113, within(0.5));
    }

    @Test
    void whatIsLetGoFromNoHeightPullsTwice() {
        assertThat(SuddenLoad.factor(new Length(0), 1e5, new Force(1))).isEqualTo(2);
    }

    @Test
    void aLoadWithAFactorPullsLikeAHeavierOne() {
        RigDraft draft = Rigs.pair(60);
        RigInput lowered =
                Rigs.input(draft.withLoad(LoadDraft.ofMass(100, 0, 10).withFactor(1.5)));
        RigInput heavy = Rigs.input(draft.withLoad(LoadDraft.ofMass(150, 0, 10)));

        assertThat(lowered.load().weight().newtons())
                .isCloseTo(heavy.load().weight().newtons(), within(1e-9));
        assertThat(lowered.load().atRest().newtons()).isCloseTo(980.665, within(1e-9));
        assertThat(Analyze.of(lowered).losses()).isEqualTo(Analyze.of(heavy).losses());
    }

    @Test
    void aForceWithAFactorIsKeptAsItWasStated() {
        RigInput input =
                Rigs.input(Rigs.pair(60).withLoad(LoadDraft.ofForce(1.2, 0, 10).withFactor(2)));

        LoadDraft again = RigDraft.of(input).load();

        assertThat(input.load().weight().newtons()).isCloseTo(2400, within(1e-9));
        assertThat(again.forceKilonewtons().orElseThrow()).isCloseTo(1.2, within(1e-12));
        assertThat(again.factor()).hasValue(2);
    }
}
