package thalweg.units;

/** The units in which quantities are shown; both are always understood when typed. */
public enum UnitSystem {
    METRIC,
    IMPERIAL;

    /** The one that is not this. */
    public UnitSystem other() {
        return this == METRIC ? IMPERIAL : METRIC;
    }
}
