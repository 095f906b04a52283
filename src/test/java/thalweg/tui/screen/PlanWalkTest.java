package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/** The plan of a trip that stands in the records, on the screen. */
final class PlanWalkTest {

    private static Walk trip(Walk walk, String day) {
        walk.type("/éclus")
                .press(Key.Named.ENTER)
                .type("tn")
                .press(Key.Named.TAB)
                .type(day)
                .press(Key.Named.TAB)
                .type("a course")
                .press(Key.Named.TAB);
        walk.tell(new Message.Pasted("Ana, lead, 62 kg\nBo, 84 kg"));
        walk.press(Key.Named.TAB).tell(new Message.Pasted("60 m, 9.5 mm, 62 g/m\n60 m, 8 mm, 46 g/m"));
        return walk.press(Key.Named.TAB).type("8:30").press(Key.ctrl('s'));
    }

    @Test
    void aTripOfTheRecordsIsPlannedWithOneKey() {
        try (Walk walk = Walk.sample(60, 120)) {
            trip(walk, "2026-12-05").type("p");

            assertThat(walk.screen())
                    .contains("Plan: Gorge de l'Éclusaune, 2026-12-05")
                    .contains("carry 60 m, 9.5 mm")
                    .contains("Together 6.5 kg.")
                    .contains("Approach: 1 h 15 min as the records state it")
                    .contains("On the line for 2 people with 1 set of ropes");
            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Trips");
        }
    }

    @Test
    void aTripWithoutADayIsRefusedWithWhatWouldDo() {
        try (Walk walk = Walk.sample(24, 80)) {
            trip(walk, "2026-12").type("p");

            assertThat(walk.screen()).contains("A plan needs the day of the trip");
        }
    }
}
