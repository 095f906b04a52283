package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.amend.ChangeView;
import thalweg.fault.AppException;
import thalweg.fault.InputException;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.storage.Change;
import thalweg.storage.Database;
import thalweg.storage.TableDump;

/** What taking back and bringing again must leave behind, over random histories of everything that a keeper can do. */
class TakeBackLawsTest {

    private static final int STEPS = 40;

    private final Database database = Database.inMemory();
    private final Session session = Session.over(database, new TickingClock(), "ada");
    private final TakeBack takeBack = new TakeBack(session);

    @AfterEach
    void close() {
        session.close();
    }

    private Map<String, List<String>> inForce() {
        return TableDump.inForce(database);
    }

    /** As many keys as there are changes that stand, or that were taken back. */
    private List<Long> keys(boolean taken) {
        return new ListChanges(session)
                .latest(1_000).stream()
                        .filter(change -> change.taken().isPresent() == taken)
                        .map(ChangeView::key)
                        .toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void takingBackAndBringingAgainLeaveWhatWasThere(long seed) {
        RandomDeeds deeds = new RandomDeeds(session, seed);
        Random random = new Random(seed);
        int ledger = 0;
        int undone = 0;

        for (int step = 0; step < STEPS; step++) {
            int changes = keys(false).size();
            Map<String, List<String>> before = inForce();
            deeds.one();
            Map<String, List<String>> after = inForce();
            if (keys(false).size() == changes) {
                assertThat(after).isEqualTo(before);
                continue;
            }
            if (lastIsSmall()) {
                takeBack.undo();
                assertThat(inForce()).as("undone in step %d", step).isEqualTo(before);
                takeBack.redo();
                assertThat(inForce()).as("redone in step %d", step).isEqualTo(after);
                undone++;
            }
            someOtherChangeComesAndGoes(random, step);
            int now = TableDump.ledgerSize(database);
            assertThat(now).isGreaterThan(ledger);
            ledger = now;
        }

        assertThat(undone).isGreaterThan(5);
        assertSound();
    }

    private boolean lastIsSmall() {
        return new ListChanges(session).latest(1).get(0).size() <= TakeBack.LARGE;
    }

    private void someOtherChangeComesAndGoes(Random random, int step) {
        List<Long> standing = keys(false);
        long key = standing.get(random.nextInt(standing.size()));
        Map<String, List<String>> before = inForce();
        try {
            takeBack.takeBack(key);
        } catch (InputException refusal) {
            assertThat(inForce()).isEqualTo(before);
            return;
        }
        if (random.nextInt(3) > 0) {
            takeBack.bringAgain(key);
            assertThat(inForce()).as("change %d in step %d", key, step).isEqualTo(before);
        }
    }

    private void assertSound() {
        CheckDatabase check = new CheckDatabase(session);
        assertThat(check.findings()).isEmpty();
        Map<String, List<String>> tables = TableDump.whole(database);
        check.rebuild();
        assertThat(TableDump.whole(database)).isEqualTo(tables);
        assertThat(check.findings()).isEmpty();
    }

    /** All the way back and all the way forward again. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12})
    void everythingCanBeTakenBackStepByStepAndBroughtAgain(long seed) {
        RandomDeeds deeds = new RandomDeeds(session, seed);
        List<Map<String, List<String>>> states = new ArrayList<>(List.of(inForce()));
        int changes = 0;
        while (changes < 20) {
            deeds.one();
            int now = keys(false).size();
            if (now > changes && lastIsSmall()) {
                states.add(inForce());
            } else if (now > changes) {
                takeBack.takeBack(keys(false).get(0));
            }
            changes = keys(false).size();
        }

        for (int i = states.size() - 2; i >= 0; i--) {
            takeBack.undo();
            assertThat(inForce()).isEqualTo(states.get(i));
        }
        for (int i = 1; i < states.size(); i++) {
            takeBack.redo();
            assertThat(inForce()).isEqualTo(states.get(i));
        }
        assertSound();
    }

    /** Whatever is taken back, nothing that counts is ever in something that is out of use. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void nothingIsBroughtBackToWhereNobodySeesIt(long seed) {
        RandomDeeds deeds = new RandomDeeds(session, seed);
        Random random = new Random(seed);
        int done = 0;
        for (int step = 0; step < STEPS; step++) {
            deeds.one();
            List<Long> keys = keys(random.nextBoolean());
            if (!keys.isEmpty()) {
                long key = keys.get(random.nextInt(keys.size()));
                if (tried(key)) {
                    done++;
                    assertThat(hidden(key))
                            .as("change %d in step %d", key, step)
                            .isEmpty();
                }
            }
        }

        assertThat(done).isGreaterThan(5);
        assertSound();
    }

    /** What a change touched, is not taken out itself, and still cannot be seen. */
    private List<Uid> hidden(long key) {
        Change change = session.changes().whole(key).orElseThrow();
        Stream<Uid> things = change.revisions().stream()
                .map(Revision::thing)
                .filter(thing -> !session.ledger().head(thing).orElseThrow().deleted());
        Stream<Uid> owners = change.facts().stream()
                .filter(fact -> session.ledger().counts(fact))
                .map(Fact::about);
        return Stream.concat(things, owners)
                .filter(thing -> !session.things().isInUse(thing))
                .toList();
    }

    private boolean tried(long key) {
        boolean taken = new ListChanges(session).whole(key).taken().isPresent();
        Map<String, List<String>> before = inForce();
        try {
            if (taken) {
                takeBack.bringAgain(key);
            } else {
                takeBack.takeBack(key);
            }
            return true;
        } catch (AppException refusal) {
            assertThat(refusal.sentence()).endsWith(".");
            assertThat(inForce()).isEqualTo(before);
            return false;
        }
    }
}
