package thalweg.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.place.Position;

/** Every place of which somebody knows where it is, as a code that a phone opens in a map. */
final class CodesPart {

    private final Wording wording;
    private final Places places;

    CodesPart(Wording wording) {
        this.wording = wording;
        this.places = new Places(wording);
    }

    /** Nothing where no position is shown; two things at one place share a code. */
    Optional<Section> of(CanyonRecord shown) {
        Map<String, List<String>> at = new LinkedHashMap<>();
        add(at, shown.canyon().position(), wording.say("sheet.start"));
        for (LineRecord place : shown.line()) {
            String name = places.shortName(place);
            add(at, place.obstacle().position(), name);
            for (StationRecord station : place.stations()) {
                add(
                        at,
                        station.station().position(),
                        name + ", " + station.station().name());
            }
        }
        List<Block> codes = new ArrayList<>();
        at.forEach((address, names) ->
                codes.add(new Block.Code("code-" + (codes.size() + 1), String.join("; ", names), address)));
        return codes.isEmpty() ? Optional.empty() : Optional.of(Section.of("codes", wording.say("sheet.codes"), codes));
    }

    private static void add(Map<String, List<String>> at, Optional<Position> position, String name) {
        position.ifPresent(known -> at.computeIfAbsent(known.printGeo(), address -> new ArrayList<>())
                .add(name));
    }
}
