package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import thalweg.body.FactBody;
import thalweg.body.ThingBody;
import thalweg.exchange.ImportPlan;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.fault.StoreException;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.PartRecord;
import thalweg.testing.MemoryKnown;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

class LedgerStoreTest {

    private static final String AT = "2026-11-25T10:00:00Z";

    private final Database database = Database.inMemory();
    private final LedgerStore ledger = new LedgerStore(database);
    private final RecordStore records = new RecordStore(database);
    private final RandomRecords random = new RandomRecords(8, Fill.SOMETHING);

    @AfterEach
    void close() {
        database.close();
    }

    private CanyonRecord stored(long seed) {
        CanyonRecord canyon = new RandomRecords(seed, Fill.SOMETHING).canyon();
        ImportPlan plan = MemoryKnown.planFor(canyon);
        ledger.append(new Batch(plan.revisions(), plan.facts(), "Ana", "2026-11-25T10:00:00Z"));
        return canyon;
    }

    private int count(String table) {
        return database.read(sql -> sql.one("select count(*) from " + table, row -> row.getInt(1)))
                .orElseThrow();
    }

    private Revision head(CanyonRecord canyon) {
        return ledger.head(canyon.canyon().uid()).orElseThrow();
    }

    private static Json.Fields renamed(Revision revision, String name) {
        return revision.body().with("name", Json.of(name));
    }

    private static Batch only(Revision... revisions) {
        return new Batch(List.of(revisions), List.of(), "Ana", "2026-11-25T10:00:00Z");
    }

    @Test
    void whatIsAppendedIsShown() {
        for (long seed = 0; seed < 25; seed++) {
            CanyonRecord canyon = stored(seed);

            assertThat(records.canyon(canyon.canyon().uid())).contains(canyon);
        }
        assertThat(records.canyons()).hasSize(25);
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    @Test
    void aChangeAppendsARevisionAndShowsTheNewState() {
        CanyonRecord canyon = stored(8);
        Revision first = head(canyon);
        Revision second = first.next(renamed(first, "New name"), false, "Bo", AT);
        int before = count("revision");

        ledger.append(only(second));

        assertThat(count("revision")).isEqualTo(before + 1);
        assertThat(ledger.head(canyon.canyon().uid())).contains(second);
        assertThat(records.canyon(canyon.canyon().uid()).orElseThrow().canyon().name())
                .isEqualTo("New name");
        assertThat(records.canyon(canyon.canyon().uid()).orElseThrow().line()).isEqualTo(canyon.line());
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    @Test
    void severalRevisionsOfOneThingFitInOneBatch() {
        CanyonRecord canyon = stored(8);
        Revision first = head(canyon);
        Revision second = first.next(renamed(first, "b"), false, "Bo", AT);
        Revision third = second.next(renamed(first, "c"), false, "Bo", AT);

        ledger.append(only(second, third));

        assertThat(ledger.head(canyon.canyon().uid())).contains(third);
    }

    @Test
    void aRevisionThatDoesNotFollowTheLatestStateIsRefusedAndNothingIsAdded() {
        CanyonRecord canyon = stored(8);
        Revision first = head(canyon);
        Revision theirs = first.next(renamed(first, "theirs"), false, "Bo", AT);
        Revision ours = first.next(renamed(first, "ours"), false, "Ana", AT);
        Fact fact = FactBody.of(random.things().inspection(anyPart(canyon))).fact("Ana", AT);
        ledger.append(only(theirs));
        int revisions = count("revision");
        int facts = count("fact");

        for (Revision stale : List.of(ours, first, Revision.first(first.thing(), "canyon", first.body(), "Cy", AT))) {
            assertThatThrownBy(() ->
                            ledger.append(new Batch(List.of(stale), List.of(fact), "Ana", "2026-11-25T10:00:00Z")))
                    .isInstanceOf(ChangedMeanwhileException.class)
                    .hasMessage("This canyon was changed from elsewhere in the meantime; nothing was saved."
                            + " Open it again and repeat the change.");
        }

        assertThat(count("revision")).isEqualTo(revisions);
        assertThat(count("fact")).isEqualTo(facts);
        assertThat(ledger.head(first.thing())).contains(theirs);
    }

    private static Uid anyPart(CanyonRecord canyon) {
        return canyon.stations().stream()
                .flatMap(station -> station.parts().stream())
                .findFirst()
                .map(PartRecord::part)
                .orElseThrow()
                .uid();
    }

    @Test
    void aBatchThatFailsAtItsEndLeavesNothing() {
        CanyonRecord canyon = new RandomRecords(8, Fill.SOMETHING).canyon();
        ImportPlan plan = MemoryKnown.planFor(canyon);
        List<Fact> facts = new ArrayList<>(plan.facts());
        facts.add(FactBody.of(random.things().inspection(random.uid())).fact("Ana", AT));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> ledger.append(new Batch(plan.revisions(), facts, "Ana", "2026-11-25T10:00:00Z")))
                .withMessageContaining("part of a fact is missing");

        for (String table :
                List.of("revision", "revision_parent", "fact", "canyon", "obstacle", "part", "inspection")) {
            assertThat(count(table)).as(table).isZero();
        }
        ledger.append(new Batch(plan.revisions(), plan.facts(), "Ana", "2026-11-25T10:00:00Z"));
        assertThat(records.canyon(canyon.canyon().uid())).contains(canyon);
    }

    @Test
    void aThingWithoutItsParentIsABugAndLeavesNothing() {
        Revision orphan = Revision.first(
                random.uid(),
                "station",
                ThingBody.of(random.things().station(random.uid(), random.uid(), "V"))
                        .body(),
                "Ana",
                AT);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> ledger.append(only(orphan)))
                .withMessageContaining("the obstacle of a station is missing");
        assertThat(count("revision")).isZero();
    }

