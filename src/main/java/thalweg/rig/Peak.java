package thalweg.rig;

/** The largest value of a smooth quantity that is looked at now and then. */
final class Peak {

    private double timeBefore = Double.NaN;
    private double before = Double.POSITIVE_INFINITY;
    private double timeLast = Double.NaN;
    private double last = Double.POSITIVE_INFINITY;
    private double largest;

    /**
     * Takes a value in.
     *
     * @param time later than the last one
     * @param value 0 or more
     */
    void take(double time, double value) {
        if (time <= timeLast) {
            return;
        }
        largest = Math.max(largest, value);
        if (last > before && last >= value) {
            largest = Math.max(largest, top(time, value));
        }
        timeBefore = timeLast;
        before = last;
        timeLast = time;
        last = value;
    }

    /** The top of the parabola through the last three values, of which the middle one is the largest. */
    private double top(double time, double value) {
        double rise = (last - before) / (timeLast - timeBefore);
        double fall = (value - last) / (time - timeLast);
        double bend = (fall - rise) / (time - timeBefore);
        double slope = rise + bend * (timeLast - timeBefore);
        double top = last - slope * slope / (4 * bend);
        return bend < 0 ? top : last;
    }

    /** Whether the last value is the largest, and above the one before. */
    boolean rising() {
        return last >= largest && last > before;
    }

    /** The largest so far, between the looks as well. */
    double largest() {
        return largest;
    }
}
