package thalweg.exchange.table;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thalweg.body.FactBody;
import thalweg.body.FactType;
import thalweg.exchange.Known;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.Correction;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;

/**
 * What a database knows, with what was found on the parts of the canyons at hand answered from those: a table may hold
 * thousands of looks, and each would be a question to the database.
 */
final class KnownLooks implements Known {

    private final Known known;
    private final Forest forest;
    private final Map<Uid, Looks> byPart = new HashMap<>();

    /**
     * What was found on one part.
     *
     * @param names of the entries
     * @param amended those that no longer count
     * @param words what entries say, with what they correct
     */
    private record Looks(Set<Uid> names, Set<Uid> amended, Set<String> words) {

        boolean says(Fact fact) {
            return !names.isEmpty()
                    && (words.contains(KnownLooks.words(fact.body(), fact.corrects())) || names.contains(fact.uid()));
        }

        /** The name of a fact is its hash, which takes a while. */
        boolean isAmended(Fact fact) {
            return !amended.isEmpty() && amended.contains(fact.uid());
        }
    }

    KnownLooks(Known known, Forest forest) {
        this.known = known;
        this.forest = forest;
    }

    @Override
    public Optional<Revision> head(Uid thing) {
        return known.head(thing);
    }

    @Override
    public boolean says(Fact fact) {
        Optional<Looks> looks = looks(fact);
        return looks.isPresent() ? looks.get().says(fact) : known.says(fact);
    }

    @Override
    public boolean isAmended(Fact fact) {
        Optional<Looks> looks = looks(fact);
        return looks.isPresent() ? looks.get().isAmended(fact) : known.isAmended(fact);
    }

    @Override
    public boolean hasOtherCanyonNamed(String name, Uid uid) {
        return known.hasOtherCanyonNamed(name, uid);
    }

    private Optional<Looks> looks(Fact fact) {
        return fact.type().equals(FactType.INSPECTION.word())
                ? forest.part(fact.about()).map(part -> byPart.computeIfAbsent(fact.about(), uid -> looks(part)))
                : Optional.empty();
    }

    private static Looks looks(PartRecord part) {
        Looks looks = new Looks(new HashSet<>(), new HashSet<>(), new HashSet<>());
        for (Entry<Inspection> entry : part.inspections()) {
            looks.names().add(entry.uid());
            if (!entry.counts()) {
                looks.amended().add(entry.uid());
            }
            Fact fact = FactBody.of(entry.content()).fact(entry.correction(), entry.author(), entry.at());
            looks.words().add(words(fact.body(), entry.correction().map(Correction::of)));
        }
        return looks;
    }

    private static String words(Json.Fields body, Optional<Uid> corrects) {
        return corrects.map(Uid::text).orElse("") + JsonText.canonical(body);
    }
}
