package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A connector as it was typed or read, right or wrong; empty is not stated.
 *
 * @param strengthKilonewtons along its length, gate closed [kN]
 * @param acrossKilonewtons across its length [kN]
 * @param openKilonewtons along its length, gate open [kN]
 * @param loaded which way it is pulled
 */
public record ConnectorDraft(
        OptionalDouble strengthKilonewtons,
        OptionalDouble acrossKilonewtons,
        OptionalDouble openKilonewtons,
        Optional<ConnectorLoad> loaded) {

    static ConnectorDraft of(Connector connector) {
        return new ConnectorDraft(
                Stated.kilonewtons(connector.along()),
                Stated.kilonewtons(connector.across()),
                Stated.kilonewtons(connector.open()),
                connector.assumedLoad() ? Optional.empty() : Optional.of(connector.loaded()));
    }
}
