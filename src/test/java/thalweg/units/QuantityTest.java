package thalweg.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.fault.InputException;

class QuantityTest {

    /**
     * Factors of NIST Special Publication 811 (2008), appendix B.8, as printed there: foot 3.048 E-01 m, inch 2.54 E-02
     * m, pound 4.535 923 7 E-01 kg, pound-force 4.448 222 E+00 N; degree 1.745 329 E-02 rad. Quoted from memory.
     */
    @Test
    void conversionsAgreeWithNistSp811() {
        assertThat(Length.parse("1 ft").metres()).isEqualTo(0.3048);
        assertThat(Length.parse("1 in").metres()).isCloseTo(0.0254, within(1e-16));
        assertThat(Mass.parse("1 lb").kilograms()).isEqualTo(0.45359237);
        assertThat(Force.parse("1 lbf").newtons()).isCloseTo(4.448222, within(5e-7));
        assertThat(Angle.parse("1°").inRadians()).isCloseTo(0.01745329, within(5e-9));
    }

    /** The pound-force is the pound times standard gravity, by definition (9.806 65 m/s2: CGPM 1901). */
    @Test
    void thePoundForceIsAPoundsWeight() {
        assertThat(Mass.parse("1 lb").weight().newtons()).isCloseTo(Force.NEWTONS_PER_POUND_FORCE, within(1e-12));
        assertThat(new Mass(100).weight().newtons()).isCloseTo(980.665, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            18.3 m       | 18.3
            18           | 18
            25 mm        | 0.025
            35cm         | 0.35
            1.2 km       | 1200
            60 ft        | 18.288
            60'          | 18.288
            5 ft 6 in    | 1.6764
            5 FT 6 IN    | 1.6764
            5' 6.5"      | 1.6891
            0 ft 11 in   | 0.2794
            -2 m         | -2
            +2 m         | 2
            """)
    void lengthsAreReadAsTyped(String typed, double metres) {
        assertThat(Length.parse(typed).metres()).isCloseTo(metres, within(1e-12));
    }

    @Test
    void twelveInchesBesideFeetAreRefused() {
        assertThatThrownBy(() -> Length.parse("5 ft 12 in"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("12 or more inches");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12 kN    | 12000
            12       | 12000
            900 N    | 900
            900 n    | 900
            1000 lbf | 4448.2216152605
            1000 lb  | 4448.2216152605
            0,5 kN   | 500
            """)
    void forcesAreReadAsTypedAndABareNumberIsKilonewtons(String typed, double newtons) {
        assertThat(Force.parse(typed).newtons()).isCloseTo(newtons, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0       | 0.00 kN  | 0 lbf
            -0.0    | 0.00 kN  | 0 lbf
            4.9     | 0.00 kN  | 1 lbf
            5       | 0.01 kN  | 1 lbf
            -5      | -0.01 kN | -1 lbf
            999.9   | 1.00 kN  | 225 lbf
            9994.9  | 9.99 kN  | 2247 lbf
            9995    | 10.0 kN  | 2247 lbf
            -9995   | -10.0 kN | -2247 lbf
            10000   | 10.0 kN  | 2248 lbf
            12000   | 12.0 kN  | 2698 lbf
            22250   | 22.3 kN  | 5002 lbf
            """)
    void forcesArePrintedWithThreeFiguresOrWholePounds(double newtons, String metric, String imperial) {
        assertThat(new Force(newtons).print(UnitSystem.METRIC)).isEqualTo(metric);
        assertThat(new Force(newtons).print(UnitSystem.IMPERIAL)).isEqualTo(imperial);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            18.288 | 18.3 m | 60 ft | 18.29 m | 60.0 ft
            18     | 18 m   | 59 ft | 18.00 m | 59.1 ft
            0.35   | 0.4 m  | 1 ft  | 0.35 m  | 1.1 ft
            -0.04  | 0 m    | 0 ft  | -0.04 m | -0.1 ft
            100    | 100 m  | 328 ft | 100.00 m | 328.1 ft
            """)
    void lengthsArePrintedCoarseAndFine(double metres, String coarse, String feet, String fine, String fineFeet) {
        Length length = new Length(metres);

        assertThat(length.print(UnitSystem.METRIC)).isEqualTo(coarse);
        assertThat(length.print(UnitSystem.IMPERIAL)).isEqualTo(feet);
        assertThat(length.printFine(UnitSystem.METRIC)).isEqualTo(fine);
        assertThat(length.printFine(UnitSystem.IMPERIAL)).isEqualTo(fineFeet);
    }

    @Test
    void massesAndAnglesArePrintedWhole() {
        assertThat(Mass.parse("200 lbs").print(UnitSystem.METRIC)).isEqualTo("91 kg");
        assertThat(Mass.parse("90").print(UnitSystem.IMPERIAL)).isEqualTo("198 lb");
        assertThat(Mass.parse("250 g").kilograms()).isEqualTo(0.25);
        assertThat(Angle.parse("51.4").print()).isEqualTo("51°");
        assertThat(Angle.parse("60.34").printFine()).isEqualTo("60.3°");
        assertThat(new Angle(-0.2).print()).isEqualTo("0°");
    }

    @Test
    void whatIsPrintedIsReadBackWithinItsLastFigure() {
        Random random = new Random(20261125);
        for (int i = 0; i < 5_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(6));
            for (UnitSystem system : UnitSystem.values()) {
                Force force = Force.kilonewtons(value);
                double halfLast = system == UnitSystem.IMPERIAL
                        ? Force.NEWTONS_PER_POUND_FORCE / 2
                        : Math.abs(force.newtons()) < 9_995 ? 5 : 50;
                assertThat(Force.parse(force.print(system)).newtons())
                        .isCloseTo(force.newtons(), within(halfLast * (1 + 1e-9)));

                Length length = new Length(value);
                double fine = system == UnitSystem.METRIC ? 0.005 : Length.METRES_PER_FOOT / 20;
                assertThat(Length.parse(length.printFine(system)).metres()).isCloseTo(value, within(fine * (1 + 1e-9)));
            }
        }
    }

    @Test
    void centimetresSurviveBeingAskedForAgain() {
        for (long centimetres = -2_000; centimetres <= 100_000; centimetres += 7) {
            assertThat(Length.centimetres(centimetres).inCentimetres()).isEqualTo(centimetres);
        }
        assertThat(new Length(-0.125).inCentimetres()).isEqualTo(-13);
    }

    @Test
    void quantitiesAreFiniteAndComparable() {
        for (double nonsense : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> new Force(nonsense));
            assertThatIllegalArgumentException().isThrownBy(() -> new Length(nonsense));
            assertThatIllegalArgumentException().isThrownBy(() -> new Mass(nonsense));
            assertThatIllegalArgumentException().isThrownBy(() -> new Angle(nonsense));
        }
        assertThat(Stream.of("2 m", "5 ft", "3 cm").map(Length::parse).sorted())
                .containsExactly(Length.parse("3 cm"), Length.parse("5 ft"), Length.parse("2 m"));
        assertThat(new Force(1)).isLessThan(new Force(2));
        assertThat(new Mass(1)).isLessThan(new Mass(2));
        assertThat(new Angle(1)).isLessThan(new Angle(2));
        assertThat(UnitSystem.METRIC.other().other()).isEqualTo(UnitSystem.METRIC);
    }
}
