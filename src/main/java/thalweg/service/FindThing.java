package thalweg.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.amend.Located;
import thalweg.body.FactType;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Fact;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;

/** Finds the one thing that a name or id stands for, of whatever kind, and the one entry of an id. */
public final class FindThing {

    private final Session session;

    public FindThing(Session session) {
        this.session = session;
    }

    /** A thing and the canyon in which it is, or which it is. */
    public record InCanyon(CanyonRecord canyon, Located at) {}

    /**
     * The thing of that name or id: CANYON, CANYON/STATION, CANYON/STATION/PART, or the id of anything.
     *
     * @throws InputException when none or several fit, with what would do
     */
    public InCanyon of(String nameOrId) {
        Optional<Uid> uid = Uid.parse(nameOrId);
        if (uid.isPresent()) {
            return byId(uid.get())
                    .orElseThrow(() -> new InputException(Sentence.of(
                            "There is nothing in use with the id {0}; `show --ids` lists the ids of what there is.",
                            uid.get().text())));
        }
        FindRecord find = new FindRecord(session);
        List<String> names = List.of(nameOrId.split("/", -1));
        if (names.size() == 1) {
            CanyonRecord canyon = find.canyon(nameOrId);
            return in(canyon, canyon.canyon().uid());
        }
        if (names.size() == 2) {
            FindRecord.StationInCanyon found = find.station(nameOrId);
            return in(found.canyon(), found.station().station().uid());
        }
        int last = nameOrId.lastIndexOf('/');
        FindRecord.StationInCanyon found = find.station(nameOrId.substring(0, last));
        PartRecord part = FindRecord.part(found.station(), nameOrId.substring(last + 1));
        return in(found.canyon(), part.part().uid());
    }

    /** The thing of that id, if it is in use. */
    public Optional<InCanyon> byId(Uid uid) {
        return session.things()
                .canyonOf(uid)
                .flatMap(canyon -> new FindRecord(session).byId(canyon))
                .flatMap(canyon -> Located.in(canyon, uid).map(at -> new InCanyon(canyon, at)));
    }

    /** The canyon around a thing or around what an entry is about, in use or not; empty where nothing is known by that id. */
    public Optional<Uid> canyonAround(Uid thingOrEntry) {
        return session.things()
                .canyonOf(thingOrEntry)
                .or(() -> session.ledger()
                        .fact(thingOrEntry)
                        .flatMap(fact -> session.things().canyonOf(fact.about())));
    }

    private static InCanyon in(CanyonRecord canyon, Uid uid) {
        return new InCanyon(canyon, Located.in(canyon, uid).orElseThrow());
    }

    /**
     * An entry, what it is about, and the canyon around that.
     *
     * @param canyon in which it is
     * @param about the thing that it is about
     * @param type of the entry
     * @param entry as it stands
     */
    public record EntryInCanyon(CanyonRecord canyon, Located about, FactType type, Entry<?> entry) {}

    /**
     * The entry of that id.
     *
     * @throws InputException when there is none
     * @throws ChangedMeanwhileException when what it is about is out of use
     */
    public EntryInCanyon entry(String id) {
        Uid uid = Uid.parse(id)
                .orElseThrow(() -> new InputException(Sentence.of(
                        "\"{0}\" is no id of an entry; `show --ids` lists the ids, such as"
                                + " 0197c2a4-5b1e-8f00-9a3c-1d2e3f405162.",
                        id.strip())));
        Fact fact = session.ledger()
                .fact(uid)
                .filter(known -> FactType.of(known.type()).isPresent())
                .orElseThrow(() -> new InputException(
                        Sentence.of("There is no entry with the id {0}; `show --ids` lists the ids.", uid.text())));
        InCanyon about = byId(fact.about())
                .orElseThrow(() -> new ChangedMeanwhileException(
                        Sentence.of("What this entry is about is out of use; `changes` brings it back.")));
        Entry<?> entry = entries(about.canyon())
                .filter(known -> known.uid().equals(uid))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        Sentence.of("This entry stays with this database; it is not changed here.")));
        return new EntryInCanyon(
                about.canyon(), about.at(), FactType.of(fact.type()).orElseThrow(), entry);
    }

    private static Stream<Entry<?>> entries(CanyonRecord canyon) {
        List<Entry<?>> entries = new ArrayList<>(canyon.rounds());
        for (StationRecord station : canyon.stations()) {
            station.parts().forEach(part -> entries.addAll(part.inspections()));
            entries.addAll(station.notes());
            entries.addAll(station.analyses());
        }
        return entries.stream();
    }
}
