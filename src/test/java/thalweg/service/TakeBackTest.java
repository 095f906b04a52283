package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import thalweg.amend.ChangeView;
import thalweg.amend.ChangeWords;
import thalweg.amend.Located;
import thalweg.amend.Moment;
import thalweg.body.ThingBody;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.fault.InputException;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.route.Anchor;
import thalweg.route.AnchorRole;
import thalweg.route.PartialDate;
import thalweg.route.Station;
import thalweg.units.UnitSystem;

final class TakeBackTest {

    private final Desk desk = new Desk(new TickingClock());
    private final SaveThing save = new SaveThing(desk.session());
    private final AddEntries add = new AddEntries(desk.session());
    private final TakeBack takeBack = new TakeBack(desk.session());
    private final ChangeWords words = new ChangeWords(LoadPhrases.english(), UnitSystem.METRIC);

    @AfterEach
    void close() {
        desk.close();
    }

    private void rename(String name) {
        Station before = desk.station().station();
        save.changed(
                ThingBody.of(before),
                ThingBody.of(new Station(
                        before.uid(),
                        before.obstacle(),
                        before.order(),
                        name,
                        before.side(),
                        before.ropeNeeded(),
                        before.position(),
                        Optional.empty(),
                        before.prose())));
    }

    private PartRecord bolt() {
        return desk.station().parts().get(0);
    }

    private Inspection found(Condition condition) {
        return new Inspection(
                bolt().part().uid(),
                PartialDate.parse("2026-11"),
                "Ann",
                Optional.of(condition),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "");
    }

    private long latest() {
        return new ListChanges(desk.session()).latest(1).get(0).key();
    }

    @Test
    void changesOfOneThingAreTakenBackOneAfterTheOther() {
        rename("second");
        rename("third");

        takeBack.undo();
        assertThat(desk.station().station().name()).isEqualTo("second");
        takeBack.undo();
        assertThat(desk.station().station().name()).isEqualTo("first");
        takeBack.redo();
        takeBack.redo();
        assertThat(desk.station().station().name()).isEqualTo("third");
        assertThatThrownBy(takeBack::redo).hasMessage("There is nothing to bring again.");
    }

    @Test
    void anEarlierChangeIsKeptWhileALaterOneStandsOnIt() {
        rename("second");
        long key = latest();
        rename("third");

        assertThatThrownBy(() -> takeBack.takeBack(key))
                .isInstanceOf(InputException.class)
                .hasMessage("The station of this change was changed again since; take that later change back first.");
        assertThat(desk.station().station().name()).isEqualTo("third");
    }

    /** The station says again what the first change said, but two later ones stand between. */
    @Test
    void aStateThatCameAboutAnewIsNoneOfTheFirstChange() {
        rename("second");
        long key = latest();
        rename("first");
        rename("second");

        assertThatThrownBy(() -> takeBack.takeBack(key)).hasMessageContaining("changed again since");
    }

    @Test
    void aThingIntoWhichSomethingWasEnteredStays() {
        Uid uid = desk.session().mint();
        save.anew(ThingBody.of(new Anchor(
                uid, desk.station().station().uid(), OrderKey.between("z", ""), AnchorRole.HIGH_WATER, "", "")));
        long key = latest();
        takeBack.undo();
        takeBack.redo();
        Located part = Located.in(desk.canyon(), bolt().part().uid()).orElseThrow();
        new MoveThing(desk.session()).into(part, Located.in(desk.canyon(), uid).orElseThrow());

        assertThatThrownBy(() -> takeBack.takeBack(key))
                .hasMessage("Something was entered into the anchor of this change since;"
                        + " take that later change back first.");
    }

    @Test
    void aPartThatWasInspectedSinceStays() {
        rename("second");
        add.inspections(List.of(found(Condition.WORN)));
        long firstImport = new ListChanges(desk.session()).latest(9).get(2).key();

        takeBack.takeBack(new ListChanges(desk.session()).latest(9).get(1).key());

        assertThatThrownBy(() -> takeBack.takeBack(firstImport))
                .hasMessageContaining("Something was entered into the part of this change since");
    }

    @Test
    void whatWasTakenOutWithItsStationComesBackWithItOnly() {
        save.removed(ThingBody.of(bolt().part()), "pulled out");
        long part = latest();
        save.removed(ThingBody.of(desk.station().station()), "rockfall");

        assertThatThrownBy(() -> takeBack.takeBack(part))
                .hasMessage("What the part of this change belongs to is out of use; bring that back first.");

        takeBack.undo();
        takeBack.undo();
        assertThat(desk.station().parts()).hasSize(2);
        assertThat(bolt().state().condition()).contains(Condition.SOUND);
    }

