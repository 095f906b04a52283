package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.service.FindRecord;
import thalweg.tui.core.Key;

/** The form of a rig: loads by name, what nobody has stated, and which fields a layout has. */
final class RigFormWalkTest {

    private static final Key SAVE = Key.ctrl('s');

    private static Walk opened(int rows, int columns) {
        Walk walk = Walk.sample(rows, columns);
        walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
        return walk.type("r").type("o");
    }

    /** What stands beside the drawing, without it. */
    private static String words(Walk walk) {
        walk.resize(60, 80).press(Key.Named.TAB);
        String words = walk.screen().replaceAll("[│█\\s]+", " ");
        walk.press(Key.Named.TAB).resize(40, 120);
        return words;
    }

    /** The rigs of all analyses that are kept. */
    private static String kept(Walk walk) {
        return new FindRecord(walk.session())
                .station("éclusaune/porte").station().analyses().stream()
                        .map(entry -> entry.content().input())
                        .collect(Collectors.joining());
    }

    @Test
    void aNamedLoadFillsMassAndFactorAndSaysWhereTheyAreFrom() {
        try (Walk walk = opened(40, 120)) {
            assertThat(walk.screen()).contains("one person, wet kit (100 kg)", "EN 1891, type A");

            walk.field("Load is").press(Key.Named.RIGHT, 2);

            assertThat(walk.screen())
                    .contains("< lowered, one person (100 kg x 1.5) >", "1.5 from memory, unconfirmed")
                    .containsPattern("Load factor +1.5");
            walk.press(SAVE);
            assertThat(words(walk)).contains("Load 100 kg x 1.5 (lowered, one person), so 1.47 kN, toward 0°");
        }
    }

    @Test
    void aLoadThatIsChangedIsNotCalledByTheNameAnyMore() {
        try (Walk walk = opened(40, 120)) {
            walk.field("Load is").press(Key.Named.RIGHT, 2).fill("Load", "95 kg");
            assertThat(walk.screen()).contains("another load");

            walk.fill("Load", "100 kg");
            assertThat(walk.screen()).contains("lowered, one person (100 kg x 1.5)");
            walk.fill("Load factor", "11").press(SAVE);
            assertThat(walk.screen()).contains("\"11\" is no factor of a load; write 1 to 10, such as 1.5.");
            walk.fill("Load factor", "1.25").press(SAVE);
            assertThat(words(walk)).contains("Load 100 kg x 1.25, so 1.23 kN");
        }
    }

    @Test
    void aNamedLoadIsTakenAsItIsAndNotAsItIsRounded() {
        try (Walk walk = Walk.sample(40, 120)) {
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
            walk.type("u").type("r").type("o").confirmStart().field("Load is").press(Key.Named.LEFT);
            assertThat(walk.screen()).contains("one person (176 lb)");
            walk.press(SAVE).type("a");

            assertThat(kept(walk)).contains("\"mass_kg\": 80,").doesNotContain("factor");
        }
    }

    @Test
    void whatNobodyStatedStaysAStartUntilItIsConfirmed() {
        try (Walk walk = opened(40, 120)) {
            assertThat(walk.screen())
                    .contains("Load (start)", "Material (start)", "Nobody stated this; Enter confirms");

            walk.press(SAVE);
            assertThat(words(walk)).contains("Start values that nobody stated: load, aim, layout, material.");
            walk.type("o").field("Load").press(Key.Named.ENTER).press(SAVE);
            assertThat(words(walk)).contains("Start values that nobody stated: aim, layout, material.");
            walk.type("a");
            assertThat(walk.screen()).contains("Nobody has stated: aim, layout, material. o opens the form");
            walk.type("o").confirmStart();
            assertThat(walk.screen()).doesNotContain("(start)");
            walk.press(SAVE).type("a");
            assertThat(walk.screen()).contains("Attached");
        }
    }

    @Test
    void aChoiceAtItsDefaultIsStatedOnlyOnceItIsConfirmed() {
        try (Walk walk = opened(40, 120)) {
            walk.confirmStart().field("Layout").press(Key.Named.RIGHT);
            assertThat(walk.screen()).contains("When a point goes (start)");
            walk.press(SAVE).type("a");
            assertThat(kept(walk)).contains("\"kind\": \"sliding\"").doesNotContain("captured");

            walk.type("o")
                    .field("When a point goes")
                    .press(Key.Named.ENTER)
                    .press(SAVE)
                    .type("a");
            assertThat(kept(walk)).contains("\"captured\": true");
        }
    }

