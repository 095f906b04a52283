package thalweg.amend;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import thalweg.body.ThingBody;
import thalweg.ledger.Reorder;
import thalweg.ledger.Uid;

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
        changes.add(new ThingChange(thing, thing.placed(into, keys.get(thing.uid()))));
        for (ThingBody other : others) {
            if (keys.containsKey(other.uid())) {
                changes.add(new ThingChange(other, other.placed(into, keys.get(other.uid()))));
            }
        }
        return changes;
    }
}
