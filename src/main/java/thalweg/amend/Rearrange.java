package thalweg.amend;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.ledger.Reorder;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;

/** Gives a thing another place: in its line, or in something else. What was entered on it stays with it. */
public final class Rearrange {

    private Rearrange() {}

    /**
     * What has to change for a thing to stand at a place; its neighbours change only where they had the same order key.
     *
     * @param thing that is moved
     * @param into what it will be in
     * @param line the things that are in that, in order; the moved one may be among them
     * @param at how many of the others come before it then, 0 to all of them
     * @return empty where it stands there already
     */
    public static List<ThingChange> to(ThingBody thing, Uid into, List<ThingBody> line, int at) {
        List<ThingBody> others =
                line.stream().filter(other -> !other.uid().equals(thing.uid())).toList();
        boolean here = others.size() < line.size() && line.get(at).uid().equals(thing.uid());
        if (here) {
            return List.of();
        }
        List<Reorder.Member> members = others.stream()
                .map(other -> new Reorder.Member(other.uid(), other.order()))
                .toList();
        Map<Uid, String> keys = Reorder.keys(members, thing.uid(), at);
        List<ThingChange> changes = new ArrayList<>();
        changes.add(new ThingChange(thing, thing.placed(into, key(keys, thing))));
        for (ThingBody other : others) {
            if (keys.containsKey(other.uid())) {
                changes.add(new ThingChange(other, other.placed(into, key(keys, other))));
            }
        }
        return changes;
    }

    /**
     * What has to change for a thing to move one place up or down its line. A station goes over the end of its place to
     * the neighbouring place.
     *
     * @param by -1 for up, 1 for down
     * @return empty where it is the first or the last already, or is not in that canyon
     */
    public static Optional<List<ThingChange>> shifted(CanyonRecord canyon, Uid thing, int by) {
        return Located.in(canyon, thing).flatMap(found -> shifted(canyon, found, by));
    }

    private static Optional<List<ThingChange>> shifted(CanyonRecord canyon, Located found, int by) {
        Optional<Uid> parent = found.thing().parent();
        int at = found.at() + by;
        if (parent.isEmpty()) {
            return Optional.empty();
        }
        if (at >= 0 && at < found.line().size()) {
            return Optional.of(to(found.thing(), parent.get(), found.line(), at));
        }
        if (found.thing().type() != ThingType.STATION) {
            return Optional.empty();
        }
        List<ThingBody> places = Located.in(canyon, parent.get()).orElseThrow().line();
        int beside = places.stream().map(ThingBody::uid).toList().indexOf(parent.get()) + by;
        if (beside < 0 || beside >= places.size()) {
            return Optional.empty();
        }
        Uid into = places.get(beside).uid();
        List<ThingBody> stations = Located.in(canyon, into).orElseThrow().within();
        return Optional.of(to(found.thing(), into, stations, by < 0 ? stations.size() : 0));
    }

    private static String key(Map<Uid, String> keys, ThingBody thing) {
        return Objects.requireNonNull(keys.get(thing.uid()), "what moves has a key");
    }
}
