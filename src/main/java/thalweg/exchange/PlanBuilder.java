package thalweg.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thalweg.body.FactBody;
import thalweg.body.ThingBody;
import thalweg.exchange.ImportPlan.FieldChange;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.route.Canyon;

/** Works out, thing by thing, what an import would change. */
public final class PlanBuilder {

    /** What becomes of a thing or an entry. */
    public enum Outcome {
        NEW,
        CHANGED,
        SAME
    }

    private final Known known;
    private final String author;
    private final String at;
    private final List<Revision> revisions = new ArrayList<>();
    private final Map<Uid, Fact> facts = new LinkedHashMap<>();
    private final List<FieldChange> changes = new ArrayList<>();
    private final List<Sentence> remarks = new ArrayList<>();
    private int added;
    private int unchanged;
    private int amended;

    /**
     * @param known what is here already
     * @param author under whose name changes to things are written
     * @param at the time that is written on them, RFC 3339 in UTC
     */
    public PlanBuilder(Known known, String author, String at) {
        this.known = known;
        this.author = author;
        this.at = at;
    }

    /** Adds a canyon with everything in it. */
    public void parcel(Parcel parcel) {
        canyon(parcel.canyon());
        Canyon canyon = parcel.canyon().canyon();
        parcel.local().trips().forEach(trip -> thing(ThingBody.of(trip)));
        parcel.local().notes().forEach(note -> thing(ThingBody.of(note)));
        parcel.local().sheets().forEach(entry -> facts(FactBody.of(entry.content()), entry));
        if (!parcel.local().isEmpty()) {
            remarks.add(Sentence.of(
                    "The file holds private records of \"{0}\": trips, private notes or to whom sheets were given.",
                    canyon.name()));
        }
    }

    private void canyon(CanyonRecord record) {
        if (known.hasOtherCanyonNamed(record.canyon().name(), record.canyon().uid())) {
            remarks.add(Sentence.of(
                    "There is another canyon named \"{0}\" here already; both would stand side by side.",
                    record.canyon().name()));
        }
        thing(ThingBody.of(record.canyon()));
        for (LineRecord place : record.line()) {
            thing(ThingBody.of(place.obstacle()));
            place.stations().forEach(this::station);
        }
        record.rounds().forEach(entry -> facts(FactBody.of(entry.content()), entry));
    }

    private void station(StationRecord record) {
        thing(ThingBody.of(record.station()));
        for (AnchorRecord anchor : record.anchors()) {
            thing(ThingBody.of(anchor.anchor()));
            for (PartRecord part : anchor.parts()) {
                thing(ThingBody.of(part.part()));
                part.inspections().forEach(entry -> facts(FactBody.of(entry.content()), entry));
            }
        }
        record.notes().forEach(entry -> facts(FactBody.of(entry.content()), entry));
        record.analyses().forEach(entry -> facts(FactBody.of(entry.content()), entry));
    }

    /** Adds a thing as it would be; parents come before their children. */
    public Outcome thing(ThingBody thing) {
        Optional<Revision> head = known.head(thing.uid());
        if (head.isEmpty()) {
            added++;
            revisions.add(Revision.first(thing.uid(), thing.type().word(), thing.body(), author, at));
            return Outcome.NEW;
        }
        refuseOtherType(thing, head.get());
        List<FieldChange> differences = differences(thing, head.get().body());
        if (differences.isEmpty() && !head.get().deleted()) {
            unchanged++;
            return Outcome.SAME;
        }
        if (head.get().deleted()) {
            remarks.add(Sentence.of(
                    "The {0} \"{1}\" was taken out here and would come back.",
                    thing.type().word(), thing.label()));
        }
        changes.addAll(differences);
        revisions.add(head.get().next(thing.body(), false, author, at));
        return Outcome.CHANGED;
    }

    /** What a person should know before accepting. */
    public void remark(Sentence remark) {
        remarks.add(remark);
    }

    /**
     * The plan.
     *
     * @param canyons of which there is something in the file
     */
    public ImportPlan done(int canyons) {
        remarkAmended();
        return new ImportPlan(revisions, List.copyOf(facts.values()), canyons, added, changes, unchanged, remarks);
    }

    private void remarkAmended() {
        if (amended > 0) {
            remarks.add(
                    amended == 1
                            ? Sentence.of("1 entry of the file was corrected, withdrawn or taken back here, and"
                                    + " stays so; the list of changes can bring back what was taken back.")
                            : Sentence.of(
                                    "{0} entries of the file were corrected, withdrawn or taken back here, and"
                                            + " stay so; the list of changes can bring back what was taken back.",
                                    amended));
        }
    }

    private static void refuseOtherType(ThingBody thing, Revision head) {
        if (!head.type().equals(thing.type().word())) {
            throw new InputException(Sentence.of(
                    "The id {0} names an existing {1} here, but in the file the {2} \"{3}\"; give that one"
                            + " another id, or none.",
                    thing.uid().text(), head.type(), thing.type().word(), thing.label()));
        }
    }

    /** Adds an entry with what withdraws it. */
    public Outcome facts(FactBody body, Entry<?> entry) {
        List<Fact> own = body.facts(entry);
        if (entry.counts() && known.isAmended(own.get(0))) {
            amended++;
        }
        Outcome outcome = Outcome.SAME;
        for (Fact fact : own) {
            outcome = fact(fact) ? Outcome.NEW : outcome;
        }
        return outcome;
    }

    private boolean fact(Fact fact) {
        boolean isNew = !known.says(fact) && facts.putIfAbsent(fact.uid(), fact) == null;
        unchanged += isNew ? 0 : 1;
        return isNew;
    }

    private static List<FieldChange> differences(ThingBody thing, Json.Fields before) {
        Set<String> keys = new LinkedHashSet<>(before.values().keySet());
        keys.addAll(thing.body().values().keySet());
        List<FieldChange> differences = new ArrayList<>();
        for (String key : keys) {
            String was = text(before.field(key));
            String becomes = text(thing.body().field(key));
            if (!was.equals(becomes)) {
                differences.add(new FieldChange(thing.type().word() + " " + thing.label(), key, was, becomes));
            }
        }
        return differences;
    }

    private static String text(Optional<Json> value) {
        if (value.isEmpty()) {
            return "";
        }
        return value.get() instanceof Json.Text text ? text.value() : JsonText.canonical(value.get());
    }
}
