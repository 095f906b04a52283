package thalweg.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.exchange.ImportPlan;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;
import thalweg.json.Json;
import thalweg.ledger.Revision;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.PartFinding;
import thalweg.testing.MemoryKnown;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

class CheckStoreTest {

    private final Database database = Database.inMemory();
    private final CanyonRecord canyon = new RandomRecords(8, Fill.EVERYTHING).canyon();

    @BeforeEach
    void fill() {
        ImportPlan plan = MemoryKnown.planFor(canyon);
        LedgerStore ledger = new LedgerStore(database);
        ledger.append(new Batch(plan.revisions(), plan.facts(), "Ana", "2026-11-25T10:00:00Z"));
        Revision first = ledger.head(canyon.canyon().uid()).orElseThrow();
        Revision second = first.next(first.body().with("name", Json.of("Other")), false, "Bo", "2026-11-26T10:00:00Z");
        ledger.append(new Batch(List.of(second), List.of(), "Ana", "2026-11-25T10:00:00Z"));
    }

    @AfterEach
    void close() {
        database.close();
    }

    private void tamper(String... statements) {
        database.read(sql -> {
            sql.run("rollback");
            sql.run("pragma foreign_keys = off");
            for (String statement : statements) {
                assertThat(sql.run(statement)).as(statement).isPositive();
            }
            return sql.run("begin");
        });
    }

