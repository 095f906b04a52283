package thalweg.amend;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.body.ThingBody;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;

/**
 * A thing where it stands.
 *
 * @param thing itself
 * @param contents what is in it
 * @param line what stands in line with it, itself among them, in order
 * @param within what is directly in it, in order
 */
public record Located(ThingBody thing, Contents contents, List<ThingBody> line, List<ThingBody> within) {

    public Located {
        line = List.copyOf(line);
        within = List.copyOf(within);
    }

    /** The thing of that name in a canyon, the canyon itself too; empty where there is none. */
    public static Optional<Located> in(CanyonRecord canyon, Uid uid) {
        ThingBody self = ThingBody.of(canyon.canyon());
        List<ThingBody> places = bodies(canyon.line(), place -> ThingBody.of(place.obstacle()));
        if (self.uid().equals(uid)) {
            return Optional.of(new Located(self, Contents.of(canyon), List.of(self), places));
        }
        for (LineRecord place : canyon.line()) {
            List<ThingBody> stations = bodies(place.stations(), station -> ThingBody.of(station.station()));
            if (place.obstacle().uid().equals(uid)) {
                return Optional.of(new Located(ThingBody.of(place.obstacle()), Contents.of(place), places, stations));
            }
            for (StationRecord station : place.stations()) {
                Optional<Located> found = in(station, stations, uid);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Located> in(StationRecord station, List<ThingBody> stations, Uid uid) {
        List<ThingBody> anchors = bodies(station.anchors(), anchor -> ThingBody.of(anchor.anchor()));
        if (station.station().uid().equals(uid)) {
            return Optional.of(new Located(ThingBody.of(station.station()), Contents.of(station), stations, anchors));
        }
        for (AnchorRecord anchor : station.anchors()) {
            List<ThingBody> parts = bodies(anchor.parts(), part -> ThingBody.of(part.part()));
            if (anchor.anchor().uid().equals(uid)) {
                return Optional.of(new Located(ThingBody.of(anchor.anchor()), Contents.of(anchor), anchors, parts));
            }
            for (ThingBody part : parts) {
                if (part.uid().equals(uid)) {
                    return Optional.of(new Located(part, Contents.NOTHING, parts, List.of()));
                }
            }
        }
        return Optional.empty();
    }

    private static <T> List<ThingBody> bodies(List<T> records, Function<T, ThingBody> body) {
        return records.stream().map(body).toList();
    }

    /** Which it is in its line, counted from 0. */
    public int at() {
        return line.stream().map(ThingBody::uid).toList().indexOf(thing.uid());
    }
}
