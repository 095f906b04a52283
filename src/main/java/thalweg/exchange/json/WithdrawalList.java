package thalweg.exchange.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thalweg.body.WithdrawalBody;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Uid;
import thalweg.logbook.Entry;
import thalweg.logbook.Withdrawal;

/**
 * The withdrawals of an entry as a flat list: one of an earlier withdrawal names it and comes after it. A list within a
 * list could nest deeper than is read safely.
 */
final class WithdrawalList {

    static final String KEY = "withdrawn";
    private static final String OF = "of";

    private WithdrawalList() {}

    static List<Json> write(Entry<?> entry) {
        List<Json> list = new ArrayList<>();
        entry.withdrawals().forEach(one -> add(list, one, ""));
        return list;
    }

    private static void add(List<Json> list, Withdrawal withdrawal, String of) {
        String uid = withdrawal.uid().text();
        list.add(Json.fields()
                .put("uid", uid)
                .put(OF, of)
                .put(WithdrawalBody.REASON, withdrawal.reason())
                .put("author", withdrawal.author())
                .put("at", withdrawal.at())
                .done());
        withdrawal.withdrawals().forEach(again -> add(list, again, uid));
    }

    /** Who wrote one down and when: what it says, or what stands in for it. */
    record Signed(String author, String at) {}

    /** Tells who signed what the fields say. */
    @FunctionalInterface
    interface Signer {
        Signed of(FieldReader in);
    }

    /** The withdrawals of that entry; what breaks a rule is a finding. */
    static List<Withdrawal> read(Uid entry, List<FieldReader> list, Signer signer) {
        List<Fact> facts = new ArrayList<>();
        for (FieldReader in : list) {
            Optional<String> uid = in.optionalText("uid", 36);
            Optional<String> of = in.optionalText(OF, 36);
            Signed signed = signer.of(in);
            Optional<String> reason = WithdrawalBody.read(in);
            in.refuseUnasked();
            Optional<Uid> about = of.isEmpty() ? Optional.of(entry) : earlier(facts, of.get());
            if (about.isEmpty()) {
                in.refuse(OF, Sentence.of("names no withdrawal that stands before it in the list."));
            }
            if (reason.isPresent() && about.isPresent()) {
                Fact fact = WithdrawalBody.of(about.get(), reason.get(), signed.author(), signed.at());
                if (uid.filter(stated -> !stated.equals(fact.uid().text())).isPresent()) {
                    in.refuse(
                            "uid",
                            Sentence.of(
                                    "does not match what the withdrawal says: it was altered after it was written."));
                }
                facts.add(fact);
            }
        }
        return about(entry, facts);
    }

    private static Optional<Uid> earlier(List<Fact> facts, String uid) {
        return facts.stream()
                .map(Fact::uid)
                .filter(known -> known.text().equals(uid))
                .findFirst();
    }

    private static List<Withdrawal> about(Uid uid, List<Fact> facts) {
        return facts.stream()
                .filter(fact -> fact.about().equals(uid))
                .map(fact -> WithdrawalBody.withdrawal(fact, about(fact.uid(), facts)))
                .sorted(Comparator.comparing(Withdrawal::uid))
                .toList();
    }
}