    @Test
    void aSoundDatabaseHasNoFindings() {
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update revision set canonical = replace(canonical, '\"order\":\"V\"', '\"order\":\"W\"') where type = 'station'",
                "update revision set canonical = 'no json' where key = 2",
                "update revision set canonical = replace(canonical, '\"parents\":[\"', '\"parents\":[\"z') where gen = 2",
                "update revision set canonical = canonical || ' ' where key = 1",
                "update revision set hash = zeroblob(32) where key = 3",
                "update revision set thing = zeroblob(16) where key = 3",
                "update revision set type = 'part' where key = 1",
                "update revision set gen = 7 where key = 1",
                "delete from revision_parent",
                "update revision_parent set parent = zeroblob(32)",
                "insert into revision_parent (revision, parent) values (1, zeroblob(32))",
                "update fact set canonical = replace(canonical, '\"author\"', '\"autho\"') where key = 1",
                "update fact set canonical = '{}' where key = 1",
                "update fact set uid = zeroblob(16) where key = 1",
                "update fact set about = zeroblob(16) where key = 1",
                "update fact set type = 'rigging_note' where type = 'inspection'"
            })
    void anAlteredLedgerIsFound(String statement) {
        tamper(statement);

        assertThat(new CheckStore(database).findings())
                .isNotEmpty()
                .allMatch(finding -> finding.toString()
                        .matches("The entry [0-9a-f]{8} of the ledger (was altered|follows one that is missing).*\\."));
    }

    @Test
    void anEntryWhosePredecessorIsGoneIsFound() {
        tamper("delete from change_entry");
        tamper("delete from revision where type = 'canyon' and gen = 1");

        assertThat(new CheckStore(database).findings())
                .singleElement()
                .asString()
                .contains("of the ledger follows one that is missing");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update canyon set name = 'x'",
                "update canyon set whereabouts = 'x'",
                "update canyon set french = 'v1 a1'",
                "update canyon set american = '1 A'",
                "update canyon set longest_drop_cm = 1",
                "update canyon set invented = 1 - invented",
                "update canyon set sort = 'x'",
                "update canyon set region = 'x'",
                "update canyon set country = 'x'",
                "update canyon set french_vertical = 9",
                "update canyon set french_aquatic = 9",
                "update canyon set french_commitment = 9",
                "update canyon set american_class = 9",
                "update canyon set american_water_from = 9",
                "update canyon set american_water_to = 9",
                "update canyon set american_time = 9",
                "update canyon set american_risk = 9",
                "update canyon set minutes_from = 9999",
                "update canyon set minutes_to = 9999",
                "update canyon set head = zeroblob(32)",
                "update canyon set body = '{}'",
                "update obstacle set drop_cm = coalesce(drop_cm, 0) + 1",
                "update obstacle set place = place || 'x'",
                "update obstacle set body = '{}'",
                "update obstacle set unmeasured = 1 - unmeasured",
                "update station set body = '{}'",
                "update station set parent = (select max(key) from obstacle) where parent = (select min(parent) from station)",
                "update anchor set body = '{}'",
                "update anchor set uid = zeroblob(16) where key = 1",
                "update part set body = '{}'",
                "update part set place = 'x'",
                "update inspection set day = '1999'",
                "update inspection set last_day = '1999-12-31'",
                "update inspection set author = 'Eve'",
                "update inspection set at = 'now'",
                "update inspection set body = '{}'",
                "update rigging_note set body = '{}'",
                "update rig_analysis set body = '{}'",
                "update part_state set condition = 0 where condition > 0",
                "update part_state set seen_on = '1999' where seen_on is not null",
                "update part_state set contradictory = 1 - contradictory",
                "update part_state set not_seen_since = '2030'",
                "update part_state set entries = entries + 1",
                "update part_state set replaced_on = '1999'",
                "update canyon_state set drop_from_cm = drop_from_cm + 1",
                "update canyon_state set drop_to_cm = 1",
                "update canyon_state set stations = stations + 1",
                "update canyon_state set longest_drop_cm = 1",
                "update canyon_state set worst = worst - 1",
                "update canyon_state set never_seen = never_seen + 1",
                "update canyon_state set gone = gone + 1",
                "update canyon_state set newest = '1999'",
                "delete from inspection where key = 1",
                "delete from rigging_note",
                "delete from rig_analysis",
                "delete from part_state",
                "delete from canyon_state",
                "delete from canyon_words",
                "delete from station_words where rowid = 1",
                "delete from part_words where rowid = 1",
                "insert into part_words (rowid, label) values (1000, 'stray')",
                "insert or replace into canyon_words (rowid, names, region, country) values (1, 'other', '', '')",
                "insert or replace into station_words (rowid, own, canyon) values (1, '', '')",
                "delete from part_words_data where id > 10",
                "delete from canyon_words_docsize"
            })
    void anAlteredOrMissingRowIsFoundAndMendedByRebuilding(String statement) {
        tamper(statement);

        assertThat(new CheckStore(database).findings())
                .isNotEmpty()
                .allMatch(finding -> finding.toString().endsWith("check --rebuild mends it."));

        new LedgerStore(database).rebuild();
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    @Test
    void aRowWhoseParentIsGoneIsFoundAndMended() {
        tamper("delete from anchor");

        assertThat(new CheckStore(database).findings())
                .extracting(Sentence::toString)
                .contains("A row of the table part belongs to nothing.");

        new LedgerStore(database).rebuild();
        assertThat(new CheckStore(database).findings()).isEmpty();
    }

    @Test
    void aRecordAlteredBehindOurBackIsASentenceWhenItIsRead() {
        for (String body : new String[] {"{}", "no json", "[]"}) {
            tamper("update part set body = '" + body + "'");

            assertThatThrownBy(() ->
                            new RecordStore(database).canyon(canyon.canyon().uid()))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("was altered outside this program");
        }
    }

    @Test
    void aDamagedIndexOfWordsIsASentenceWhenItIsSearched() {
        tamper("update part_words_data set block = x'00' where id > 10");

        assertThatThrownBy(() -> new PartStore(database).parts(PartFinding.of("b"), 10))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("The index of words")
                .hasMessageContaining("check --rebuild");
    }

    @Test
    void nothingIsChangedByChecking() {
        tamper("update canyon set name = 'x'");

        new CheckStore(database).findings();

        assertThat(database.<Optional<String>>read(sql -> sql.one("select name from canyon", row -> row.getString(1))))
                .contains("x");
    }
}
