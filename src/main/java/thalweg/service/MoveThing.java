package thalweg.service;

import java.util.List;
import thalweg.amend.Located;
import thalweg.amend.Rearrange;
import thalweg.amend.ThingChange;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;

/** Gives a thing another place in its line, or puts it into another thing of its canyon or of another. */
public final class MoveThing {

    private final Session session;

    public MoveThing(Session session) {
        this.session = session;
    }

    /**
     * Saves what was rearranged, all or none.
     *
     * @throws thalweg.fault.ChangedMeanwhileException when one of the things no longer is as it was
     */
    public void rearranged(List<ThingChange> changes) {
        new SaveThing(session)
                .changed(changes.stream()
                        .map(change -> new SaveThing.Changed(change.before(), change.after()))
                        .toList());
    }

    /**
     * Puts a thing at the end of what is in another.
     *
     * @return whether it was not there already
     * @throws InputException when it cannot be in such a thing
     */
    public boolean into(Located thing, Located target) {
        ThingType type = thing.thing().type();
        if (!target.thing().type().word().equals(type.parentKey()) || type == ThingType.TRIP) {
            throw new InputException(ThingType.of(type.parentKey())
                    .map(parent -> Sentence.of(
                            "The {0} cannot be put into the {1}; it belongs to {2}s.",
                            named(thing.thing()), named(target.thing()), parent.inWords()))
                    .orElseGet(() -> Sentence.of(
                            "The {0} cannot be put into the {1}; it belongs to nothing.",
                            named(thing.thing()), named(target.thing()))));
        }
        List<ThingBody> within = target.within();
        boolean there = within.stream()
                .anyMatch(other -> other.uid().equals(thing.thing().uid()));
        int at = there ? within.size() - 1 : within.size();
        return save(Rearrange.to(thing.thing(), target.thing().uid(), within, at));
    }

    /**
     * Puts a thing beside another of its kind.
     *
     * @param after whether it comes after that; else before
     * @return whether it was not there already
     * @throws InputException when the other is of another kind, or the same
     */
    public boolean beside(Located thing, Located other, boolean after) {
        ThingBody moved = thing.thing();
        Uid beside = other.thing().uid();
        if (moved.uid().equals(beside)) {
            throw new InputException(Sentence.of("A thing cannot be put beside itself; name another."));
        }
        if (moved.type() != other.thing().type() || moved.type() == ThingType.CANYON) {
            throw new InputException(Sentence.of(
                    "The {0} cannot be put beside the {1}; name another {2}.",
                    named(moved), named(other.thing()), moved.type().inWords()));
        }
        List<Uid> others = other.line().stream()
                .map(ThingBody::uid)
                .filter(uid -> !uid.equals(moved.uid()))
                .toList();
        int at = others.indexOf(beside) + (after ? 1 : 0);
        return save(Rearrange.to(moved, other.thing().parent().orElseThrow(), other.line(), at));
    }

    private static Sentence named(ThingBody thing) {
        return Sentence.of("{0} \"{1}\"", thing.type().inWords(), thing.label());
    }

    private boolean save(List<ThingChange> changes) {
        rearranged(changes);
        return !changes.isEmpty();
    }
}
