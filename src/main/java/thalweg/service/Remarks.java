package thalweg.service;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.RecordRules;

/**
 * What a person should hear about what they have just saved: what contradicts itself in the canyon since then, and a name
 * that another canyon has too. Nothing of it is refused, for the other record may be the wrong one.
 */
public final class Remarks {

    private final Session session;
    private final Optional<Uid> canyon;
    private final Optional<ThingBody> named;
    private final Set<RecordRules.Broken> before;

    private Remarks(Session session, Optional<Uid> canyon, Optional<ThingBody> named) {
        this.session = session;
        this.canyon = canyon;
        this.named = named;
        this.before = new HashSet<>(broken());
    }

    /**
     * How the records stand before something is saved.
     *
     * @param within a thing in the canyon that will change, or that canyon
     */
    public static Remarks before(Session session, Uid within) {
        return new Remarks(session, session.things().canyonOf(within), Optional.empty());
    }

    /** How the records stand before that thing is entered. */
    public static Remarks beforeNew(Session session, ThingBody thing) {
        return new Remarks(session, thing.parent().flatMap(session.things()::canyonOf), Optional.of(thing));
    }

    /** How the records stand before a thing is changed. */
    public static Remarks beforeChanged(Session session, ThingBody was, ThingBody becomes) {
        return new Remarks(
                session,
                session.things().canyonOf(becomes.uid()),
                Optional.of(becomes).filter(thing -> !thing.label().equals(was.label())));
    }

    /** What has come up since, one sentence each with the names that lead there. */
    public List<Sentence> since() {
        List<Sentence> remarks = new ArrayList<>();
        named.flatMap(this::sameName).ifPresent(remarks::add);
        for (RecordRules.Broken one : broken()) {
            if (!before.contains(one)) {
                List<Sentence> within = one.where().subList(1, one.where().size());
                remarks.add(
                        within.isEmpty()
                                ? one.what()
                                : Sentence.of("{0}: {1}", Sentence.joined(" / ", within), one.what()));
            }
        }
        return remarks;
    }

    private Optional<Sentence> sameName(ThingBody saved) {
        return saved.type() == ThingType.CANYON
                        && session.canyons().named(saved.label()).size() > 1
                ? Optional.of(Sentence.of(
                        "Another canyon is called \"{0}\" too; if it is the same one, take one of them out of use.",
                        saved.label()))
                : Optional.empty();
    }

    private List<RecordRules.Broken> broken() {
        return canyon.flatMap(uid -> session.records().canyon(uid))
                .map(record -> RecordRules.brokenBy(record, session.today()))
                .orElse(List.of());
    }
}
