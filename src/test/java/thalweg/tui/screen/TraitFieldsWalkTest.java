package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thalweg.logbook.StationRecord;
import thalweg.service.FindRecord;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;

/** What weakens points, strands and connectors, stated in the form of a rig and shown with its figures. */
final class TraitFieldsWalkTest {

    private static final Key SAVE = Key.ctrl('s');

    private static Walk rigAtPorte(int rows, int columns) {
        Walk walk = Walk.sample(rows, columns, Glyphs.BRAILLE);
        return walk.press(Key.Named.ENTER)
                .press(Key.Named.DOWN, 2)
                .press(Key.Named.ENTER)
                .type("r");
    }

    private static String kept(Walk walk) {
        StationRecord porte =
                new FindRecord(walk.session()).station("éclusaune/porte").station();
        return porte.analyses().get(0).content().input();
    }

    private static String words(Walk walk) {
        return walk.screen().replaceAll("[│█\\s]+", " ");
    }

    @Test
    void aRigFromTheRecordsKnowsHowItsPointsWereFoundAndBothStrengthsOfABolt() {
        try (Walk walk = rigAtPorte(80, 80)) {
            walk.press(Key.Named.TAB);

            assertThat(words(walk))
                    .contains("left bolt, right bolt: 25.0 kN across its axis, 15.0 kN along it.")
                    .contains("condition 1, our choice: found sound")
                    .contains("Condition not stated: left bolt leg, right bolt leg.");
        }
    }

    @Test
    void whatTheFormStatesWeakensAndIsKept() {
        try (Walk walk = rigAtPorte(90, 80)) {
            walk.type("o").confirmStart().fill("Strand strength", "17.8 kN");
            walk.field("Knot").press(Key.Named.RIGHT, 2);
            walk.field("Strands found").press(Key.Named.RIGHT, 2);
            walk.field("Fibre").press(Key.Named.RIGHT);
            walk.fill("Age of the strands", "3");
            walk.field("Kept").press(Key.Named.RIGHT, 2);
            walk.field("Connector at the master").press(Key.Named.RIGHT, 2);
            assertThat(walk.screen()).contains("basic (B), across: 7.00 kN");
            walk.field("left bolt: found").press(Key.Named.RIGHT);
            assertThat(walk.screen()).contains("worn");
            walk.press(SAVE).press(Key.Named.TAB);

            assertThat(words(walk))
                    .contains("condition 0.5, our choice: found worn")
                    .contains("age 0.45 (0.4 to 0.5), derived: nylon left outdoors for 3.0 years")
                    .contains("master connector: 7.13 times at rest");
            walk.type("a");
            assertThat(kept(walk))
                    .contains("\"condition\": \"worn\"")
                    .contains("\"knot\": \"water_knot\"")
                    .contains("\"strand_fibre\": \"nylon\"")
                    .contains("\"strand_age_years\": 3")
                    .contains("\"strand_kept\": \"outdoors\"")
                    .contains("\"loaded\": \"across\"");
        }
    }

    @Test
    void anAgeThatIsNoneIsRefusedInOneSentence() {
        try (Walk walk = rigAtPorte(24, 80)) {
            walk.type("o").fill("Age of the strands", "old").press(SAVE);

            assertThat(walk.screen()).contains("\"old\" is no age; write years such as 3 or 2.5.");
        }
    }

    @Test
    void nothingIsStatedOfAFormThatIsOnlyLookedAt() {
        try (Walk walk = rigAtPorte(40, 80)) {
            walk.type("o").confirmStart().press(SAVE).type("a");

            assertThat(kept(walk)).doesNotContain("connector", "strand_", "knot", "axis", "derating");
        }
    }
}