    @ParameterizedTest
    @CsvSource({"24, 80", "40, 120", "12, 40"})
    void onlyFieldsOfTheChosenLayoutAreShown(int rows, int columns) {
        try (Walk walk = opened(rows, columns)) {
            String focused = everything(walk);
            assertThat(focused).contains("> Strands in a l").doesNotContain("> Friction", ": knot", "> Free sway");

            walk.field("Layout").press(Key.Named.RIGHT);
            assertThat(everything(walk))
                    .contains("> When a point", "> Friction")
                    .doesNotContain("> Strands in a l", "> Slides on");
            walk.field("Layout").press(Key.Named.RIGHT);
            assertThat(everything(walk))
                    .contains("> left bolt: knot", "> Free sway", "> Slides on")
                    .doesNotContain("> When a point");
        }
    }

    /** Every line that has the focus on a way once around the form. */
    private static String everything(Walk walk) {
        StringBuilder seen = new StringBuilder();
        for (int i = 0; i < 30; i++) {
            walk.press(Key.Named.DOWN);
            walk.screen()
                    .lines()
                    .filter(line -> line.strip().startsWith("> "))
                    .forEach(line -> seen.append(line).append('\n'));
        }
        return seen.toString();
    }

    @Test
    void whatIsTypedInAFieldThatIsHiddenIsNotLostAndNotSent() {
        try (Walk walk = opened(40, 120)) {
            walk.confirmStart().field("Layout").press(Key.Named.RIGHT, 2);
            walk.fill("left bolt: knot", "1 banana").field("Layout").press(Key.Named.LEFT, 2);
            walk.press(SAVE).type("a");
            assertThat(walk.screen()).contains("Attached");
            assertThat(kept(walk)).contains("\"kind\": \"focused\"").doesNotContain("limit");

            walk.type("o").field("Layout").press(Key.Named.RIGHT, 2).fill("left bolt: knot", "10 cm");
            walk.fill("right bolt: knot", "8 cm").field("Layout").press(Key.Named.LEFT, 2);
            walk.press(Key.Named.RIGHT, 2).press(SAVE).type("a");
            assertThat(kept(walk)).contains("\"limit_m\": [0.1, 0.08]");
        }
    }

    @Test
    void aSlingIsAskedAboutOnceItIsChosen() {
        try (Walk walk = opened(60, 120)) {
            String point = "left bolt";
            assertThat(walk.screen()).contains(point + ": sling").doesNotContain(point + ": width");

            walk.field(point + ": is a").press(Key.Named.RIGHT);
            walk.field(point + ": sling").press(Key.Named.RIGHT);
            assertThat(walk.screen()).contains("laid round, both bights clipped", point + ": width");
            walk.press(SAVE);
            assertThat(words(walk)).contains("points[0].sling.width_m: is missing");
            walk.type("o")
                    .fill(point + ": width", "0.3 m")
                    .fill(point + ": reach", "20 cm")
                    .press(SAVE);
            assertThat(words(walk))
                    .contains(
                            point + " (tree): a sling laid round, both bights clipped, 0.30 m across, its end 0.20 m");
            walk.type("o").confirmStart().press(SAVE).type("a");
            assertThat(kept(walk)).contains("\"is\": \"tree\"", "\"tie\": \"basket\"", "\"reach_m\": 0.2");
        }
    }

    @Test
    void aRedirectIsAPlaceOverWhichTheRopeRuns() {
        try (Walk walk = opened(60, 120)) {
            assertThat(walk.screen()).contains("Redirect at").doesNotContain("Redirect holds");

            walk.fill("Redirect at", "0.5 m, -2 m");
            assertThat(walk.screen()).contains("Redirect holds");
            walk.fill("Redirect holds", "12 kN").press(SAVE);
            assertThat(words(walk)).contains("The rope runs over redirect:", "redirect is stated to hold 12.0 kN");
            walk.type("o").fill("Redirect at", "0 m").press(SAVE);
            assertThat(walk.screen()).contains("is no place; write how far to the right and up");
            walk.fill("Redirect at", "").press(SAVE);
            assertThat(words(walk)).doesNotContain("The rope runs over");
        }
    }
}