    /** Of every type: what no store could read again must not get in. */
    @Test
    void aBodyThatBreaksARuleIsABugAndLeavesNothing() {
        CanyonRecord canyon = stored(8);
        ImportPlan plan = MemoryKnown.planFor(canyon);
        int revisions = count("revision");
        int facts = count("fact");

        Map<String, String> texts =
                Map.of("canyon", "name", "obstacle", "note", "station", "name", "anchor", "note", "part", "label");
        texts.forEach((type, key) -> {
            Revision known = plan.revisions().stream()
                    .filter(revision -> revision.type().equals(type))
                    .findFirst()
                    .orElseThrow();
            Revision wrong = known.next(known.body().with(key, Json.of(7)), false, "Ana", AT);
            assertThatIllegalArgumentException()
                    .as(type)
                    .isThrownBy(() -> ledger.append(only(wrong)))
                    .withMessageContaining("breaks a rule");
        });
        Fact broken = new Fact(
                "inspection",
                anyPart(canyon),
                Json.fields().put("on", "someday").done(),
                Optional.empty(),
                "Ana",
                AT);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ledger.append(new Batch(List.of(), List.of(broken), "Ana", "2026-11-25T10:00:00Z")));

        assertThat(count("revision")).isEqualTo(revisions);
        assertThat(count("fact")).isEqualTo(facts);
    }

    @Test
    void whatCouldNotBeReadBackIsNotStored() {
        Uid uid = random.uid();
        Json.Fields body = Json.fields().put("name", "x".repeat(20_001)).done();

        assertThatIllegalArgumentException()
                .isThrownBy(() -> ledger.append(only(Revision.first(uid, "later", body, "Ana", AT))))
                .withMessageContaining("read back");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ledger.append(new Batch(
                        List.of(),
                        List.of(new Fact("later", uid, body, Optional.empty(), "Ana", AT)),
                        "Ana",
                        "2026-11-25T10:00:00Z")))
                .withMessageContaining("read back");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ledger.append(
                        only(Revision.first(uid, "later", Json.fields().done(), "A".repeat(301), AT))));
    }

    @Test
    void aFactThatIsKnownIsPassedOver() {
        CanyonRecord canyon = stored(8);
        Fact fact = FactBody.of(random.things().inspection(anyPart(canyon))).fact("Ana", AT);
        Batch twice = new Batch(List.of(), List.of(fact, fact), "Ana", "2026-11-25T10:00:00Z");
        int before = count("inspection");

        ledger.append(twice);
        ledger.append(twice);

        assertThat(count("inspection")).isEqualTo(before + 1);
        assertThat(ledger.says(fact)).isTrue();
        assertThat(ledger.says(
                        FactBody.of(random.things().inspection(anyPart(canyon))).fact("Bo", AT)))
                .isFalse();
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    @Test
    void typesOfALaterVersionAreKeptAndNotShown() {
        Uid uid = random.uid();
        Json.Fields body = Json.fields().put("anything", 1).done();

        ledger.append(new Batch(
                List.of(Revision.first(uid, "later_thing", body, "Ana", AT)),
                List.of(new Fact("later_fact", uid, body, Optional.empty(), "Ana", AT)),
                "Ana",
                "2026-11-25T10:00:00Z"));

        assertThat(ledger.head(uid)).isPresent();
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    @Test
    void anEmptyBatchIsNoWork() {
        ledger.append(new Batch(List.of(), List.of(), "Ana", AT));

        assertThat(count("revision")).isZero();
        assertThat(ledger.head(random.uid())).isEmpty();
    }

    @Test
    void aThingThatMovesToAnotherCanyonIsCountedThereAndNoLongerHere() {
        CanyonRecord from = stored(8);
        CanyonRecord to = stored(9);
        var place = from.line().stream()
                .filter(line -> !line.stations().isEmpty())
                .findFirst()
                .orElseThrow();
        Revision before = ledger.head(place.obstacle().uid()).orElseThrow();

        ledger.append(only(before.next(
                before.body().with("canyon", Json.of(to.canyon().uid().text())), false, "Ana", AT)));

        assertThat(records.canyon(from.canyon().uid()).orElseThrow().stations())
                .hasSize(from.stations().size() - place.stations().size());
        assertThat(records.canyon(to.canyon().uid()).orElseThrow().stations())
                .hasSize(to.stations().size() + place.stations().size());
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    @Test
    void rebuildingGivesTheSameTables() {
        CanyonRecord canyon = stored(8);
        stored(9);
        Revision first = head(canyon);
        ledger.append(only(first.next(renamed(first, "b"), false, "Bo", AT)));
        List<CanyonRecord> before = all();
        database.write(sql -> sql.run("delete from part_state") + sql.run("update canyon set name = 'altered'"));
        assertThat(new CheckStore(database).findings()).isNotEmpty();

        ledger.rebuild();

        assertThat(all()).isEqualTo(before);
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    private List<CanyonRecord> all() {
        return records.canyons().stream()
                .map(uid -> records.canyon(uid).orElseThrow())
                .toList();
    }

    @Test
    void anAlteredEntryIsSaidAndNeverTakenForAMissingOne() {
        CanyonRecord canyon = stored(8);
        Revision first = head(canyon);
        database.write(sql -> sql.run("update revision set canonical = replace(canonical, 'Ana', 'Eve')"));

        assertThatThrownBy(() -> ledger.head(first.thing()))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("was altered outside this program");
        assertThatThrownBy(() -> ledger.append(only(Revision.first(first.thing(), "canyon", first.body(), "Cy", AT))))
                .isInstanceOf(StoreException.class);
    }
}
