package thalweg.tui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thalweg.testing.Around;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/** Lists: what is drawn, and how the choice moves. */
class ListsTest {

    private static final Surroundings ASCII = Around.with(Glyphs.ASCII);

    private static ListState after(ListState state, Key.Named key, int size, int page) {
        return Lists.moved(state, Key.of(key), size, page).orElseThrow();
    }

    private static String drawn(ListState state, int size, int rows) {
        Canvas canvas = Canvas.of(rows, 8);
        Lists.draw(canvas, state, size, true, ASCII, (line, index, style) -> line.put(0, 0, "row " + index, style));
        return canvas.text();
    }

    @Test
    void theChosenRowIsMarkedByASignAndByStyle() {
        Canvas canvas = Canvas.of(3, 8);
        Lists.draw(canvas, new ListState(1, 0), 2, true, ASCII, (line, row, style) -> line.put(0, 0, "row", style));

        assertThat(canvas.text()).isEqualTo("  row\n> row\n\n");
        assertThat(canvas.cell(1, 7).style()).isEqualTo(Style.SELECTED);
        assertThat(canvas.cell(0, 2).style()).isEqualTo(Style.NORMAL);
        assertThat(canvas.cursor()).contains(new Canvas.Spot(1, 0));
    }

    @Test
    void aListWithoutTheFocusKeepsTheSignOnly() {
        Canvas canvas = Canvas.of(3, 8);
        Lists.draw(canvas, new ListState(1, 0), 2, false, ASCII, (line, row, style) -> line.put(0, 0, "row", style));

        assertThat(canvas.text()).isEqualTo("  row\n> row\n\n");
        assertThat(canvas.cell(1, 3).style()).isEqualTo(Style.NORMAL);
        assertThat(canvas.cursor()).isEmpty();
    }

    @Test
    void aLongListHasAScrollBarBesideIt() {
        assertThat(drawn(ListState.START, 9, 3)).isEqualTo("> row 0#\n  row 1|\n  row 2|\n");
        assertThat(drawn(new ListState(8, 6), 9, 3)).isEqualTo("  row 6|\n  row 7|\n> row 8#\n");
    }

    @Test
    void aListThatBecameShorterStillHasAChosenRow() {
        assertThat(drawn(new ListState(7, 6), 2, 3)).isEqualTo("  row 0\n> row 1\n\n");
        assertThat(drawn(new ListState(7, 6), 0, 3)).isEqualTo("\n\n\n");
    }

    @Test
    void goingBackUpMovesTheChoiceBeforeTheList() {
        ListState end = after(ListState.START, Key.Named.END, 20, 5);
        ListState above = after(end, Key.Named.UP, 20, 5);

        assertThat(end).isEqualTo(new ListState(19, 15));
        assertThat(above).isEqualTo(new ListState(18, 15));
    }

    @Test
    void theChosenRowIsAlwaysInViewAlsoWhereThePageWasGuessedTooSmall() {
        for (int size = 1; size <= 12; size++) {
            for (int rows = 1; rows <= 6; rows++) {
                for (int page = 1; page <= rows; page++) {
                    ListState state = ListState.START;
                    for (Key.Named key : List.of(
                            Key.Named.DOWN,
                            Key.Named.PAGE_DOWN,
                            Key.Named.UP,
                            Key.Named.END,
                            Key.Named.PAGE_UP,
                            Key.Named.DOWN,
                            Key.Named.HOME)) {
                        state = after(state, key, size, page);
                        assertThat(state.chosen()).isBetween(0, size - 1);
                        assertThat(drawn(state, size, rows)).contains("> row");
                    }
                }
            }
        }
    }

    @Test
    void keysThatDoNotMoveAreLeftToOthers() {
        assertThat(Lists.moved(ListState.START, Key.of('j'), 3, 3)).isEmpty();
        assertThat(Lists.moved(ListState.START, Key.of(Key.Named.ENTER), 3, 3)).isEmpty();
    }

    @Test
    void keysOfAnEmptyListSayThatItIsEmpty() {
        List<Binding> bindings = Lists.bindings(ListState.START, 0, 3, Around.classic(), to -> {
            throw new AssertionError("nowhere to go");
        });

        assertThat(bindings).hasSize(6).allMatch(one -> one.refusal().isPresent());
    }

    @Test
    void theScrollBarTouchesAnEndOnlyWhereTheEndIsInView() {
        for (int rows = 3; rows <= 12; rows += 3) {
            for (int size = rows + 1; size < 90; size++) {
                for (int top = 0; top <= size - rows; top++) {
                    String bar = bar(rows, top, size);

                    assertThat(bar.startsWith("#"))
                            .as("%d of %d in %d", top, size, rows)
                            .isEqualTo(top == 0);
                    assertThat(bar.endsWith("#"))
                            .as("%d of %d in %d", top, size, rows)
                            .isEqualTo(top == size - rows);
                }
            }
        }
    }

    private static String bar(int rows, int top, int size) {
        Canvas canvas = Canvas.of(rows, 1);
        Lists.scrollBar(canvas, top, size, Glyphs.ASCII);
        return IntStream.range(0, rows).mapToObj(canvas::row).collect(Collectors.joining());
    }

    @Test
    void aListOfAMillionRowsIsAskedOnlyForThoseInView() {
        List<Integer> asked = new ArrayList<>();
        ListState end = new ListState(999_999, 0);
        Lists.draw(Canvas.of(4, 20), end, 1_000_000, true, ASCII, (line, index, style) -> asked.add(index));

        assertThat(asked).containsExactly(999_996, 999_997, 999_998, 999_999);
    }
}
