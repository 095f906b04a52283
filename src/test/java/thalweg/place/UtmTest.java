package thalweg.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class UtmTest {

    private static Position at(double latitude, double longitude) {
        return PositionText.parse(String.format(Locale.ROOT, "%.7f, %.7f", latitude, longitude));
    }

    /** Source: PROJ 9.5.1 (EPSG:326xx and 327xx, by pyproj 3.7.2), the zones of Norway and Svalbard named by hand. */
    @ParameterizedTest
    @CsvSource({
        "42.123456, -0.054321, 30, T, 743492.9468, 4667683.7459",
        "0, 3, 31, N, 500000.0000, 0.0000",
        "0.0000001, 0, 31, N, 166021.4431, 0.0111",
        "-33.8568, 151.2153, 56, H, 334900.5697, 6252288.7529",
        "60.39, 5.32, 32, V, 297230.2202, 6700510.1753",
        "63.9999, 3.0001, 32, V, 206861.4852, 7110815.5867",
        "78.22, 15.65, 33, X, 514813.5273, 8683004.1533",
        "72, 8.9999, 31, X, 706633.0622, 7999233.2940",
        "75.5, 21, 35, X, 332574.9891, 8387890.7607",
        "80, 33.5, 37, X, 393532.3346, 8886622.3646",
        "83.9999, 42, 38, X, 465004.7639, 9328994.0337",
        "-79.9999, -179.9999, 1, C, 441869.1456, 1116926.2911",
        "46.5, 179.9999, 60, T, 730182.6010, 5153976.3989",
        "-0.0000001, -63, 20, M, 500000.0000, 9999999.9889",
        "36.5789, -118.2923, 11, S, 384382.3919, 4048937.1280",
        "-54.8019, -68.303, 19, F, 544805.0975, 3927029.8847",
        "45, 11.9999999, 32, T, 736446.0182, 4987329.5044",
        "64, 4.5, 31, W, 573363.0954, 7097877.3614"
    })
    void theGridIsThatOfAReferenceLibrary(
            double latitude, double longitude, int zone, char band, double easting, double northing) {
        Utm utm = Utm.of(at(latitude, longitude)).orElseThrow();

        assertThat(utm.zone()).isEqualTo(zone);
        assertThat(utm.band()).isEqualTo(band);
        assertThat(utm.easting()).isCloseTo(easting, within(2e-4));
        assertThat(utm.northing()).isCloseTo(northing, within(2e-4));
    }

    /** Source: IOGP Geomatics Guidance Note 7-2, 3.5.3 Transverse Mercator, example of the British National Grid. */
    @Test
    void theProjectionGivesTheWorkedExampleOfTheGuidanceNote() {
        TransverseMercator airy = new TransverseMercator(6_377_563.396, 1 / 299.3249646, 0.9996012717);

        TransverseMercator.Plane place = airy.of(50.5, 2.5);
        double origin = airy.of(49, 0).north();

        assertThat(place.east() + 400_000).isCloseTo(577_274.99, within(0.01));
        assertThat(place.north() - origin - 100_000).isCloseTo(69_740.50, within(0.01));
    }

    /** Source: Snyder, Map Projections, USGS Professional Paper 1395 (1987), numerical example of the ellipsoidal form. */
    @Test
    void theProjectionGivesTheWorkedExampleOfTheManual() {
        double flattening = 1 - Math.sqrt(1 - 0.00676866);
        TransverseMercator clarke = new TransverseMercator(6_378_206.4, flattening, 0.9996);

        TransverseMercator.Plane place = clarke.of(40.5, 1.5);

        assertThat(place.east()).isCloseTo(127_106.5, within(0.1));
        assertThat(place.north()).isCloseTo(4_484_124.4, within(0.1));
    }

    @ParameterizedTest
    @CsvSource({"84.0000001, 10", "90, 0", "-80.0000001, 10", "-90, 0"})
    void nearThePolesThereIsNoGrid(double latitude, double longitude) {
        assertThat(Utm.of(at(latitude, longitude))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "55.9999999, 5, 31, U",
        "56, 2.9999999, 31, V",
        "56, 3, 32, V",
        "71.9999999, 5, 31, W",
        "72, 8.9999999, 31, X",
        "72, 9, 33, X",
        "72, 20.9999999, 33, X",
        "72, 32.9999999, 35, X",
        "72, 33, 37, X",
        "72, 41.9999999, 37, X",
        "84, 0, 31, X",
        "-80, 0, 31, C",
        "0, -180, 1, N"
    })
    void theExceptionsBeginAndEndWhereTheyAreDefined(double latitude, double longitude, int zone, char band) {
        Utm utm = Utm.of(at(latitude, longitude)).orElseThrow();

        assertThat(utm.zone()).isEqualTo(zone);
        assertThat(utm.band()).isEqualTo(band);
    }

    @Test
    void eastAndWestOfTheMeridianAndBothHalvesAreMirrored() {
        Random random = new Random(7);
        TransverseMercator any = new TransverseMercator(6_378_137, 1 / 298.257223563, 0.9996);
        for (int i = 0; i < 1_000; i++) {
            double latitude = random.nextDouble() * 84;
            double longitude = random.nextDouble() * 6;
            TransverseMercator.Plane place = any.of(latitude, longitude);

            assertThat(any.of(latitude, -longitude).east()).isCloseTo(-place.east(), within(1e-6));
            assertThat(any.of(-latitude, longitude).north()).isCloseTo(-place.north(), within(1e-6));
            assertThat(any.of(latitude + 1e-5, longitude).north()).isGreaterThan(place.north());
        }
    }

    @Test
    void itIsPrintedToTheMetreWithZoneAndBand() {
        assertThat(Utm.of(at(42.123456, -0.054321)).orElseThrow().print()).isEqualTo("30T 743493 4667684");
    }
}
