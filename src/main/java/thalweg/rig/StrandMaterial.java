package thalweg.rig;

import java.util.Locale;
import thalweg.units.Force;

/**
 * Stiffness of common material, force per unit strain of one strand.
 *
 * <p>These are modelling choices, not measurements: derived from strengths and elongations at break, and a secant to
 * break overstates how stiff a strand is under a low load. An answer should be looked at with low and high as well.
 */
public enum StrandMaterial {
    /** Tubular nylon webbing of 1 in (25 mm). */
    NYLON_WEBBING(51, 70, 94),
    /** Nylon accessory cord of 7 mm. */
    NYLON_CORD_7(28, 40, 52),
    /** Polyester tape of 17.8 kN. */
    POLYESTER_TAPE(71, 110, 127),
    /** Sewn sling of ultra-high-molecular-weight polyethylene. */
    UHMWPE_SLING(80, 150, 310),
    /** Low-stretch rope after EN 1891. */
    LOW_STRETCH_ROPE(20, 40, 60),
    /** Dynamic rope in a fall. */
    DYNAMIC_ROPE_FALL(18.5, 24, 30),
    /** Dynamic rope under a load at rest. */
    DYNAMIC_ROPE_STATIC(8, 10, 13);

    private final double low;
    private final double nominal;
    private final double high;

    StrandMaterial(double lowKilonewtons, double nominalKilonewtons, double highKilonewtons) {
        this.low = lowKilonewtons;
        this.nominal = nominalKilonewtons;
        this.high = highKilonewtons;
    }

    /** The softest it is taken to be. */
    public Force low() {
        return Force.kilonewtons(low);
    }

    /** What is used unless somebody chooses otherwise. */
    public Force nominal() {
        return Force.kilonewtons(nominal);
    }

    /** The stiffest it is taken to be. */
    public Force high() {
        return Force.kilonewtons(high);
    }

    /** Under which the phrases keep its name. */
    public String key() {
        return "rig.material." + name().toLowerCase(Locale.ROOT);
    }
}
