package thalweg.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.fault.InputException;

class QuantityTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1,250     | 1250 or 1.250.
            1,250 m   | 1250 m or 1.250 m.
            -1,250 m  | -1250 m or -1.250 m.
            12,500mm  | 12500mm or 12.500mm.
            999,999 ft | 999999 ft or 999.999 ft.
            """)
    void aCommaBeforeThreeDigitsIsRefusedWithBothReadings(String typed, String end) {
        assertThatThrownBy(() -> Length.parse(typed))
                .isInstanceOf(InputException.class)
                .hasMessage("The length \"" + typed + "\" can be read in two ways; write " + end);
    }

    /** What the message offers is itself understood, and is the two things the person may have meant. */
    @Test
    void bothOffersForAnAmbiguousCommaCanBeTyped() {
        assertThat(Length.parse("1250 m").metres()).isEqualTo(1250);
        assertThat(Length.parse("1.250 m").metres()).isEqualTo(1.25);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            18,3 m  | 18.3
            18,25   | 18.25
            0,250 m | 0.25
            ,5 m    | 0.5
            1,2500  | 1.25
            1,25    | 1.25
            1234,500 | 1234.5
            """)
    void otherCommasAreDecimal(String typed, double metres) {
        assertThat(Length.parse(typed).metres()).isCloseTo(metres, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "m",
                "twelve",
                "1 2",
                "1..2",
                "1.2.3",
                "1,250,000",
                "1e3",
                "0x10",
                "NaN",
                "Infinity",
                "3 furlongs",
                "18 kg",
                "--3",
                "٣ m",
                "３ m",
                "12345678901234567890123456789012345678901234567890"
            })
    void whatIsNoQuantityIsRefusedWithASentence(String typed) {
        assertThatThrownBy(() -> Length.parse(typed))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("The length \"")
                .hasMessageEndingWith("write a number such as 18.3 and one of: \", ', cm, ft, in, km, m, mm.");
    }

    @Test
    void aLongTextIsNotRepeatedWhole() {
        assertThatThrownBy(() -> Mass.parse("9".repeat(5000))).hasMessageMatching("(?s).{0,200}");
    }

    @Test
    void spacesSignsAndQuotesOfWordProcessorsAreUnderstood() {
        assertThat(Length.parse("\u00A018.3\u00A0m ").metres()).isEqualTo(18.3);
        assertThat(Length.parse("\u22122\u202Fm").metres()).isEqualTo(-2);
        assertThat(Length.parse("5\u2019 6\u201D")).isEqualTo(Length.parse("5 ft 6 in"));
        assertThat(Length.parse("5\u2032 6\u2033")).isEqualTo(Length.parse("5 ft 6 in"));
    }

    @Test
    void roundingIsHalfUpOfTheDecimalAndNeverANegativeZero() {
        assertThat(QuantityText.write(0.125, 2)).isEqualTo("0.13");
        assertThat(QuantityText.write(2.675, 2)).isEqualTo("2.68");
        assertThat(QuantityText.write(-0.004, 2)).isEqualTo("0.00");
        assertThat(QuantityText.write(-0.0, 0)).isEqualTo("0");
        assertThat(QuantityText.write(1e21, 0)).isEqualTo("1000000000000000000000");
    }

    @Test
    void theMachinesLanguageChangesNothing() {
        Locale before = Locale.getDefault();
        try {
            for (String language : new String[] {"tr-TR", "de-DE", "ar-EG", "fa-IR", "hi-IN-u-nu-deva"}) {
                Locale.setDefault(Locale.forLanguageTag(language));

                assertThat(Length.parse("12 IN").metres()).isCloseTo(0.3048, within(1e-15));
                assertThat(Force.parse("1.5 KN").newtons()).isEqualTo(1500);
                assertThat(Force.parse("1.5 kN").print(UnitSystem.METRIC)).isEqualTo("1.50 kN");
                assertThat(Length.parse("18.3").print(UnitSystem.METRIC)).isEqualTo("18.3 m");
                assertThat(Mass.parse("200 LB").print(UnitSystem.IMPERIAL)).isEqualTo("200 lb");
                assertThat(Angle.parse("15 DEG").print()).isEqualTo("15°");
                assertThatThrownBy(() -> Length.parse("3 lıght-years")).isInstanceOf(InputException.class);
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
