package thalweg.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.fault.InputException;

class PositionTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        42.123456, -0.054321     | 421234560 | -543210
        42.123456 -0.054321      | 421234560 | -543210
        42.123456;-0.054321      | 421234560 | -543210
        42.123456,-0.054321      | 421234560 | -543210
        -33.5°, 151.25°          | -335000000 | 1512500000
        +7, 8                    | 70000000 | 80000000
        42; 123                  | 420000000 | 1230000000
        42, 123                  | 420000000 | 1230000000
        42 123                   | 420000000 | 1230000000
        42.12345678901234, 0.1   | 421234568 | 1000000
        0, 180                   | 0 | -1800000000
        -90, -180                | -900000000 | -1800000000
        """)
    void decimalDegreesAreRead(String typed, long latE7, long lonE7) {
        assertThat(PositionText.parse(typed)).isEqualTo(new Position(latE7, lonE7, Optional.empty()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        42,123456; -0,054321     | 421234560 | -543210
        42,123456;-0,054321      | 421234560 | -543210
        42,123 0,054             | 421230000 | 540000
        42,123°  -0,054°         | 421230000 | -540000
        42,123, 0,054            | 421230000 | 540000
        -42,5; 0                 | -425000000 | 0
        42; 0,5                  | 420000000 | 5000000
        42,123 N 0,054 W         | 421230000 | -540000
        42° 07,500' N; 0° 03,300' W | 421250000 | -550000
        """)
    void decimalCommasAreReadWhereNothingElseIsMeant(String typed, long latE7, long lonE7) {
        assertThat(PositionText.parse(typed)).isEqualTo(new Position(latE7, lonE7, Optional.empty()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        42.123456, -0.054321 ± 10 m        | 10
        42.123456, -0.054321±10            | 10
        42.123456, -0.054321 +/- 30 ft     | 10
        42 07.40736 N, 0 03.25926 W ± 25 m | 25
        geo:42.123456,-0.054321;u=5 ± 7 m  | 7
        geo:42.123456,-0.054321;u=5        | 5
        42.123456, -0.054321 ± 0.4 m       | 1
        """)
    void howFarOffItMayBeIsReadBehindThePlace(String typed, int metres) {
        Position position = PositionText.parse(typed);

        assertThat(position.accuracyMetres()).contains(metres);
        assertThat(position.printDecimal()).isEqualTo("42.123456, -0.054321");
        assertThat(PositionText.parse(position.print())).isEqualTo(position);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        42.1, 0.5 ± 0 m      | The accuracy "0 m" is not between 1 and 100000 m
        42.1, 0.5 ± 101 km   | is not between 1 and 100000 m
        42.1, 0.5 ± -3 m     | is not between 1 and 100000 m
        42.1, 0.5 ± near     | The length "near" is not a number with a unit
        42.1 ± 10 m          | The coordinates "42.1" cannot be read
        """)
    void anAccuracyThatTellsNothingIsRefused(String typed, String sentence) {
        assertThatThrownBy(() -> PositionText.parse(typed))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(sentence);
    }

    @ParameterizedTest
    @ValueSource(strings = {"42,123", "42,0", "42,123,0,054", "42,123,456", "-42,5,0,5"})
    void commasThatCanBeReadInMoreThanOneWayAreRefused(String typed) {
        assertThatThrownBy(() -> PositionText.parse(typed))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("can be read in more than one way");
    }

    @ParameterizedTest
    @ValueSource(strings = {"42,5 0", "42 0,5", "42,123 0.054", "42.123 0,054", "42,123; 0.054"})
    void mixedDecimalSignsAreRefused(String typed) {
        assertThatThrownBy(() -> PositionText.parse(typed)).isInstanceOf(InputException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        42° 07.500' N, 0° 03.300' W       | 421250000 | -550000
        42 07.500 N, 0 03.300 W           | 421250000 | -550000
        42°07.500'N 0°03.300'W            | 421250000 | -550000
        N 42° 07.500' W 000° 03.300'      | 421250000 | -550000
        N42 07.500, W0 03.300             | 421250000 | -550000
        S 33° 30.000' E 151° 15.000'      | -335000000 | 1512500000
        33° 30' S, 151° 15' E             | -335000000 | 1512500000
        42° 07' 30" N, 0° 03' 18" W       | 421250000 | -550000
        42°07'30.0"N 0°03'18.0"W          | 421250000 | -550000
        42 07 30 n 0 03 18 w              | 421250000 | -550000
        42° 07' 30'' N, 0° 03' 18'' E     | 421250000 | 550000
        42º 07’ 30” N, 0º 03’ 18” W       | 421250000 | -550000
        42d07m30s N 0d03m18s W            | 421250000 | -550000
        42d 07m 30s S, 0d 03m 18s E       | -421250000 | 550000
        N 42d07m30s W 0d03m18s            | 421250000 | -550000
        42d07.5m N 0d3.3m W               | 421250000 | -550000
        42.125 N, 0.055 W                 | 421250000 | -550000
        N42.125 W0.055                    | 421250000 | -550000
        0° 03.300' W, 42° 07.500' N       | 421250000 | -550000
        0° 00' 00.36" S 0° 00' 00.36" W   | -1000 | -1000
        """)
    void degreesMinutesAndSecondsAreRead(String typed, long latE7, long lonE7) {
        assertThat(PositionText.parse(typed)).isEqualTo(new Position(latE7, lonE7, Optional.empty()));
    }

    /** Each could be read with some goodwill, and some readings would be a valley away. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "42° 30\" N, 0° 10\" W",
                "42.5° 30' N, 0° 10' W",
                "42° 07.5' 30\" N, 0° 03' 18\" W",
                "42d07m24s 0d03m15sW",
                "42d07m24s 0d03m15s",
                "42d07m24S 0d03m15W",
                "4207.5N 00003.3W",
                "420730N 0000318W",
                "42 N, 10 N",
                "42 W, 10 E",
                "42 N",
                "-42 N, 0 W",
                "N 42 07 0 03 W",
                "42.1",
                "here",
                "",
                "42..1, 0",
                "42.1, 0.1, 7",
                "٤٢.1, 0.1",
                "1e1, 1e1",
                "NaN, NaN"
            })
    void whatIsNoNotationIsRefusedWithTwoThatDo(String typed) {
        assertThatThrownBy(() -> PositionText.parse(typed))
                .isInstanceOf(InputException.class)
                .hasMessage("The coordinates \"" + typed
                        + "\" cannot be read; write them as 42.123456, -0.054321 or 42 07.407 N, 0 03.259 W.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"90.0000001, 0", "-91, 0", "0, 180.0000001", "0, -181", "90° 30' N 0° 0' E", "0, 999"})
    void placesOffTheGlobeAreRefused(String typed) {
        assertThatThrownBy(() -> PositionText.parse(typed)).hasMessageContaining("are not on the globe");
    }

    @Test
    void sixtyMinutesOrSecondsAreRefused() {
        for (String typed : new String[] {"42 60 N, 0 0 W", "42 07 60 N, 0 0 0 W", "42 07 N, 0 99.9 W"}) {
            assertThatThrownBy(() -> PositionText.parse(typed)).hasMessageContaining("60 or more minutes or seconds");
        }
    }

    @Test
    void theLetterOIsRefusedBecauseItMeansEastOrWest() {
        assertThatThrownBy(() -> PositionText.parse("42° 07' N, 0° 03' O"))
                .hasMessageContaining("east in one language and west in another");
    }

    @Test
    void aLongTextIsNotRepeatedWhole() {
        assertThatThrownBy(() -> PositionText.parse("4".repeat(5_000))).hasMessageMatching(".{0,150}");
    }

    @Test
    void theMachinesLanguageChangesNothing() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            Position west = PositionText.parse("GEO:42.125,-0.055;U=12");
            assertThat(west.printMinutes()).isEqualTo("42° 07.500' N, 0° 03.300' W");
            assertThat(PositionText.parse("42d07m30s n 0d03m18s w").lonE7()).isEqualTo(-550_000);
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(west.printDecimal()).isEqualTo("42.125000, -0.055000");
            assertThat(west.printMinutes()).isEqualTo("42° 07.500' N, 0° 03.300' W");
        } finally {
            Locale.setDefault(before);
        }
    }
}
