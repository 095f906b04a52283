package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.body.ThingBody;
import thalweg.logbook.Condition;
import thalweg.route.Obstacle;
import thalweg.service.FindRecord;
import thalweg.service.SaveThing;
import thalweg.service.Session;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.shell.Reaction;

/** Each walk that is left without an end stands for a program that was killed. */
final class DraftWalkTest {

    private static final Key SAVE = Key.ctrl('s');
    private static final Key DROP = Key.ctrl('r');
    private static final Clock LATER = Clock.fixed(Instant.parse("2026-11-26T15:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private static Walk atPorte(Walk walk) {
        return walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
    }

    private List<Path> files() {
        try (Stream<Path> all = Files.walk(folder.resolve("drafts"))) {
            return all.filter(Files::isRegularFile).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aVisitComesBackAfterTheProgramWasKilledWithTheDayOnWhichItWasBegun() {
        try (Walk killed = Walk.keeping(folder)) {
            atPorte(killed).type("isn").press(Key.Named.DOWN).type("d");
        }
        try (Walk walk = Walk.keeping(folder, LATER, false, 24, 80)) {
            assertThat(walk.screen()).contains("1 draft waits", "d shows it");

            atPorte(walk).type("i");
            assertThat(walk.screen()).contains("Filled from a draft, 27 hours old. Ctrl-R drops it");

            walk.press(SAVE);
            assertThat(walk.screen()).contains("Saved.", "? doubtful  2026-11-25", "+ sound  2026-11-25");
            assertThat(files()).isEmpty();
        }
    }

    @Test
    void aDraftIsForItsOwnerAloneAndThereAfterEveryKey() throws IOException {
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("nRi");

            Path file = files().get(0);
            assertThat(Files.readString(file)).contains("\"is\": \"Ri\"");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo("rw-------");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file.getParent())))
                    .isEqualTo("rwx------");
            walk.type("o");
            assertThat(Files.readString(file)).contains("\"is\": \"Rio\"");
        }
    }

    @Test
    void aFormThatNobodyTouchedLeavesNoDraft() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("n").press(Key.Named.ESCAPE);

            assertThat(folder.resolve("drafts")).doesNotExist();
        }
    }

    @Test
    void whatWasTypedAndTakenAwayAgainLeavesNoDraft() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("nRio").press(Key.ctrl('u'));

            assertThat(files()).isEmpty();
        }
    }

    @Test
    void escapeKeepsOrThrowsAway() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("nRio").press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("k keeps it as a draft", "d throws it away");
            walk.type("k").type("n");
            assertThat(walk.screen()).contains("Rio", "Filled from a draft, less than a minute old.");

            walk.press(Key.Named.ESCAPE).type("d");
            assertThat(files()).isEmpty();
            walk.type("n");
            assertThat(walk.screen()).doesNotContain("Rio", "Filled from a draft");
        }
    }

    @Test
    void quittingKeepsWhatIsNotSavedWhereItIsNotThrownAway() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("nRio").press(Key.Named.F10).type("k");

            assertThat(walk.lastOrder()).isEqualTo(Reaction.Order.QUIT);
            assertThat(files()).hasSize(1);
        }
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("n").press(Key.Named.F10).type("d");

            assertThat(walk.lastOrder()).isEqualTo(Reaction.Order.QUIT);
            assertThat(files()).isEmpty();
        }
    }

    @Test
    void aDroppedDraftComesBackWhileItsFormIsOpen() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("nRio").press(Key.Named.ESCAPE).type("kn").type(" Grande").press(DROP);
            assertThat(walk.screen())
                    .contains("The draft was dropped. Ctrl-R brings it back")
                    .doesNotContain("Rio");
            assertThat(files()).isEmpty();

            walk.press(DROP);
            assertThat(walk.screen()).contains("Rio Grande");
            assertThat(files()).hasSize(1);
        }
    }

    @Test
    void aDraftOlderThanItsRecordSaysWhatHasChangedAndKeepsBoth() {
        try (Walk killed = Walk.keeping(folder)) {
            killed.press(Key.Named.ENTER).press(Key.Named.DOWN).type("e").fill("Height", "9 m");
        }
        try (Session other = Session.writing(FilledDatabases.in(folder), LATER, "Bo")) {
            Obstacle before =
                    new FindRecord(other).canyon("éclusaune").line().get(1).obstacle();
            Obstacle after = new Obstacle(
                    before.uid(),
                    before.canyon(),
                    before.order(),
                    before.kind(),
                    "Portal",
                    before.distance(),
                    before.height(),
                    before.position(),
                    before.note());
            new SaveThing(other).changed(ThingBody.of(before), ThingBody.of(after));
        }
        try (Walk walk = Walk.keeping(folder)) {
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN).type("e");

            assertThat(walk.screen())
                    .contains("Changed in the records since these entries were begun: Name is Portal, was", "9 m");
            walk.press(SAVE);
            Obstacle saved = new FindRecord(walk.session())
                    .canyon("éclusaune")
                    .line()
                    .get(1)
                    .obstacle();
            assertThat(saved.name()).isEqualTo("Portal");
            assertThat(saved.height().orElseThrow().inCentimetres()).isEqualTo(900);
        }
    }

    @Test
    void theListGoesOnWithADraftWhereverItBelongs() {
        try (Walk killed = Walk.keeping(folder)) {
            atPorte(killed).type("n").press(Key.Named.DOWN, 2).type("Doubled strand.");
        }
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("d");
            assertThat(walk.screen()).contains("less than a minute old", "Doubled strand.");

            walk.press(Key.Named.ENTER).press(SAVE);
            assertThat(walk.screen()).contains("No draft waits.", "Saved.");
            assertThat(new FindRecord(walk.session())
                            .station("éclusaune/porte")
                            .station()
                            .countingNotes()
                            .get(0)
                            .content()
                            .prose()
                            .texts()
                            .values())
                    .contains("Doubled strand.");
        }
    }

    @Test
    void theListThrowsAwayOnlyWithAnotherKey() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("nRio").press(Key.Named.ESCAPE).type("kd").type("x");
            assertThat(walk.screen()).contains("d throws the draft away for good");
            walk.type("j").type("x").type("d");

            assertThat(walk.screen()).contains("No draft waits.");
            assertThat(files()).isEmpty();
        }
    }

    @Test
    void aDraftAboutAThingOutOfUseIsNotOpenedButCanBeCopied() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN).type("e").fill("Name", "Portal");
            walk.press(Key.Named.ESCAPE)
                    .type("k")
                    .type("x")
                    .type("twice entered")
                    .press(SAVE);
            walk.press(Key.Named.ESCAPE).type("d").press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("is out of use or counts no more");

            walk.type("y");
            assertThat(walk.copied()).contains("Name: Portal");
        }
    }

    @Test
    void aDraftThatCannotBeReadIsPassedOver() throws IOException {
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("nRio");
            Files.writeString(files().get(0), "{ half a dra");
        }
        try (Walk walk = Walk.keeping(folder)) {
            assertThat(walk.screen()).doesNotContain("draft waits");
            walk.type("n");
            assertThat(walk.screen()).doesNotContain("Filled from a draft");
            assertThat(files()).hasSize(1);
        }
    }

    @Test
    void aRigThatSomebodyStatedComesBackAndOneStepBackAreThePointsAsEntered() {
        try (Walk killed = Walk.keeping(folder)) {
            atPorte(killed)
                    .type("r")
                    .type("o")
                    .confirmStart()
                    .press(SAVE)
                    .type("o")
                    .fill("Load", "181 kg");
        }
        try (Walk walk = Walk.keeping(folder)) {
            atPorte(walk).type("r");
            assertThat(walk.screen()).contains("181 kg");

            walk.press(SAVE).press(Key.Named.TAB);
            assertThat(walk.screen()).contains("This rig is from a draft, less than a minute old");
            walk.press(Key.Named.ESCAPE).type("r").type("z");
            assertThat(walk.screen()).doesNotContain("This rig is from a draft");
        }
    }

    @Test
    void aRigThatWasOnlyLookedAtLeavesNoDraft() {
        try (Walk walk = Walk.keeping(folder)) {
            atPorte(walk).type("r").press(Key.Named.LEFT, 3).press(Key.Named.ESCAPE);

            assertThat(folder.resolve("drafts")).doesNotExist();
        }
    }

    @Test
    void aRigThatIsKeptWithItsStationLeavesNoDraft() {
        try (Walk walk = Walk.keeping(folder)) {
            atPorte(walk).type("r").type("o").confirmStart().press(SAVE);
            assertThat(files()).hasSize(1);

            walk.type("a");
            assertThat(files()).isEmpty();
        }
    }

    @Test
    void whatIsTypedAndPastedBeforeTheFormHasItsDraftIsNotLost() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("nRio").press(Key.Named.ESCAPE).type("k");
        }
        try (Walk walk = Walk.keeping(folder)) {
            walk.tellUnanswered(new Message.KeyPressed(Key.of('n')));
            walk.tellUnanswered(new Message.KeyPressed(Key.of('q')));
            walk.tellUnanswered(new Message.Pasted("uick"));
            walk.answerAll();

            assertThat(walk.screen()).contains("Rioquick");
        }
    }

    @Test
    void readingOnlyKeepsAndShowsNoDrafts() {
        try (Walk killed = Walk.keeping(folder)) {
            killed.type("nRio");
        }
        try (Walk walk = Walk.keeping(folder, LATER, true, 24, 80)) {
            assertThat(walk.screen()).doesNotContain("draft waits");
            walk.type("d");
            assertThat(walk.screen()).contains("The database is open for reading only.");
        }
    }

    @Test
    void conditionsOfADraftStayWithTheirPartsWhenPartsAreAddedMeanwhile() {
        try (Walk killed = Walk.keeping(folder)) {
            atPorte(killed).type("i").press(Key.Named.DOWN, 2).type("u");
        }
        String unsafe;
        try (Walk walk = Walk.keeping(folder)) {
            unsafe = new FindRecord(walk.session())
                    .station("éclusaune/porte")
                    .station()
                    .parts()
                    .get(2)
                    .part()
                    .label();
            atPorte(walk).type("p").type("new bolt").press(SAVE);
            walk.type("i").press(SAVE);

            assertThat(FindRecord.part(
                                    new FindRecord(walk.session())
                                            .station("éclusaune/porte")
                                            .station(),
                                    unsafe)
                            .state()
                            .condition())
                    .contains(Condition.UNSAFE);
        }
    }

    @Test
    void theListAndAFilledFormDrawAtEverySize() {
        try (Walk walk = Walk.keeping(folder)) {
            Sizes.drawAll(walk.type("d"), "no drafts");
            walk.press(Key.Named.ESCAPE).type("n").type("名前 ".repeat(30)).press(Key.Named.ESCAPE);
            walk.resize(24, 80).type("kd");
            Sizes.drawAll(walk, "drafts");
            walk.resize(24, 80).press(Key.Named.ENTER);
            Sizes.drawAll(walk, "a form filled from a draft");
        }
    }
}
