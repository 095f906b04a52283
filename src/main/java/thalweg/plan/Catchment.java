package thalweg.plan;

/** How fast a catchment answers rain: an estimate from small farm basins, and for a canyon no more than that. */
public final class Catchment {

    private Catchment() {}

    /**
     * Time of concentration: how long water takes from the farthest point to the outlet.
     *
     * @return [min]
     * @see "Kirpich, Time of Concentration of Small Agricultural Watersheds, Civil Engineering 10 (6), 1940"
     */
    public static double kirpich(Watercourse along) {
        return 0.01947 * Math.pow(along.metres(), 0.77) * Math.pow(along.fall() / along.metres(), -0.385);
    }
}
