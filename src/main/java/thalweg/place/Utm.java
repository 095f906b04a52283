package thalweg.place;

import java.util.Locale;
import java.util.Optional;

/**
 * A place in the Universal Transverse Mercator grid on the WGS 84 ellipsoid.
 *
 * @param zone 1 to 60
 * @param band letter of eight degrees of latitude, C to X without I and O
 * @param easting [m]
 * @param northing [m], with 10,000,000 added on the southern half
 * @see "NGA.SIG.0012, The Universal Grids and the Transverse Mercator and Polar Stereographic Map Projections (2014)"
 */
public record Utm(int zone, char band, double easting, double northing) {

    /** Axis, flattening: NGA.STND.0036, WGS 84. Scale: as defined for UTM. */
    private static final TransverseMercator WGS84 = new TransverseMercator(6_378_137, 1 / 298.257223563, 0.9996);

    private static final String BANDS = "CDEFGHJKLMNPQRSTUVWX";
    private static final int SOUTH_END = -80;
    private static final int NORTH_END = 84;
    private static final int BAND_DEGREES = 8;
    private static final int ZONE_DEGREES = 6;
    private static final double FALSE_EASTING = 500_000;
    private static final double FALSE_NORTHING = 10_000_000;

    /** The place in the grid; empty south of 80° S and north of 84° N, where there is no UTM. */
    public static Optional<Utm> of(Position at) {
        double latitude = at.latE7() / (double) Position.PER_DEGREE;
        double longitude = at.lonE7() / (double) Position.PER_DEGREE;
        if (latitude < SOUTH_END || latitude > NORTH_END) {
            return Optional.empty();
        }
        int zone = zone(latitude, longitude);
        double meridian = zone * ZONE_DEGREES - 183.0;
        TransverseMercator.Plane plane = WGS84.of(latitude, longitude - meridian);
        return Optional.of(new Utm(
                zone,
                band(latitude),
                FALSE_EASTING + plane.east(),
                plane.north() + (latitude < 0 ? FALSE_NORTHING : 0)));
    }

    private static char band(double latitude) {
        int band = (int) Math.floor((latitude - SOUTH_END) / BAND_DEGREES);
        // The last band has twelve degrees.
        return BANDS.charAt(Math.min(band, BANDS.length() - 1));
    }

    /** Zone 32 is wider off the coast of Norway, and around Svalbard four zones take the room of seven. */
    private static int zone(double latitude, double longitude) {
        int usual = (int) Math.floor((longitude + 180) / ZONE_DEGREES) + 1;
        char band = band(latitude);
        if (band == 'V' && longitude >= 3 && longitude < 12) {
            return 32;
        }
        if (band == 'X' && longitude >= 0 && longitude < 42) {
            return longitude < 9 ? 31 : longitude < 21 ? 33 : longitude < 33 ? 35 : 37;
        }
        return usual;
    }

    /** To the metre: "30T 743504 4667493". */
    public String print() {
        return String.format(Locale.ROOT, "%d%c %06d %07d", zone, band, Math.round(easting), Math.round(northing));
    }
}
