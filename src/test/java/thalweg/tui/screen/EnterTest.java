package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.PartRecord;
import thalweg.place.Position;
import thalweg.route.ObstacleKind;
import thalweg.service.FindRecord;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.shell.Reaction;

final class EnterTest {

    private static final Key SAVE = Key.ctrl('s');

    private static Walk atPorte() {
        Walk walk = Walk.sample(24, 80);
        return walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
    }

    private static PartRecord ring(Walk walk) {
        FindRecord.StationInCanyon place = new FindRecord(walk.session()).station("éclusaune/porte");
        return FindRecord.part(place.station(), "ring");
    }

    @Test
    void aVisitIsEnteredForAllPartsAtOnce() {
        try (Walk walk = atPorte()) {
            int before = ring(walk).inspections().size();

            walk.type("isn").press(Key.Named.DOWN).type("d").press(SAVE);

            assertThat(walk.screen()).contains("Saved.", "? doubtful  2026-11-25", "+ sound  2026-11-25");
            PartRecord ring = ring(walk);
            assertThat(ring.inspections()).hasSize(before + 1);
            assertThat(ring.state().condition()).contains(Condition.DOUBTFUL);
            assertThat(ring.inspections().get(0).content().by()).isEqualTo("ada");
        }
    }

    @Test
    void aDStaysOnTheDropThatIsShownAndASecondGoesOn() {
        try (Walk walk = Walk.empty(24, 80)) {
            walk.type("nRio").press(SAVE).press(Key.Named.ENTER).type("nd");
            assertThat(walk.screen()).contains("< drop >", "pressing it again goes on to the next");

            walk.type("d");
            assertThat(walk.screen()).contains("< downclimb >");
        }
    }

    @Test
    void aVisitWithoutAnyEntryIsNotSaved() {
        try (Walk walk = atPorte()) {
            walk.type("i").press(SAVE);

            assertThat(walk.screen()).contains("No part has an entry yet");
        }
    }

    @Test
    void workOnAPartThatWasNotSeenIsRefused() {
        try (Walk walk = atPorte()) {
            walk.type("in").press(Key.Named.DOWN, 4).type("r").press(SAVE);

            assertThat(walk.screen()).contains("left bolt: a part that was not seen has no condition as left");
        }
    }

    @Test
    void leavingAnEntryAsksWithAnotherKey() {
        try (Walk walk = atPorte()) {
            walk.type("is").press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("What you entered is not saved.");

            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("left bolt (was + sound)   sound");

            walk.press(Key.Named.F10);
            assertThat(walk.lastOrder()).isEqualTo(Reaction.Order.NONE);
            assertThat(walk.screen()).contains("What you entered is not saved.");

            walk.press(Key.Named.ENTER).press(Key.Named.ESCAPE).type("d");
            assertThat(walk.screen()).contains("Station Porte");
        }
    }

    @Test
    void aDateThatHasNotComeIsRefusedWhereItIsTyped() {
        try (Walk walk = atPorte()) {
            walk.type("i").press(Key.Named.UP, 3).press(Key.ctrl('u')).type("2026-12");

            assertThat(walk.screen()).contains("2026-12 has not come yet; today is 2026-11-25.");
        }
    }

    @Test
    void aCanyonGrowsFromNothingToAnInspectedPart() {
        try (Walk walk = Walk.empty(24, 80)) {
            walk.type("n").type("Probe 滝").press(SAVE);
            assertThat(walk.screen()).contains("Probe 滝", "never inspected");

            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("The line is empty.");

            walk.type("n").press(Key.Named.DOWN).type("60 ft").press(SAVE);
            assertThat(walk.screen()).contains("1 drop, 18.3 m", "no station yet");

            walk.type("s").type("top").press(SAVE);
            walk.press(Key.Named.DOWN).press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("Station top");

            walk.type("a").press(SAVE);
            assertThat(walk.screen()).contains("main anchor", "no parts yet");

            walk.type("p").type("left bolt").press(SAVE);
            walk.type("iw").press(SAVE);
            assertThat(walk.screen()).contains("left bolt  bolt", "~ worn  2026-11-25");

            CanyonRecord canyon = new FindRecord(walk.session()).canyon("probe");
            assertThat(canyon.line().get(0).obstacle().kind()).isEqualTo(ObstacleKind.DROP);
            assertThat(canyon.line().get(0).obstacle().height().orElseThrow().inCentimetres())
                    .isEqualTo(1829);
        }
    }

    @Test
    void aQuantityThatNobodyTouchedStaysAsItWas() {
        try (Walk walk = Walk.sample(24, 80)) {
            CanyonRecord before = new FindRecord(walk.session()).canyon("éclusaune");

            walk.press(Key.Named.ENTER).type("u").press(Key.Named.DOWN).type("e");
            assertThat(walk.screen()).contains("26 ft");
            walk.press(Key.Named.DOWN, 3).type("!").press(SAVE);

            CanyonRecord after = new FindRecord(walk.session()).canyon("éclusaune");
            assertThat(after.line().get(1).obstacle().height())
                    .isEqualTo(before.line().get(1).obstacle().height());
            assertThat(after.line().get(1).obstacle().name()).isEqualTo("Porte!");
        }
    }

    @Test
    void coordinatesOfAPlaceAndAStationAreTypedAndFoundAgain() {
        try (Walk walk = Walk.empty(40, 120)) {
            walk.type("n").type("Probe").press(SAVE).press(Key.Named.ENTER);
            walk.type("n").press(Key.Named.DOWN, 4).type("42.123456, -0.054321").press(SAVE);
            assertThat(walk.screen()).contains("42.123456, -0.054321");

            walk.type("s").type("top").press(Key.Named.DOWN, 3).type("geo:42.5,-0.25;u=8");
            walk.press(SAVE).press(Key.Named.DOWN);
            assertThat(walk.screen()).contains("42.500000, -0.250000");

            CanyonRecord canyon = new FindRecord(walk.session()).canyon("probe");
            assertThat(canyon.line().get(0).obstacle().position())
                    .contains(new Position(421_234_560, -543_210, Optional.empty()));
            assertThat(canyon.stations().get(0).station().position())
                    .contains(new Position(425_000_000, -2_500_000, Optional.of(8)));
        }
    }

    @Test
    void aFaultIsShownWhereItIsAndNothingIsSaved() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN).type("e").press(Key.Named.DOWN);
            walk.press(Key.ctrl('u')).press(Key.ctrl('k')).type("tall").press(SAVE);

            assertThat(walk.screen()).contains("The length \"tall\" is not a number with a unit");
            assertThat(new FindRecord(walk.session())
                            .canyon("éclusaune")
                            .line()
                            .get(1)
                            .obstacle()
                            .height())
                    .isPresent();
        }
    }

    @Test
    void aRiggingNoteStandsWithItsStation() {
        try (Walk walk = atPorte()) {
            walk.type("n").press(Key.Named.DOWN, 2);
            walk.tell(new Message.Pasted("Doubled strand,\nboth ends in the pool."));
            walk.press(SAVE);

            assertThat(walk.screen()).contains("rigging note 2026-11-25, ada");
        }
    }

    @Test
    void anEmptyNoteIsNotSaved() {
        try (Walk walk = atPorte()) {
            walk.type("n").press(SAVE);

            assertThat(walk.screen()).contains("The note says nothing yet");
        }
    }
}
