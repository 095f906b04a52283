package thalweg.amend;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thalweg.body.FactType;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.body.WithdrawalBody;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;

/**
 * One thing that a change did: to a thing, or to an entry about one.
 *
 * @param kind what was done
 * @param type of the thing or entry, as the ledger writes it
 * @param uid of the thing or entry
 * @param subject the thing, or what the entry is about
 * @param before what it said before; empty where it was not there
 * @param after what it says since
 * @param reason why, where one was given; else empty text
 */
public record Deed(
        Kind kind,
        String type,
        Uid uid,
        Subject subject,
        Optional<Json.Fields> before,
        Json.Fields after,
        String reason) {

    /** What can be done to a thing or an entry. */
    public enum Kind {
        /** A thing was entered. */
        ENTERED,
        /** A thing was changed where it stands. */
        CHANGED,
        /** A thing was put into another. */
        MOVED,
        /** A thing was given another place in its line. */
        REORDERED,
        /** A thing was taken out of use. */
        TAKEN_OUT,
        /** A thing was taken into use again. */
        BROUGHT_BACK,
        /** An entry was added. */
        ADDED,
        /** An entry was put in the place of another. */
        CORRECTED,
        /** An entry was withdrawn. */
        WITHDRAWN,
        /** A withdrawal was itself withdrawn. */
        RESTORED
    }

    /**
     * A thing by which people know what a change was about.
     *
     * @param type of it, as the ledger writes it; empty text where it is not known
     * @param body what it says now
     * @param station name of the station where it is, for an anchor or a part; else empty text
     */
    public record Subject(String type, Json.Fields body, String station) {}

    /**
     * One field that differs.
     *
     * @param key of it
     * @param before empty where it was not there
     * @param after empty where it is gone
     */
    public record Difference(String key, Optional<Json> before, Optional<Json> after) {}

    static final String ORDER = "order";

    /** What a revision did. */
    public static Deed of(Revision revision, Known known) {
        Optional<Revision> parent = revision.parents().stream().findFirst().flatMap(known::revision);
        Optional<Json.Fields> before = parent.filter(was -> !was.deleted()).map(Revision::body);
        Json.Fields shown = named(revision, known, revision.body());
        return new Deed(
                kind(revision, parent),
                revision.type(),
                revision.thing(),
                subject(revision, known),
                before.map(body -> named(revision, known, body)),
                shown,
                revision.body().text(ThingBody.REMOVED_BECAUSE));
    }

    private static Kind kind(Revision revision, Optional<Revision> parent) {
        if (revision.deleted()) {
            return Kind.TAKEN_OUT;
        }
        if (parent.isEmpty()) {
            return Kind.ENTERED;
        }
        if (parent.get().deleted()) {
            return Kind.BROUGHT_BACK;
        }
        Set<String> changed = new LinkedHashSet<>();
        differences(Optional.of(parent.get().body()), revision.body()).forEach(one -> changed.add(one.key()));
        Optional<ThingType> type = ThingType.of(revision.type());
        if (changed.contains(type.map(ThingType::parentKey).orElse(ORDER + ORDER))) {
            return Kind.MOVED;
        }
        return changed.equals(Set.of(ORDER)) ? Kind.REORDERED : Kind.CHANGED;
    }

    /** A body names what it is in by an id; people read the name. */
    private static Json.Fields named(Revision revision, Known known, Json.Fields body) {
        Optional<ThingType> type = ThingType.of(revision.type());
        Optional<Revision> parent =
                type.flatMap(one -> ThingBody.parent(one, body)).flatMap(known::head);
        return parent.isEmpty()
                ? body
                : body.with(
                        type.orElseThrow().parentKey(),
                        Json.of(label(parent.get().body())));
    }

    /** The name or label of a body; empty text where it has none. */
    static String label(Json.Fields body) {
        String label = body.text("label");
        return label.isEmpty() ? body.text("name") : label;
    }

    /** What a fact did. */
    public static Deed of(Fact fact, Known known) {
        if (fact.type().equals(WithdrawalBody.TYPE)) {
            return withdrawal(fact, known);
        }
        Optional<Fact> wrong = fact.corrects().flatMap(known::fact);
        return new Deed(
                wrong.isPresent() ? Kind.CORRECTED : Kind.ADDED,
                fact.type(),
                fact.uid(),
                subject(fact.about(), known),
                wrong.map(Fact::body).map(body -> onRound(body, known)),
                onRound(fact.body(), known),
                wrong.isPresent() ? fact.body().text(WithdrawalBody.REASON) : "");
    }

    /** An inspection names its round by an id; people read its date. */
    private static Json.Fields onRound(Json.Fields body, Known known) {
        Optional<Fact> round = Uid.parse(body.text(FactType.ROUND.word())).flatMap(known::fact);
        return round.isEmpty()
                ? body
                : body.with(FactType.ROUND.word(), Json.of(round.get().body().text("on")));
    }

    private static Deed withdrawal(Fact withdrawal, Known known) {
        Optional<Fact> fact = known.fact(withdrawal.about());
        boolean again = false;
        while (fact.filter(one -> one.type().equals(WithdrawalBody.TYPE)).isPresent()) {
            fact = known.fact(fact.orElseThrow().about());
            again = !again;
        }
        Json.Fields nothing = Json.fields().done();
        return new Deed(
                again ? Kind.RESTORED : Kind.WITHDRAWN,
                fact.map(Fact::type).orElse(WithdrawalBody.TYPE),
                fact.map(Fact::uid).orElse(withdrawal.about()),
                fact.map(one -> subject(one.about(), known)).orElse(new Subject("", nothing, "")),
                fact.map(one -> onRound(one.body(), known)),
                nothing,
                withdrawal.body().text(WithdrawalBody.REASON));
    }

    private static Subject subject(Uid thing, Known known) {
        return known.head(thing)
                .map(head -> subject(head, known))
                .orElse(new Subject("", Json.fields().done(), ""));
    }

    private static Subject subject(Revision revision, Known known) {
        return new Subject(revision.type(), revision.body(), station(revision, known));
    }

    private static String station(Revision revision, Known known) {
        Optional<ThingType> type = ThingType.of(revision.type());
        if (type.filter(one -> one == ThingType.PART || one == ThingType.ANCHOR).isEmpty()) {
            return "";
        }
        Optional<Revision> parent =
                ThingBody.parent(type.orElseThrow(), revision.body()).flatMap(known::head);
        return parent.map(one -> type.get() == ThingType.PART ? station(one, known) : label(one.body()))
                .orElse("");
    }

    /** The fields that differ, in the order in which they were written; of what is gone or came whole, every field. */
    public List<Difference> differences() {
        return kind == Kind.TAKEN_OUT || kind == Kind.WITHDRAWN || kind == Kind.RESTORED
                ? List.of()
                : differences(before, after);
    }

    private static List<Difference> differences(Optional<Json.Fields> before, Json.Fields after) {
        Set<String> keys = new LinkedHashSet<>();
        before.ifPresent(body -> keys.addAll(body.values().keySet()));
        keys.addAll(after.values().keySet());
        List<Difference> differences = new ArrayList<>();
        for (String key : keys) {
            Optional<Json> was = before.flatMap(body -> body.field(key));
            Optional<Json> is = after.field(key);
            boolean why = key.equals(ThingBody.REMOVED_BECAUSE) || key.equals(WithdrawalBody.REASON);
            if (!why && !was.equals(is)) {
                differences.add(new Difference(key, was, is));
            }
        }
        return differences;
    }
}
