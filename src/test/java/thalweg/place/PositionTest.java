package thalweg.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.fault.InputException;

class PositionTest {

    private static Position at(long latE7, long lonE7) {
        return new Position(latE7, lonE7, Optional.empty());
    }

    /** Links in the text of RFC 5870 (sections 1, 6 and 3.4.4), quoted from memory. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            geo:13.4125,103.8667                        | 134125000 | 1038667000 |
            geo:48.2010,16.3695,183                     | 482010000 | 163695000 |
            geo:48.198634,16.371648;crs=wgs84;u=40      | 481986340 | 163716480 | 40
            geo:90,-22.43;crs=WGS84                     | 900000000 | -224300000 |
            geo:66,30;u=6.500;FOo=this%2dthat           | 660000000 | 300000000 | 7
            geo:70,20;foo=1.00;bar=white                | 700000000 | 200000000 |
            """)
    void linksOfTheStandardAreRead(String link, long latE7, long lonE7, Integer accuracy) {
        assertThat(PositionText.parse(link)).isEqualTo(new Position(latE7, lonE7, Optional.ofNullable(accuracy)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0    |
            0.0  |
            0.4  | 1
            35   | 35
            35.7 | 36
            100000 | 100000
            """)
    void anUncertaintyIsNeverMadeSmaller(String u, Integer accuracy) {
        assertThat(PositionText.parse("geo:1,2;u=" + u).accuracyMetres()).isEqualTo(Optional.ofNullable(accuracy));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "geo:",
                "geo:1",
                "geo:1;2",
                "geo:1, 2",
                "geo:+1,2",
                "geo:1,2;crs=nad27",
                "geo:1,2;u=-5",
                "geo:1,2;u=far",
                "geo:1,2;u=100001",
                "geo:1,2;u=999999999999",
                "geo:1,2?z=3"
            })
    void brokenLinksAreRefused(String link) {
        assertThatThrownBy(() -> PositionText.parse(link))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("The link \"" + link + "\" cannot be read; ");
        assertThatThrownBy(() -> PositionText.parse("geo:91,0")).hasMessageContaining("not on the globe");
    }

    @Test
    void positionsArePrintedInThreeNotations() {
        Position here = new Position(421_234_560, -543_210, Optional.of(12));

        assertThat(here.printDecimal()).isEqualTo("42.123456, -0.054321");
        assertThat(here.printMinutes()).isEqualTo("42° 07.407' N, 0° 03.259' W");
        assertThat(here.printGeo()).isEqualTo("geo:42.123456,-0.054321;u=12");
        assertThat(at(-335_000_000, 1_512_500_000).printMinutes()).isEqualTo("33° 30.000' S, 151° 15.000' E");
    }

    @Test
    void roundingNeverLeavesANegativeZeroNorSixtyMinutes() {
        assertThat(at(-1, -4).printDecimal()).isEqualTo("0.000000, 0.000000");
        assertThat(at(-1, -4).printGeo()).isEqualTo("geo:0.000000,0.000000");
        assertThat(at(419_999_999, 0).printMinutes()).isEqualTo("42° 00.000' N, 0° 00.000' E");
    }

    @Test
    void whatIsPrintedIsReadBackWithinHalfAStep() {
        Random random = new Random(5870);
        for (int i = 0; i < 5_000; i++) {
            Position position = new Position(
                    random.nextLong(-900_000_000, 900_000_001),
                    random.nextLong(-1_800_000_000, 1_800_000_000),
                    random.nextBoolean() ? Optional.of(1 + random.nextInt(100_000)) : Optional.empty());

            assertClose(PositionText.parse(position.printDecimal()), position, 5);
            assertClose(PositionText.parse(position.printGeo()), position, 5);
            assertClose(PositionText.parse(position.printMinutes()), position, 84);
            assertThat(PositionText.parse(position.printGeo()).accuracyMetres()).isEqualTo(position.accuracyMetres());
        }
    }

    private static void assertClose(Position read, Position written, long steps) {
        assertThat(read.latE7()).isCloseTo(written.latE7(), within(steps));
        long apart = Math.floorMod(read.lonE7() - written.lonE7() + 1_800_000_000L, 3_600_000_000L) - 1_800_000_000L;
        assertThat(apart).isCloseTo(0L, within(steps));
    }

    @Test
    void placesOffTheGlobeAreNoPositions() {
        for (long[] wrong : new long[][] {
            {900_000_001, 0}, {-900_000_001, 0}, {0, 1_800_000_000}, {0, -1_800_000_001}, {Long.MIN_VALUE, 0}
        }) {
            assertThatIllegalArgumentException().isThrownBy(() -> at(wrong[0], wrong[1]));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> new Position(0, 0, Optional.of(0)));
    }
}
