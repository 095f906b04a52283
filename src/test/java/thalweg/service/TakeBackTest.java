package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import thalweg.body.ThingBody;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.fault.InputException;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.route.Station;

class TakeBackTest {

    private final Desk desk = new Desk();
    private final Session session = desk.session();
    private final TakeBack takeBack = new TakeBack(session);
    private final AddEntries entries = new AddEntries(session);

    @AfterEach
    void allIsWellInTheDatabase() {
        assertThat(session.check().findings()).isEmpty();
        CanyonRecord before = desk.canyon();
        session.ledger().rebuild();
        assertThat(desk.canyon()).isEqualTo(before);
        desk.close();
    }

    private PartRecord bolt() {
        return desk.station().parts().get(0);
    }

    private Inspection found(Condition condition) {
        return new Inspection(
                bolt().part().uid(),
                PartialDate.parse("2026-11-20"),
                "Ana",
                Optional.of(condition),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "");
    }

    private void rename(String name) {
        Station before = desk.station().station();
        Station after = new Station(
                before.uid(),
                before.obstacle(),
                before.order(),
                name,
                before.side(),
                before.ropeNeeded(),
                before.position(),
                before.prose());
        new SaveThing(session).changed(ThingBody.of(before), ThingBody.of(after));
    }

    @Test
    void changesAreTakenBackOneByOneAndBroughtAgainInTurn() {
        CanyonRecord start = desk.canyon();
        rename("Upper");
        CanyonRecord renamed = desk.canyon();
        entries.inspections(List.of(found(Condition.UNSAFE)));
        assertThat(bolt().state().condition()).contains(Condition.UNSAFE);

        takeBack.undo();
        assertThat(bolt().state().condition()).contains(Condition.SOUND);
        assertThat(bolt().inspections()).as("what was found stays").hasSize(2);
        takeBack.undo();
        assertThat(desk.station().station()).isEqualTo(start.stations().get(0).station());

        takeBack.redo();
        assertThat(desk.station().station()).isEqualTo(renamed.stations().get(0).station());
        takeBack.redo();
        assertThat(bolt().state().condition()).contains(Condition.UNSAFE);
        assertThatThrownBy(takeBack::redo)
                .isInstanceOf(InputException.class)
                .hasMessage("There is nothing to bring again.");
        takeBack.undo();
        takeBack.undo();
        assertThat(desk.station().station().name()).isEqualTo("first");
        assertThat(bolt().state().condition()).contains(Condition.SOUND);
    }

    @Test
    void aNewChangeEndsWhatCouldBeBroughtAgain() {
        rename("Upper");
        takeBack.undo();
        rename("Lower");

        assertThatThrownBy(takeBack::redo).hasMessage("There is nothing to bring again.");
        assertThat(desk.station().station().name()).isEqualTo("Lower");
    }

    @Test
    void aChangeThatWasChangedAgainSinceIsRefused() {
        rename("Upper");
        long first = session.changes().undoable().orElseThrow().key();
        rename("Lower");

        assertThatThrownBy(() -> takeBack.takeBack(first))
                .isInstanceOf(InputException.class)
                .hasMessage("The station of this change was changed again since; take that later change back first.");
        takeBack.undo();
        assertThat(takeBack.takeBack(first).key()).isEqualTo(first);
        assertThatThrownBy(() -> takeBack.takeBack(first)).hasMessage("Change " + first + " was taken back before.");
    }

    @Test
    void whatIsTakenOutGoesWithEverythingInItAndComesBackWhole() {
        CanyonRecord before = desk.canyon();
        new SaveThing(session).removed(ThingBody.of(desk.station().station()), "washed away");

        assertThat(desk.canyon().stations()).isEmpty();
        takeBack.undo();
        assertThat(desk.canyon()).isEqualTo(before);
    }

    @Test
    void theImportOfAWholeCanyonIsOneChange() {
        Uid canyon = desk.canyon().canyon().uid();

        takeBack.undo();

        assertThat(new FindRecord(session).byId(canyon)).isEmpty();
        takeBack.redo();
        assertThat(new FindRecord(session).byId(canyon)).isPresent();
    }

    @Test
    void aThingIntoWhichSomethingWasEnteredSinceStays() {
        long made = session.changes().undoable().orElseThrow().key();
        new SaveThing(session)
                .anew(ThingBody.of(new Station(
                        session.mint(),
                        desk.station().station().obstacle(),
                        "zz",
                        "S2",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Prose.none())));

        assertThatThrownBy(() -> takeBack.takeBack(made)).hasMessageContaining("was entered into the");
    }

    @Test
    void aCorrectionTakesThePlaceOfWhatWasWrongAndAWithdrawalOfNothing() {
        entries.inspections(List.of(found(Condition.GONE)));
        Uid wrong = bolt().inspections().get(0).uid();

        entries.correct(wrong, found(Condition.WORN), "read the tag of the neighbour");
        assertThat(bolt().state().condition()).contains(Condition.WORN);
        assertThat(bolt().inspections())
                .filteredOn(Entry::corrected)
                .extracting(Entry::uid)
                .containsExactly(wrong);
        assertThatThrownBy(() -> entries.withdraw(wrong, "again")).isInstanceOf(ChangedMeanwhileException.class);

        Uid right = bolt().inspections().stream()
                .filter(entry -> entry.correction().isPresent())
                .findFirst()
                .orElseThrow()
                .uid();
        entries.withdraw(right, "was never there");
        assertThat(bolt().state().condition())
                .as("the corrected entry counts again")
                .contains(Condition.GONE);
        takeBack.undo();
        assertThat(bolt().state().condition()).contains(Condition.WORN);
    }

    @Test
    void aReasonIsNeeded() {
        Uid entry = bolt().inspections().get(0).uid();

        assertThatThrownBy(() -> entries.withdraw(entry, " ")).hasMessageContaining("A word of reason is needed");
        assertThatThrownBy(() -> entries.correct(entry, found(Condition.WORN), ""))
                .hasMessageContaining("A word of reason is needed");
        assertThat(bolt().inspections()).hasSize(1);
    }

    @Test
    void nothingToTakeBackIsSaid() {
        session.ledger().forgetChanges();

        assertThatThrownBy(takeBack::undo).hasMessage("There is no change to take back.");
        assertThatThrownBy(() -> takeBack.takeBack(7)).hasMessage("There is no change number 7 to take back.");
    }
}
