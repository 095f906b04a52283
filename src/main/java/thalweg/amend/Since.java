package thalweg.amend;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thalweg.body.FactBody;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.PartRecord;
import thalweg.logbook.PartState;

/**
 * What became of the records of a canyon between two times, as far as they say something else. What changed and changed
 * back is not in it.
 *
 * @param deeds what was done to things and which entries came or went, along the line
 * @param conditions of parts that were there both times, along the line
 */
public record Since(List<Deed> deeds, List<ConditionChange> conditions) {

    /**
     * A part whose condition is another one.
     *
     * @param part as it is now
     * @param station its name now
     * @param before empty where nobody had seen it
     * @param after empty where nobody has, as far as is recorded now
     */
    public record ConditionChange(
            ThingBody part, String station, Optional<Condition> before, Optional<Condition> after) {}

    public Since {
        deeds = List.copyOf(deeds);
        conditions = List.copyOf(conditions);
    }

    /** Whether the records say the same both times. */
    public boolean isEmpty() {
        return deeds.isEmpty() && conditions.isEmpty();
    }

    /**
     * What became of the one until it was the other.
     *
     * @param before the canyon at the earlier time
     * @param after the same canyon at the later time
     */
    public static Since between(CanyonRecord before, CanyonRecord after) {
        Standing was = Standing.of(before);
        Standing is = Standing.of(after);
        List<Deed> deeds = new ArrayList<>();
        Set<Uid> moved = Rearranged.between(was.lines(), is.lines());
        is.things().values().forEach(thing -> deeds.addAll(things(thing, was, is, moved)));
        was.things().forEach((uid, thing) -> {
            if (!is.things().containsKey(uid)) {
                deeds.add(deed(Deed.Kind.TAKEN_OUT, thing, Optional.of(thing.body()), was));
            }
        });
        deeds.addAll(entries(was, is));
        return new Since(deeds, conditions(before, after));
    }

    private static List<Deed> things(ThingBody now, Standing was, Standing is, Set<Uid> moved) {
        Uid uid = now.uid();
        Optional<ThingBody> then = Optional.ofNullable(was.things().get(uid));
        if (then.isEmpty()) {
            return List.of(deed(Deed.Kind.ENTERED, now, Optional.empty(), is));
        }
        List<Deed> deeds = new ArrayList<>();
        if (!then.get().parent().equals(now.parent())) {
            deeds.add(deed(
                    Deed.Kind.MOVED,
                    named(now, is),
                    Optional.of(named(then.get(), was).body()),
                    is));
        } else if (moved.contains(uid)) {
            deeds.add(deed(Deed.Kind.REORDERED, now, Optional.of(then.get().body()), is));
        }
        if (!unplaced(then.get()).equals(unplaced(now))) {
            ThingBody plain = new ThingBody(now.type(), uid, now.label(), unplaced(now));
            deeds.add(deed(Deed.Kind.CHANGED, plain, Optional.of(unplaced(then.get())), is));
        }
        return deeds;
    }

    /** A body names what it is in by an id; people read the name. */
    private static ThingBody named(ThingBody thing, Standing standing) {
        Optional<ThingBody> into = thing.parent().map(standing.things()::get);
        return into.isEmpty()
                ? thing
                : new ThingBody(
                        thing.type(),
                        thing.uid(),
                        thing.label(),
                        thing.body()
                                .with(
                                        thing.type().parentKey(),
                                        Json.of(into.get().label())));
    }

    /** What a thing says without where it stands. */
    private static Json.Fields unplaced(ThingBody thing) {
        Json.Fields body = thing.body().without(Deed.ORDER);
        return thing.type() == ThingType.CANYON
                ? body
                : body.without(thing.type().parentKey());
    }

    private static Deed deed(Deed.Kind kind, ThingBody thing, Optional<Json.Fields> before, Standing standing) {
        return new Deed(
                kind,
                thing.type().word(),
                thing.uid(),
                new Deed.Subject(thing.type().word(), thing.body(), standing.stationOf(thing.uid())),
                before,
                thing.body(),
                "");
    }

    /** Entries about what was taken out went with it. */
    private static List<Deed> entries(Standing was, Standing is) {
        List<Deed> deeds = new ArrayList<>();
        Set<Uid> corrected = new HashSet<>();
        is.entries().forEach((uid, entry) -> {
            if (!was.entries().containsKey(uid)) {
                Optional<Standing.Noted> wrong = entry.corrects().map(was.entries()::get);
                entry.corrects().ifPresent(corrected::add);
                deeds.add(entry(
                        wrong.isPresent() ? Deed.Kind.CORRECTED : Deed.Kind.ADDED,
                        uid,
                        entry,
                        wrong.map(one -> one.said().body()),
                        entry.said().body(),
                        is));
            }
        });
        was.entries().forEach((uid, entry) -> {
            boolean gone = !is.things().containsKey(entry.said().about());
            if (!is.entries().containsKey(uid) && !corrected.contains(uid) && !gone) {
                deeds.add(entry(
                        Deed.Kind.WITHDRAWN,
                        uid,
                        entry,
                        Optional.of(entry.said().body()),
                        Json.fields().done(),
                        is));
            }
        });
        return deeds;
    }

    private static Deed entry(
            Deed.Kind kind,
            Uid uid,
            Standing.Noted entry,
            Optional<Json.Fields> before,
            Json.Fields after,
            Standing standing) {
        FactBody said = entry.said();
        Optional<ThingBody> about = Optional.ofNullable(standing.things().get(said.about()));
        return new Deed(
                kind,
                said.type().word(),
                uid,
                new Deed.Subject(
                        said.type().owner().word(),
                        about.map(ThingBody::body).orElse(Json.fields().done()),
                        standing.stationOf(said.about())),
                before,
                after,
                "");
    }

    private static List<ConditionChange> conditions(CanyonRecord before, CanyonRecord after) {
        Map<Uid, PartState> then = new HashMap<>();
        before.stations()
                .forEach(station ->
                        station.parts().forEach(part -> then.put(part.part().uid(), part.state())));
        Map<Uid, ConditionChange> changes = new LinkedHashMap<>();
        after.stations().forEach(station -> {
            for (PartRecord part : station.parts()) {
                Uid uid = part.part().uid();
                PartState was = then.get(uid);
                if (was != null && !was.condition().equals(part.state().condition())) {
                    changes.put(
                            uid,
                            new ConditionChange(
                                    ThingBody.of(part.part()),
                                    station.station().name(),
                                    was.condition(),
                                    part.state().condition()));
                }
            }
        });
        return List.copyOf(changes.values());
    }
}
