package thalweg.tui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.testing.Around;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;

/** The line at the foot. */
class FootTest {

    private static String foot(int columns) {
        Surroundings around = Around.sized(1, columns);
        Canvas canvas = Canvas.of(1, columns);
        Foot.of(Page.of(new Page.Go("a", false)), Optional.empty(), around).draw(canvas);
        return canvas.row(0);
    }

    @Test
    void hintsComeInTheOrderOfTheirImportanceAndWhatHasNoRoomIsLeftOut() {
        assertThat(foot(80)).isEqualTo("? help  + count  o open  w write  r replace  Ctrl-S save  ! break  Esc back");
        assertThat(foot(74)).isEqualTo("? help  + count  o open  w write  r replace  Ctrl-S save  ! break");
        assertThat(foot(23)).isEqualTo("? help  + count  o open");
        assertThat(foot(22)).isEqualTo("? help  + count");
    }

    @Test
    void theWayToTheHelpIsNeverCut() {
        for (int columns = 6; columns < 80; columns++) {
            assertThat(foot(columns)).startsWith("? help");
        }
    }

    @Test
    void noHintIsCutInTheMiddle() {
        for (int columns = 6; columns < 80; columns++) {
            assertThat(foot(columns))
                    .matches("\\? help(  (\\+ count|o open|w write|r replace|Ctrl-S save|! break|Esc back))*");
        }
    }

    @Test
    void aNoticeThatStandsAboveTheLineLeavesTheKeysInIt() {
        Screen page = Page.of(new Page.Go("a", false));
        Foot beside = Foot.of(page, Optional.of(new Step.Notice("Saved.", false)), Around.classic());
        Foot above = Foot.of(page, Optional.of(new Step.Notice("No. ".repeat(30), true)), Around.classic());

        assertThat(beside.at(8)).isEmpty();
        assertThat(above.at(8)).contains(Key.of('+'));
    }

    @Test
    void aColumnIsTheKeyThatIsNamedThere() {
        Foot foot = Foot.of(Page.of(new Page.Go("a", false)), Optional.empty(), Around.classic());

        assertThat(foot.at(0)).contains(Key.of('?'));
        assertThat(foot.at(5)).contains(Key.of('?'));
        assertThat(foot.at(6)).isEmpty();
        assertThat(foot.at(8)).contains(Key.of('+'));
        assertThat(foot.at(79)).isEmpty();
    }
}
