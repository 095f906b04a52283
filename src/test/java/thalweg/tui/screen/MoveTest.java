package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.PartRecord;
import thalweg.service.CheckDatabase;
import thalweg.service.FindRecord;
import thalweg.tui.core.Key;

/** Giving places, stations, anchors and parts another place, on the screen. */
final class MoveTest {

    private static final Key SAVE = Key.ctrl('s');
    private static final Key UP = Key.shift(Key.Named.UP);
    private static final Key DOWN = Key.shift(Key.Named.DOWN);

    private static CanyonRecord canyon(Walk walk) {
        return new FindRecord(walk.session()).canyon("éclusaune");
    }

    private static Walk atLine() {
        return Walk.sample(24, 80).press(Key.Named.ENTER);
    }

    private static Walk atPorte() {
        return atLine().press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
    }

    @Test
    void aPlaceMovesWithItsStationsAndTheCursorFollows() {
        try (Walk walk = atLine()) {
            walk.press(Key.Named.DOWN).press(DOWN);
            assertThat(walk.screen()).contains("  2 slide, 4 m, Grey slide", "> 3 drop, 8 m, Porte", "     Porte");

            walk.type("K").type("K");
            assertThat(walk.screen()).contains("> 1 drop, 8 m, Porte", "  2 walk, Sheepfold bridge");
            walk.press(UP);
            assertThat(walk.screen()).contains("It is the first already.");

            walk.type("zzz");
            assertThat(walk.screen()).contains("  1 walk, Sheepfold bridge", "2 drop, 8 m, Porte");
            assertThat(new CheckDatabase(walk.session()).findings()).isEmpty();
        }
    }

    @Test
    void aStationMovesOverTheEdgeOfItsPlace() {
        try (Walk walk = atLine()) {
            walk.press(Key.Named.DOWN, 2).press(DOWN);

            assertThat(canyon(walk).line().get(1).stations()).isEmpty();
            assertThat(canyon(walk).line().get(2).stations()).hasSize(1);
            assertThat(walk.screen()).contains(">    Porte", "no station yet");
        }
    }

    @Test
    void aPartMovesAmongItsAnchorsPartsOnly() {
        try (Walk walk = atPorte()) {
            walk.press(Key.Named.DOWN, 2).press(UP);
            assertThat(walk.screen()).contains("It is the first already.");
            walk.type("J");
            assertThat(canyon(walk).stations().get(0).parts())
                    .extracting(part -> part.part().label())
                    .containsExactly("right bolt", "left bolt", "chain", "ring");
            assertThat(walk.screen()).contains(">    left bolt");
        }
    }

    @Test
    void aPartIsPutIntoAnotherAnchorWithWhatWasFoundOnIt() {
        try (Walk walk = atPorte()) {
            int before =
                    canyon(walk).stations().get(0).parts().get(0).inspections().size();
            walk.press(Key.Named.DOWN, 2).type("m");
            assertThat(walk.screen()).contains("Where to put part left bolt", "Way round the jump / main anchor");
            walk.press(Key.Named.ENTER);

            assertThat(walk.screen()).contains("Moved.");
            PartRecord moved = FindRecord.part(canyon(walk).stations().get(1), "left bolt");
            assertThat(moved.inspections()).hasSize(before);
            assertThat(canyon(walk).stations().get(0).parts()).hasSize(3);

            walk.type("z");
            assertThat(walk.screen()).contains("Taken back: moved part left bolt");
            assertThat(canyon(walk).stations().get(0).parts()).hasSize(4);
        }
    }

    @Test
    void aStationIsPutToAnotherPlace() {
        try (Walk walk = atLine()) {
            walk.type("m");
            assertThat(walk.screen()).contains("Only a station can be put elsewhere");
            walk.press(Key.Named.DOWN, 2).type("m").press(Key.Named.END).press(Key.Named.ENTER);

            assertThat(canyon(walk).line().get(1).stations()).isEmpty();
            int last = canyon(walk).line().size() - 1;
            assertThat(canyon(walk).line().get(last).stations())
                    .extracting(station -> station.station().name())
                    .contains("Porte");
        }
    }

    @Test
    void theCursorGoesToWhatWasEnteredNew() {
        try (Walk walk = atLine()) {
            walk.press(Key.Named.DOWN, 4)
                    .type("n")
                    .press(Key.Named.DOWN, 3)
                    .type("Sump")
                    .press(SAVE);
            assertThat(walk.screen()).contains("> 5 drop, height unknown, Sump");

            walk.type("s").type("left side").press(SAVE);
            assertThat(walk.screen()).contains(">    left side");
            walk.press(Key.Named.ENTER).type("a").press(SAVE);
            assertThat(walk.screen()).contains("> main anchor");
            walk.type("p").type("first").press(SAVE).type("p").type("second").press(SAVE);
            assertThat(walk.screen()).contains(">    second");

            walk.press(Key.Named.ESCAPE, 2);
            walk.type("n").type("Zulu").press(SAVE);
            assertThat(walk.screen()).contains("> Zulu");
        }
    }

    @Test
    void aNewPlaceThatIsGivenUpLeavesTheCursorWhereItWas() {
        try (Walk walk = atLine()) {
            walk.press(Key.Named.DOWN, 4).type("n").press(Key.Named.ESCAPE);

            assertThat(walk.screen()).contains("> 4 jump, 5 m, Marmite verte");
        }
    }
}