    @Test
    void aCorrectionComesAgainOnlyWhereTheEntryStillStands() {
        Uid wrong = bolt().inspections().get(0).uid();
        add.correct(wrong, found(Condition.WORN), "looked at the other bolt");
        long correction = latest();
        takeBack.undo();
        assertThat(bolt().state().condition()).contains(Condition.SOUND);
        add.withdraw(wrong, "never happened");

        assertThatThrownBy(() -> takeBack.bringAgain(correction)).hasMessageContaining("otherwise since");

        takeBack.undo();
        takeBack.bringAgain(correction);
        assertThat(bolt().state().condition()).contains(Condition.WORN);
        assertThatThrownBy(() -> takeBack.bringAgain(correction))
                .hasMessage("Change " + correction + " stands; there is nothing to bring again.");
    }

    @Test
    void anEntryThatWasAmendedSinceIsNotTakenBack() {
        add.inspections(List.of(found(Condition.WORN)));
        long key = latest();
        add.withdraw(bolt().inspections().get(0).uid(), "another canyon");

        assertThatThrownBy(() -> takeBack.takeBack(key))
                .hasMessage("An entry of this change was corrected or withdrawn since;"
                        + " take that later change back first.");
    }

    @Test
    void nothingIsEnteredIntoWhatIsOutOfUse() {
        Inspection inspection = found(Condition.WORN);
        Anchor anchor = desk.station().anchors().get(0).anchor();
        save.removed(ThingBody.of(desk.station().station()), "rockfall");

        assertThatThrownBy(() -> add.inspections(List.of(inspection)))
                .isInstanceOf(ChangedMeanwhileException.class)
                .hasMessageContaining("taken out of use in the meantime");
        assertThatThrownBy(() -> save.anew(ThingBody.of(
                        new Anchor(desk.session().mint(), anchor.station(), anchor.order(), AnchorRole.MAIN, "", ""))))
                .isInstanceOf(ChangedMeanwhileException.class)
                .hasMessageContaining("was taken out of use in the meantime");
    }

    @Test
    void thereIsNoChangeOfThatNumber() {
        assertThatThrownBy(() -> takeBack.takeBack(99))
                .hasMessage("There is no change with the number 99; `changes` lists them.");
        takeBack.undo();
        assertThatThrownBy(takeBack::undo).hasMessage("There is no change to take back.");
    }

    @Test
    void changesAreToldInWords() {
        rename("top");
        add.inspections(List.of(found(Condition.WORN)));
        add.correct(bolt().inspections().get(0).uid(), found(Condition.DOUBTFUL), "looked again");
        add.withdraw(bolt().inspections().get(0).uid(), "wrong bolt");
        save.removed(ThingBody.of(bolt().part()), "pulled out");
        takeBack.undo();
        Located first = Located.in(desk.canyon(), bolt().part().uid()).orElseThrow();
        Located second = Located.in(
                        desk.canyon(), desk.station().parts().get(1).part().uid())
                .orElseThrow();
        new MoveThing(desk.session()).beside(first, second, true);

        List<ChangeView> changes = new ListChanges(desk.session()).latest(9);

        assertThat(changes)
                .extracting(words::line)
                .containsExactly(
                        "moved part left bolt at top in its line",
                        "took part left bolt at top out of use: pulled out",
                        "withdrew inspection of part left bolt at top, 2026-11: wrong bolt",
                        "corrected inspection of part left bolt at top, 2026-11: looked again",
                        "added inspection of part left bolt at top, 2026-11: worn",
                        "changed station top: name",
                        "import of 1 canyon, 5 other things, 1 entry");
        assertThat(changes)
                .extracting(change -> change.taken().isPresent())
                .containsExactly(false, true, false, false, false, false, false);
        assertThat(changes).extracting(ChangeView::canyonName).containsOnly("Probe");
        assertThat(words.details(new ListChanges(desk.session())
                        .whole(changes.get(3).key())
                        .deeds()
                        .get(0)))
                .containsExactly("found: worn -> doubtful");
        assertThat(Moment.print(LoadPhrases.english(), changes.get(0).at())).matches("2026-11-25 06:\\d\\d UTC");
    }

    @Test
    void anImportOfWhatWasTakenBackSaysWhatStaysSo() {
        byte[] file = new ExportRecords(desk.session()).json(List.of(), false).getBytes(StandardCharsets.UTF_8);
        takeBack.takeBack(latest());

        assertThat(new ImportRecords(desk.session())
                        .preview("again", file)
                        .plan()
                        .remarks())
                .anyMatch(remark -> remark.toString().contains("was taken out here and would come back"))
                .anyMatch(remark ->
                        remark.toString().startsWith("1 entry of the file was corrected, withdrawn or taken back"));
    }
}
