package thalweg.rig;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Classes of connectors with the least that they must hold, along their length, with the gate open and across [kN].
 *
 * @see "EN 12275:2013, seen second-hand; class Q of EN 362:2004 has the same figures"
 */
public enum ConnectorClass {
    /** Basic. */
    B(20, 7, 7),
    /** For belaying with a half hitch. */
    H(20, 6, 7),
    /** For iron ways and rails. */
    K(25, 8, 7),
    /** Oval. */
    X(18, 5, 7),
    /** A link that is screwed shut, and is not tested open. */
    Q(25, 0, 10);

    private final double along;
    private final double open;
    private final double across;

    ConnectorClass(double along, double open, double across) {
        this.along = along;
        this.open = open;
        this.across = across;
    }

    /** A connector of this class that is pulled that way. */
    public ConnectorDraft pulled(ConnectorLoad loaded) {
        return new ConnectorDraft(
                OptionalDouble.of(along),
                OptionalDouble.of(across),
                open > 0 ? OptionalDouble.of(open) : OptionalDouble.empty(),
                Optional.of(loaded));
    }

    /** Under which the phrases keep its name. */
    public String key() {
        return "rig.connector." + name().toLowerCase(Locale.ROOT);
    }
}
