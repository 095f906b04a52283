package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Work;
import thalweg.route.Part;
import thalweg.route.PartialDate;
import thalweg.service.FindRecord;
import thalweg.service.TakeBack;
import thalweg.tui.core.Key;

final class ReplaceWalkTest {

    private static final Key SAVE = Key.ctrl('s');

    /** At the station Porte, on its chain. */
    private static Walk atChain() {
        return Walk.sample(24, 80)
                .press(Key.Named.ENTER)
                .press(Key.Named.DOWN, 2)
                .press(Key.Named.ENTER)
                .press(Key.Named.DOWN, 4);
    }

    private static PartRecord chain(Walk walk) {
        FindRecord.StationInCanyon place = new FindRecord(walk.session()).station("éclusaune/porte");
        return FindRecord.part(place.station(), "chain");
    }

    @Test
    void theNewOneStandsInThePlaceOfTheOld() {
        try (Walk walk = atChain()) {
            Part before = chain(walk).part();

            walk.type("Rw").press(Key.Named.DOWN).type("s").press(SAVE);

            assertThat(walk.screen()).contains("Saved.", "+ sound  2026-11-25");
            PartRecord after = chain(walk);
            Inspection replaced = after.counting().get(0);
            assertThat(replaced.found()).contains(Condition.WORN);
            assertThat(replaced.left()).contains(Condition.SOUND);
            assertThat(replaced.work()).isEqualTo(List.of(Work.REPLACED));
            assertThat(after.part().placed()).contains(PartialDate.parse("2026-11-25"));
            assertThat(after.part().hardware()).isEqualTo(Part.Hardware.UNKNOWN);
            assertThat(after.part().strength()).isEqualTo(Optional.empty());
            assertThat(after.part().kind()).isEqualTo(before.kind());
            assertThat(after.part().place()).isEqualTo(before.place());
            assertThat(after.replacedSince()).isEmpty();
        }
    }

    @Test
    void bothAreTakenBackTogether() {
        try (Walk walk = atChain()) {
            PartRecord before = chain(walk);

            walk.type("Rw").press(Key.Named.DOWN).type("s").press(SAVE);
            new TakeBack(walk.session()).undo();

            assertThat(chain(walk).part()).isEqualTo(before.part());
            assertThat(chain(walk).state()).isEqualTo(before.state());
        }
    }

    @Test
    void theSameMakeKeepsWhatIsKnownOfIt() {
        try (Walk walk = atChain()) {
            Part before = chain(walk).part();

            walk.type("R").press(Key.Named.DOWN).type("s").press(Key.Named.DOWN);
            assertThat(walk.screen()).contains("Material");
            walk.type("t");
            assertThat(walk.screen()).doesNotContain("Material");
            walk.press(SAVE);

            assertThat(chain(walk).part().hardware()).isEqualTo(before.hardware());
            assertThat(chain(walk).counting().get(0).found()).isEmpty();
        }
    }

    @Test
    void howTheNewOneWasLeftHasToBeSaid() {
        try (Walk walk = atChain()) {
            walk.type("Rw").press(SAVE);

            assertThat(walk.screen()).contains("Say in which condition the new one was left.");
        }
    }

    @Test
    void aVisitThatReplacedAPartAsksForTheNewOneToo() {
        try (Walk walk = atChain()) {
            walk.type("iw");
            assertThat(walk.screen()).contains("> ring");
            walk.press(Key.Named.UP).press(Key.Named.DOWN, 11).type("r").press(SAVE);

            assertThat(walk.screen())
                    .contains("chain: A part that was replaced was left in the condition of the new one");
        }
    }

    @Test
    void onlyAPartIsReplaced() {
        try (Walk walk = atChain()) {
            walk.press(Key.Named.HOME).type("R");

            assertThat(walk.screen()).contains("Choose the part that was replaced first.");
        }
    }
}
