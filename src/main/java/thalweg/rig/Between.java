package thalweg.rig;

import org.hipparchus.ode.ODEStateAndDerivative;

/**
 * Where a mass is between two moments at which its place, speed and acceleration are known: the polynomial of the fifth
 * degree that has all of them.
 *
 * <p>The integrator's own answer is a little closer but computes speeds and accelerations too, which took half of the time
 * of a motion; the peaks of six hundred random rigs differ by less than 3 in 100,000. On a harmonic motion this is off by
 * at most 1/46080 of the sixth power of the phase that passes between the two, in parts of the swing.
 *
 * @see "Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I, 2nd edition, II.6, Hermite interpolation"
 */
final class Between {

    private static final int DIMENSIONS = 3;

    /** For each dimension the factors of the powers of the share of the time, from the zeroth on [m]. */
    private final double[][] factors = new double[DIMENSIONS][];

    /** States hold the place [m] and then the speed [m/s]. */
    Between(ODEStateAndDerivative from, ODEStateAndDerivative to) {
        double time = to.getTime() - from.getTime();
        double[] first = from.getPrimaryState();
        double[] last = to.getPrimaryState();
        double[] firstRates = from.getPrimaryDerivative();
        double[] lastRates = to.getPrimaryDerivative();
        for (int i = 0; i < DIMENSIONS; i++) {
            double way = last[i] - first[i];
            double speedFrom = firstRates[i] * time;
            double speedTo = lastRates[i] * time;
            double bendFrom = firstRates[DIMENSIONS + i] * time * time / 2;
            double bendTo = lastRates[DIMENSIONS + i] * time * time / 2;
            factors[i] = new double[] {
                first[i],
                speedFrom,
                bendFrom,
                10 * way - 6 * speedFrom - 4 * speedTo - 3 * bendFrom + bendTo,
                -15 * way + 8 * speedFrom + 7 * speedTo + 3 * bendFrom - 2 * bendTo,
                6 * way - 3 * speedFrom - 3 * speedTo - bendFrom + bendTo
            };
        }
    }

    /**
     * The place.
     *
     * @param share of the time that has passed, 0 to 1
     * @return three places [m]
     */
    double[] at(double share) {
        double[] place = new double[DIMENSIONS];
        for (int i = 0; i < DIMENSIONS; i++) {
            double[] of = factors[i];
            double sum = 0;
            for (int power = of.length - 1; power >= 0; power--) {
                sum = sum * share + of[power];
            }
            place[i] = sum;
        }
        return place;
    }
}
