package thalweg.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.place.Position;

class DaylightTest {

    private static final Duration TWO_MINUTES = Duration.ofMinutes(2);

    /** 40.9 N 74.3 W on 25 June 1990: sunrise 09:26 UT, sunset 00:33 UT; worked example of the Almanac for Computers 1990, USNO. */
    @Test
    void theAlmanacsExampleIsMet() {
        Daylight day = Daylight.of(position(40.9, -74.3), LocalDate.of(1990, 6, 25), ZoneId.of("America/New_York"));

        assertNear(day.rise().orElseThrow(), ZonedDateTime.of(1990, 6, 25, 9, 26, 0, 0, ZoneOffset.UTC));
        assertNear(day.set().orElseThrow(), ZonedDateTime.of(1990, 6, 26, 0, 33, 0, 0, ZoneOffset.UTC));
    }

    private static Position position(double latitude, double longitude) {
        return new Position(
                Math.round(latitude * Position.PER_DEGREE),
                Math.round(longitude * Position.PER_DEGREE),
                Optional.empty());
    }

    private static void assertNear(ZonedDateTime ours, ZonedDateTime theirs) {
        assertThat(Duration.between(ours, theirs).abs()).isLessThan(TWO_MINUTES);
    }

    /** Against the general solar position equations of NOAA's Global Monitoring Laboratory, for latitudes where they are good. */
    @Test
    void itAgreesWithAnotherSetOfEquations() {
        for (int month = 1; month <= 12; month++) {
            for (double latitude = -45; latitude <= 45; latitude += 15) {
                LocalDate day = LocalDate.of(2026, month, 11);
                ZonedDateTime ours = Daylight.of(position(latitude, 7), day, ZoneOffset.UTC)
                        .set()
                        .orElseThrow();
                ZonedDateTime theirs = day.atStartOfDay(ZoneOffset.UTC)
                        .plusSeconds(Math.round(60 * sunsetMinutes(latitude, 7, day.getDayOfYear())));

                assertThat(Duration.between(ours, theirs).abs())
                        .as("%s at %s", day, latitude)
                        .isLessThan(Duration.ofMinutes(3));
            }
        }
    }

    private static double sunsetMinutes(double latitude, double longitude, int dayOfYear) {
        double year = 2 * Math.PI / 365 * (dayOfYear - 1 + (18.0 - 12) / 24);
        double equation = 229.18
                * (0.000075
                        + 0.001868 * Math.cos(year)
                        - 0.032077 * Math.sin(year)
                        - 0.014615 * Math.cos(2 * year)
                        - 0.040849 * Math.sin(2 * year));
        double declination = 0.006918
                - 0.399912 * Math.cos(year)
                + 0.070257 * Math.sin(year)
                - 0.006758 * Math.cos(2 * year)
                + 0.000907 * Math.sin(2 * year)
                - 0.002697 * Math.cos(3 * year)
                + 0.00148 * Math.sin(3 * year);
        double lat = Math.toRadians(latitude);
        double hour =
                Math.toDegrees(Math.acos(Math.cos(Math.toRadians(90.833)) / (Math.cos(lat) * Math.cos(declination))
                        - Math.tan(lat) * Math.tan(declination)));
        return 720 - 4 * (longitude - hour) - equation;
    }

    @Test
    void aDayWithoutNightHasNoSunset() {
        Daylight day = Daylight.of(position(78, 15), LocalDate.of(2026, 6, 21), ZoneOffset.UTC);

        assertThat(day.set()).isEmpty();
        assertThat(day.rise()).isEmpty();
    }

    /** 13,580 m with 10 m of fall: 476 min; 1,200 ft at a slope of 0.02: 8.26 min. Published worked examples of the formula. */
    @Test
    void kirpichsExamplesAreMet() {
        assertThat(Catchment.kirpich(new Watercourse(13_580, 10))).isCloseTo(476, within(2.0));
        assertThat(Catchment.kirpich(new Watercourse(1200 * 0.3048, 1200 * 0.3048 * 0.02)))
                .isCloseTo(8.26, within(0.05));
        assertThatIllegalArgumentException().isThrownBy(() -> new Watercourse(0, 10));
    }
}
