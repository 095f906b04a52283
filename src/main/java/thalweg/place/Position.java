package thalweg.place;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;

/**
 * A place on the WGS 84 ellipsoid.
 *
 * @param latE7 latitude [1e-7 °], -900,000,000 to 900,000,000
 * @param lonE7 longitude [1e-7 °], -1,800,000,000 to below 1,800,000,000
 * @param accuracyMetres how far off it may be [m], above 0; empty where that is unknown
 */
public record Position(long latE7, long lonE7, Optional<Integer> accuracyMetres) {

    /** Steps in a degree. */
    public static final long PER_DEGREE = 10_000_000L;

    public Position {
        if (latE7 < -90 * PER_DEGREE
                || latE7 > 90 * PER_DEGREE
                || lonE7 < -180 * PER_DEGREE
                || lonE7 >= 180 * PER_DEGREE) {
            throw new IllegalArgumentException("a position is on the globe");
        }
        if (accuracyMetres.filter(metres -> metres < 1).isPresent()) {
            throw new IllegalArgumentException("an accuracy is above 0");
        }
    }

    /** Degrees in steps, to the nearest [1e-7 °]. */
    public static long e7(BigDecimal degrees) {
        return degrees.movePointRight(7).setScale(0, RoundingMode.HALF_EVEN).longValueExact();
    }

    /** In decimal degrees, six places: "42.123456, -0.054321". */
    public String printDecimal() {
        return sixPlaces(latE7) + ", " + sixPlaces(lonE7);
    }

    /** Degrees of latitude with all decimals that are known, and no more: "42.1234567". */
    public String printLatitude() {
        return known(latE7);
    }

    /** Degrees of longitude in the same form. */
    public String printLongitude() {
        return known(lonE7);
    }

    private static String known(long e7) {
        BigDecimal degrees = BigDecimal.valueOf(e7, 7).stripTrailingZeros();
        return degrees.setScale(Math.max(0, degrees.scale())).toPlainString();
    }

    /** With how far off it may be, where that is known: "42.123456, -0.054321 ± 10 m". */
    public String print() {
        return printDecimal()
                + accuracyMetres.map(metres -> " ± " + metres + " m").orElse("");
    }

    /** In degrees and decimal minutes: "42° 07.407' N, 0° 03.259' W". */
    public String printMinutes() {
        return minutes(latE7, 'N', 'S') + ", " + minutes(lonE7, 'E', 'W');
    }

    /** As a link that map programs open. Source: RFC 5870. */
    public String printGeo() {
        String uncertainty = accuracyMetres.map(metres -> ";u=" + metres).orElse("");
        return "geo:" + sixPlaces(latE7) + "," + sixPlaces(lonE7) + uncertainty;
    }

    private static String sixPlaces(long e7) {
        return BigDecimal.valueOf(e7, 7).setScale(6, RoundingMode.HALF_UP).toPlainString();
    }

    private static String minutes(long e7, char positive, char negative) {
        long thousandths = Math.round(Math.abs(e7) * 60_000 / (double) PER_DEGREE);
        return String.format(
                Locale.ROOT,
                "%d° %02d.%03d' %s",
                thousandths / 60_000,
                thousandths % 60_000 / 1000,
                thousandths % 1000,
                e7 < 0 ? negative : positive);
    }
}
