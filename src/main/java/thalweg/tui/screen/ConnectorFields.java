package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.rig.ConnectorClass;
import thalweg.rig.ConnectorDraft;
import thalweg.rig.ConnectorLoad;
import thalweg.tui.core.Surroundings;
import thalweg.units.Force;

/** A field of a form that says which connector is clipped in somewhere, and which way it is pulled. */
final class ConnectorFields {

    private static final String NONE = "";
    private static final String OWN = "own";

    private ConnectorFields() {}

    /** Adds the field; a connector of no class stays to be chosen as it is. */
    static void add(Build form, String key, String label, Optional<ConnectorDraft> stated, Surroundings around) {
        List<String> options = new ArrayList<>(List.of(NONE));
        List<String> labels = new ArrayList<>(List.of(around.say("rig_form.connector.none")));
        String chosen = NONE;
        for (ConnectorClass kind : ConnectorClass.values()) {
            for (ConnectorLoad way : ConnectorLoad.values()) {
                String option = option(kind, way);
                options.add(option);
                labels.add(label(kind, way, around));
                chosen = stated.equals(Optional.of(kind.pulled(way))) ? option : chosen;
            }
        }
        if (stated.isPresent() && chosen.equals(NONE)) {
            options.add(OWN);
            labels.add(around.say("rig_form.connector.own"));
            chosen = OWN;
        }
        form.options(key, label, options, labels, chosen);
    }

    private static String option(ConnectorClass kind, ConnectorLoad way) {
        return kind.name() + "_" + way.word();
    }

    private static String label(ConnectorClass kind, ConnectorLoad way, Surroundings around) {
        ConnectorDraft connector = kind.pulled(way);
        OptionalDouble holds = switch (way) {
            case LONG -> connector.strengthKilonewtons();
            case ACROSS -> connector.acrossKilonewtons();
            case OPEN -> connector.openKilonewtons();
        };
        return around.say(
                "rig_form.connector.option",
                around.say(kind.key()),
                around.say("rig.connector.loaded." + way.word()),
                holds.isPresent()
                        ? Force.kilonewtons(holds.getAsDouble()).print(around.units())
                        : around.say("unknown"));
    }

    /** What the form says. */
    static Optional<ConnectorDraft> filled(String key, Optional<ConnectorDraft> before, Filled filled) {
        String chosen = filled.last().value(key);
        if (chosen.equals(OWN)) {
            return before;
        }
        for (ConnectorClass kind : ConnectorClass.values()) {
            for (ConnectorLoad way : ConnectorLoad.values()) {
                if (chosen.equals(option(kind, way))) {
                    return Optional.of(kind.pulled(way));
                }
            }
        }
        return Optional.empty();
    }
}
