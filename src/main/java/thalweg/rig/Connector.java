package thalweg.rig;

import java.util.Optional;
import thalweg.units.Force;

/**
 * A karabiner or a screwed link and which way it is pulled. Pulled in three directions or over an edge it is weaker than
 * any of its figures.
 *
 * @param along its length, gate closed; empty where unknown
 * @param across its length; empty where unknown
 * @param open along its length with the gate open; empty where unknown or never tested
 * @param loaded which way it is pulled
 * @param assumedLoad whether nobody stated that, so that it is taken to be pulled along its length
 */
public record Connector(
        Optional<Force> along,
        Optional<Force> across,
        Optional<Force> open,
        ConnectorLoad loaded,
        boolean assumedLoad) {

    public Connector {
        boolean nothing = along.filter(force -> force.newtons() <= 0).isPresent()
                || across.filter(force -> force.newtons() <= 0).isPresent()
                || open.filter(force -> force.newtons() <= 0).isPresent();
        if (nothing) {
            throw new IllegalArgumentException("a known strength is above 0");
        }
    }

    /** What it holds the way it is pulled; empty where that is unknown. */
    public Optional<Force> strength() {
        return switch (loaded) {
            case LONG -> along;
            case ACROSS -> across;
            case OPEN -> open;
        };
    }
}
