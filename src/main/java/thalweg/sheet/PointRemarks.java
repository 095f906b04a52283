package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.PartRecord;
import thalweg.logbook.PartState;
import thalweg.logbook.StationRecord;
import thalweg.rig.RigInput;
import thalweg.rig.RigPoint;
import thalweg.rig.Vector3;
import thalweg.route.PartPlace;
import thalweg.text.Phrases;
import thalweg.units.Force;
import thalweg.units.UnitSystem;

/**
 * What the records say of the points that a rig counts on. A calculation knows no condition, and a file may state other
 * points than a station has: its figures are never shown without this.
 */
public final class PointRemarks {

    /** Two places that are this near to each other are one [m]: nobody measures an anchor better. */
    private static final double SAME_PLACE_METRES = 0.02;

    /** Two strengths this near to each other, in parts of either, are one. */
    private static final double SAME_STRENGTH = 0.01;

    private final RigInput input;
    private final StationRecord station;
    private final Phrases phrases;
    private final UnitSystem units;

    private PointRemarks(RigInput input, StationRecord station, Phrases phrases, UnitSystem units) {
        this.input = input;
        this.station = station;
        this.phrases = phrases;
        this.units = units;
    }

    /**
     * A sentence about a point.
     *
     * @param text of it
     * @param grave whether the point is gone or unsafe, so that the figures must not be counted on
     */
    public record Remark(String text, boolean grave) {}

    /** What is to be said of the points, in their order; nothing where all are sound and as they are entered. */
    public static List<Remark> of(RigInput input, StationRecord station, Phrases phrases, UnitSystem units) {
        return new PointRemarks(input, station, phrases, units).remarks();
    }

    private List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>();
        Optional<Vector3> origin = origin();
        for (RigPoint point : input.points()) {
            Optional<PartRecord> part = part(point);
            if (part.isEmpty()) {
                remarks.add(new Remark(phrases.say("rig.point.missing", point.name()), false));
                continue;
            }
            state(point, part.get().state()).ifPresent(remarks::add);
            strength(point, part.get()).ifPresent(remarks::add);
            origin.filter(from -> isElsewhere(point, part.get(), from))
                    .ifPresent(from -> remarks.add(new Remark(phrases.say("rig.point.place", point.name()), false)));
        }
        return remarks;
    }

    private Optional<Remark> state(RigPoint point, PartState state) {
        boolean sound = state.condition().equals(Optional.of(Condition.SOUND)) && !state.contradictory();
        if (sound) {
            return Optional.empty();
        }
        String told = ConditionWords.told(state.condition(), phrases)
                + state.seenOn().map(day -> ", " + day.print()).orElse("")
                + (state.contradictory() ? "; " + phrases.say("condition.contradictory") : "");
        boolean grave = state.condition()
                .filter(condition -> condition.isWorseThan(Condition.DOUBTFUL))
                .isPresent();
        return Optional.of(new Remark(phrases.say("rig.point.state", point.name(), told), grave));
    }

    private Optional<Remark> strength(RigPoint point, PartRecord part) {
        Optional<Force> computed = point.strength();
        Optional<Force> entered = part.part().strength();
        boolean both = computed.isPresent() && entered.isPresent();
        boolean same = both
                ? Math.abs(computed.get().newtons() / entered.get().newtons() - 1) < SAME_STRENGTH
                : computed.isEmpty() && entered.isEmpty();
        return same
                ? Optional.empty()
                : Optional.of(new Remark(
                        phrases.say("rig.point.strength", point.name(), print(computed), print(entered)), false));
    }

    private String print(Optional<Force> force) {
        return force.map(known -> known.print(units)).orElse(phrases.say("unknown"));
    }

    /** Where the rig has the origin of the station's places: two ways of measuring may begin at different points. */
    private Optional<Vector3> origin() {
        return input.points().stream()
                .flatMap(
                        point -> part(point)
                                .flatMap(part -> part.part().place())
                                .map(place -> point.at().minus(place(place)))
                                .stream())
                .findFirst();
    }

    private static boolean isElsewhere(RigPoint point, PartRecord part, Vector3 origin) {
        return part.part()
                .place()
                .filter(place -> point.at().minus(origin).distance(place(place)) > SAME_PLACE_METRES)
                .isPresent();
    }

    private static Vector3 place(PartPlace place) {
        return new Vector3(
                place.right().metres(), place.up().metres(), place.out().metres());
    }

    /** The part of that label; the second of two like labels is called by its number in a rig. */
    private Optional<PartRecord> part(RigPoint point) {
        return labelled(point.name()).or(() -> labelled(point.name().replaceFirst(" \\d+$", "")));
    }

    private Optional<PartRecord> labelled(String label) {
        return station.parts().stream()
                .filter(part -> part.part().label().equals(label))
                .findFirst();
    }
}
