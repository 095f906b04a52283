package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.body.ThingBody;
import thalweg.route.Obstacle;
import thalweg.service.FindRecord;
import thalweg.service.SaveThing;
import thalweg.service.Session;
import thalweg.tui.core.Key;

/** One database on two screens. */
final class TwoWindowsWalkTest {

    private static final Key SAVE = Key.ctrl('s');
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private Walk walk() {
        return Walk.keeping(folder, CLOCK, false, 24, 120);
    }

    private static Obstacle porte(Session session) {
        return new FindRecord(session).canyon("éclusaune").line().get(1).obstacle();
    }

    private static Obstacle named(Obstacle before, String name) {
        return new Obstacle(
                before.uid(),
                before.canyon(),
                before.order(),
                before.kind(),
                name,
                before.distance(),
                before.height(),
                before.position(),
                before.note());
    }

    /** In the other window, changes the place "Porte". */
    private void elsewhere(UnaryOperator<Obstacle> change) {
        try (Session other = Session.writing(FilledDatabases.in(folder), CLOCK, "Bo")) {
            Obstacle before = porte(other);
            new SaveThing(other).changed(ThingBody.of(before), ThingBody.of(change.apply(before)));
        }
    }

    private static Walk editing(Walk walk) {
        return walk.press(Key.Named.ENTER).press(Key.Named.DOWN).type("e");
    }

    @Test
    void whatIsShownIsReadAnewAndSaysSo() {
        try (Walk walk = walk()) {
            walk.press(Key.Named.ENTER);
            elsewhere(before -> named(before, "Portal"));
            walk.look();

            assertThat(walk.screen()).contains("Portal", "The database was changed from elsewhere");
        }
    }

    @Test
    void whereNobodyChangedAnythingNothingIsSaid() {
        try (Walk walk = walk()) {
            walk.press(Key.Named.ENTER);
            walk.type("s").type("new station").press(SAVE).look();

            assertThat(walk.screen()).contains("Saved.").doesNotContain("changed from elsewhere");
        }
    }

    @Test
    void aFormWithEntriesKeepsThemAndSaysWhatChanged() {
        try (Walk walk = walk()) {
            editing(walk).fill("Height", "9 m");
            elsewhere(before -> named(before, "Portal"));
            walk.look();
            assertThat(walk.screen()).contains("9 m", "Name is Portal, was Porte");

            walk.press(SAVE);
            assertThat(porte(walk.session()).name()).isEqualTo("Portal");
            assertThat(porte(walk.session()).height().orElseThrow().inCentimetres())
                    .isEqualTo(900);
        }
    }

    @Test
    void aFormWithoutEntriesShowsWhatIsThereNow() {
        try (Walk walk = walk()) {
            editing(walk);
            elsewhere(before -> named(before, "Portal"));
            walk.look();

            assertThat(walk.screen()).contains("Portal").doesNotContain("was Porte");
            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).doesNotContain("is not saved");
        }
    }

    @Test
    void theSameFieldChangedInBothIsToldAndTheOwnEntryStays() {
        try (Walk walk = walk()) {
            editing(walk).fill("Name", "Gate");
            elsewhere(before -> named(before, "Portal"));
            walk.look();

            assertThat(walk.screen()).contains("Gate", "Name is Portal, was Porte");
        }
    }

    @Test
    void aSaveThatIsRefusedLosesNothingAndTheNextOneIsMadeOnWhatIsThereNow() {
        try (Walk walk = walk()) {
            editing(walk).fill("Height", "9 m");
            elsewhere(before -> named(before, "Portal"));

            walk.press(SAVE);
            assertThat(walk.screen())
                    .contains("was changed from elsewhere in the meantime", "9 m", "Name is Portal, was Porte");
            walk.press(SAVE);
            assertThat(walk.screen()).contains("Saved.");
            assertThat(porte(walk.session()).name()).isEqualTo("Portal");
        }
    }

    @Test
    void whatIsEditedTakenOutOfUseElsewhereIsSaidAndTheEntriesAreKept() {
        try (Walk walk = walk()) {
            editing(walk).fill("Height", "9 m");
            try (Session other = Session.writing(FilledDatabases.in(folder), CLOCK, "Bo")) {
                new SaveThing(other).removed(ThingBody.of(porte(other)), "twice");
            }
            walk.look();

            assertThat(walk.screen()).contains("was taken out of use from elsewhere", "9 m");
        }
    }

    @Test
    void aVisitKeepsItsEntriesWhenAPartIsAddedElsewhere() {
        try (Walk walk = walk();
                Walk other = walk()) {
            walk.press(Key.Named.ENTER)
                    .press(Key.Named.DOWN, 2)
                    .press(Key.Named.ENTER)
                    .type("is");
            other.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
            other.type("p").type("spare bolt").press(SAVE);
            walk.look();

            assertThat(walk.screen()).contains("sound", "spare bolt");
        }
    }

    @Test
    void aRigSaysThatItIsFromBefore() {
        try (Walk walk = walk()) {
            walk.press(Key.Named.ENTER)
                    .press(Key.Named.DOWN, 2)
                    .press(Key.Named.ENTER)
                    .type("r");
            elsewhere(before -> named(before, "Portal"));
            walk.look();

            assertThat(walk.screen()).contains("what is shown here is from before");
        }
    }
}
