package thalweg.rig;

import java.util.Locale;

/** Which way a connector is pulled. */
public enum ConnectorLoad {
    /** Along its length, gate closed. */
    LONG,
    /** Across its length, gate closed. */
    ACROSS,
    /** Along its length, gate open. */
    OPEN;

    /** How a rig file names it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
