package thalweg.tui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thalweg.testing.Around;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;

/** The line in which words to find are typed. */
class SearchingTest {

    private static Canvas drawn(Searching search, int columns) {
        Canvas canvas = Canvas.of(1, columns);
        search.draw(canvas, 0, Around.classic());
        return canvas;
    }

    @Test
    void wordsAreTypedAndPasted() {
        Searching search = Searching.NONE.opened().after(Key.of('r')).pasted("\u00EDo");

        assertThat(search.words()).isEqualTo("r\u00EDo");
        assertThat(search.closed().words()).isEqualTo("r\u00EDo");
    }

    @Test
    void theCursorIsInTheWordsWhileTheyAreTyped() {
        Searching search = Searching.NONE.opened().pasted("vero");

        assertThat(drawn(search, 40).row(0)).isEqualTo("Search: vero");
        assertThat(drawn(search, 40).cursor()).contains(new Canvas.Spot(0, 12));
        assertThat(drawn(search.closed(), 40).cursor()).isEmpty();
    }

    @Test
    void manyWordsAreShownAroundTheCursor() {
        Searching search = Searching.NONE.opened().pasted("a very long name of a canyon");

        assertThat(drawn(search, 20).row(0)).isEqualTo("Search: of a canyon");
        assertThat(drawn(search, 20).cursor()).contains(new Canvas.Spot(0, 19));
    }
}
