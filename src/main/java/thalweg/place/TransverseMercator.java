package thalweg.place;

/**
 * The transverse Mercator projection of an ellipsoid, by the series of Krüger to the sixth order of the third flattening.
 * Within 3,900 km of the central meridian it is good to nanometres; a UTM zone reaches 400 km.
 *
 * @param equatorMetres half the long axis of the ellipsoid [m], above 0
 * @param flattening of the ellipsoid [-], 0 to 0.01
 * @param scale on the central meridian [-], above 0
 * @see "Karney, Transverse Mercator with an accuracy of a few nanometers, J. Geodesy 85 (2011) 475-485, (7) to (11), (14), (35)"
 */
record TransverseMercator(double equatorMetres, double flattening, double scale) {

    /**
     * A place on the projection.
     *
     * @param east of the central meridian [m]
     * @param north of the equator [m]
     */
    record Plane(double east, double north) {}

    /**
     * Where a place falls.
     *
     * @param latitude [°], above -90 and below 90
     * @param fromMeridian how far east of the central meridian [°], above -90 and below 90
     */
    Plane of(double latitude, double fromMeridian) {
        double n = flattening / (2 - flattening);
        double eccentricity = Math.sqrt(flattening * (2 - flattening));
        double tau = Math.tan(Math.toRadians(latitude));
        double lambda = Math.toRadians(fromMeridian);
        double sigma = Math.sinh(eccentricity * atanh(eccentricity * tau / Math.hypot(1, tau)));
        double conformal = tau * Math.hypot(1, sigma) - sigma * Math.hypot(1, tau);
        double xi = Math.atan2(conformal, Math.cos(lambda));
        double eta = asinh(Math.sin(lambda) / Math.hypot(conformal, Math.cos(lambda)));
        double north = xi;
        double east = eta;
        double[] alpha = alpha(n);
        for (int j = 1; j <= alpha.length; j++) {
            north += alpha[j - 1] * Math.sin(2 * j * xi) * Math.cosh(2 * j * eta);
            east += alpha[j - 1] * Math.cos(2 * j * xi) * Math.sinh(2 * j * eta);
        }
        double radius = scale * rectifyingRadius(n);
        return new Plane(radius * east, radius * north);
    }

    /** The radius of a circle as long as a meridian [m]. */
    private double rectifyingRadius(double n) {
        double n2 = n * n;
        return equatorMetres / (1 + n) * (1 + n2 / 4 + n2 * n2 / 64 + n2 * n2 * n2 / 256);
    }

    /** From the conformal to the rectifying latitude, six terms [rad]. */
    private static double[] alpha(double n) {
        double n2 = n * n;
        double n3 = n2 * n;
        double n4 = n3 * n;
        double n5 = n4 * n;
        double n6 = n5 * n;
        return new double[] {
            n / 2 - n2 * 2 / 3 + n3 * 5 / 16 + n4 * 41 / 180 - n5 * 127 / 288 + n6 * 7891 / 37800,
            n2 * 13 / 48 - n3 * 3 / 5 + n4 * 557 / 1440 + n5 * 281 / 630 - n6 * 1983433 / 1935360,
            n3 * 61 / 240 - n4 * 103 / 140 + n5 * 15061 / 26880 + n6 * 167603 / 181440,
            n4 * 49561 / 161280 - n5 * 179 / 168 + n6 * 6601661 / 7257600,
            n5 * 34729 / 80640 - n6 * 3418889 / 1995840,
            n6 * 212378941 / 319334400
        };
    }

    private static double atanh(double x) {
        return Math.log((1 + x) / (1 - x)) / 2;
    }

    private static double asinh(double x) {
        return Math.copySign(Math.log(Math.abs(x) + Math.hypot(1, x)), x);
    }
}
