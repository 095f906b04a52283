package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.amend.Located;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.tui.core.Surroundings;

/**
 * What a thing could be put into, within its canyon: a station into a place, an anchor into a station, a part into an
 * anchor.
 */
final class MoveTargets {

    private MoveTargets() {}

    /** Everything but what it is in now; empty for a place, which only moves along its line. */
    static List<Go.Target> of(CanyonRecord canyon, ThingBody thing, Surroundings around) {
        List<Go.Target> targets = new ArrayList<>();
        for (LineRecord place : canyon.line()) {
            String at = About.placeName(place, around);
            if (thing.type() == ThingType.STATION) {
                targets.add(target(canyon, place.obstacle().uid(), at));
            }
            place.stations().forEach(station -> targets.addAll(at(canyon, station, thing, at, around)));
        }
        Optional<Uid> now = thing.parent();
        return targets.stream()
                .filter(target -> !Optional.of(target.uid()).equals(now))
                .toList();
    }

    private static List<Go.Target> at(
            CanyonRecord canyon, StationRecord station, ThingBody thing, String place, Surroundings around) {
        String name = station.station().name();
        List<Go.Target> targets = new ArrayList<>();
        if (thing.type() == ThingType.ANCHOR) {
            targets.add(target(canyon, station.station().uid(), around.say("move.at", name, place)));
        }
        if (thing.type() == ThingType.PART) {
            for (AnchorRecord anchor : station.anchors()) {
                String both = name + " / " + About.anchorName(anchor, around);
                targets.add(target(canyon, anchor.anchor().uid(), around.say("move.at", both, place)));
            }
        }
        return targets;
    }

    private static Go.Target target(CanyonRecord canyon, Uid uid, String label) {
        List<ThingBody> within = Located.in(canyon, uid).map(Located::within).orElse(List.of());
        return new Go.Target(uid, label, within);
    }
}
