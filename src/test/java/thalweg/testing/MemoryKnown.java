package thalweg.testing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.Known;
import thalweg.exchange.Parcel;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;

/** What an import may ask, answered from memory. */
public final class MemoryKnown implements Known {

    private final Map<Uid, Revision> heads = new HashMap<>();
    private final Set<Uid> facts = new HashSet<>();
    private final Map<Uid, String> names = new HashMap<>();

    /** What importing a canyon into an empty database would add. */
    public static ImportPlan planFor(CanyonRecord canyon) {
        return ImportPlan.of(List.of(Parcel.of(canyon)), new MemoryKnown(), "Ana", "2026-11-25T10:00:00Z");
    }

    /** Takes a plan in. */
    public void accept(ImportPlan plan) {
        plan.revisions().forEach(revision -> {
            heads.put(revision.thing(), revision);
            if (revision.type().equals("canyon")
                    && revision.body().field("name").orElseThrow() instanceof Json.Text name) {
                names.put(revision.thing(), name.value());
            }
        });
        plan.facts().forEach(fact -> facts.add(fact.uid()));
    }

    @Override
    public Optional<Revision> head(Uid thing) {
        return Optional.ofNullable(heads.get(thing));
    }

    @Override
    public boolean says(Fact fact) {
        return facts.contains(fact.uid());
    }

    @Override
    public boolean isAmended(Fact fact) {
        return false;
    }

    @Override
    public boolean hasOtherCanyonNamed(String name, Uid uid) {
        return names.entrySet().stream()
                .anyMatch(
                        known -> !known.getKey().equals(uid) && known.getValue().equals(name));
    }
}
