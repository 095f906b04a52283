package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Lists;
import thalweg.tui.widget.Paragraph;

/**
 * How the list of canyons looks: the filter in words at the top, the rows, the search at the foot, the chosen row beside
 * them where there is room.
 *
 * @param screen what is shown
 * @param around what every screen sees
 */
record CanyonsView(CanyonsScreen screen, Surroundings around) {

    private static final int MOST_FILTER_LINES = 3;

    private boolean searchShown() {
        return screen.search().open() || !screen.search().words().isEmpty();
    }

    /** The filter in words, as many lines as there is room for. */
    private List<String> filterLines() {
        if (screen.filter().isNone()) {
            return List.of();
        }
        String words = around.say("filter.in_force", FilterText.of(screen.filter(), around));
        List<String> lines = Width.wrap(words, Math.max(1, around.columns() - 2));
        if (lines.size() <= MOST_FILTER_LINES) {
            return lines;
        }
        String last = lines.get(MOST_FILTER_LINES - 1) + "…";
        List<String> shown = new ArrayList<>(lines.subList(0, MOST_FILTER_LINES - 1));
        shown.add(last);
        return shown;
    }

    private int filterRows() {
        int lines = filterLines().size();
        return lines > 0 && screen.unknown() > 0 ? lines + 1 : lines;
    }

    private int listHeight(int bodyRows) {
        return bodyRows - 1 - filterRows() - (searchShown() ? 1 : 0);
    }

    /** The index of the list's row at a row of the screen; -1 where there is none, and it may be past the last. */
    int rowAt(int bodyRow) {
        int first = filterRows() + 1;
        int height = listHeight(around.rows() - 2);
        int top = screen.rows().state().shownIn(height, screen.hits().size()).top();
        return bodyRow < first || bodyRow >= first + height ? -1 : top + bodyRow - first;
    }

    void draw(Canvas canvas) {
        int width = around.wide() ? canvas.columns() / 2 : canvas.columns();
        Canvas left = canvas.part(0, 0, canvas.rows(), width);
        if (searchShown()) {
            screen.search().draw(left, left.rows() - 1, around);
        }
        if (!screen.filter().isNone()) {
            filter(canvas);
        }
        int top = filterRows();
        if (screen.found().isEmpty()) {
            left.put(top + 1, 2, around.say("loading"), Style.FAINT);
        } else if (screen.none()) {
            Canvas room = canvas.part(top + 1, 2, listHeight(canvas.rows()), canvas.columns() - 4);
            Paragraph.draw(room, nothing(), 0, around);
        } else {
            list(left.part(top, 0, 1 + listHeight(canvas.rows()), width));
            if (around.wide()) {
                detail(canvas.part(top, width + 1, canvas.rows() - top, canvas.columns() - width - 1));
            }
        }
    }

    private void list(Canvas canvas) {
        CanyonHits hits = screen.hits();
        CanyonColumns columns = CanyonColumns.of(canvas.columns() - 3, around);
        columns.heading(canvas.part(0, 2, 1, canvas.columns() - 3));
        Lists.draw(
                canvas.part(1, 0, canvas.rows() - 1, canvas.columns()),
                screen.rows().state(),
                hits.size(),
                true,
                around,
                (line, index, style) -> hits.paint(line, index, style, columns, around));
    }

    private void filter(Canvas canvas) {
        List<String> lines = filterLines();
        for (int row = 0; row < lines.size(); row++) {
            canvas.fit(row, 1, canvas.columns() - 2, lines.get(row), Style.STRONG);
        }
        if (screen.unknown() > 0) {
            String unknown =
                    FilterText.unknown(screen.unknown(), screen.filter().unknownToo(), around);
            canvas.fit(lines.size(), 1, canvas.columns() - 2, unknown, Style.CAUTION);
        }
    }

    private List<Paragraph> nothing() {
        if (screen.found().orElseThrow().all() == 0) {
            Stream<String> lines = around.readOnly()
                    ? Stream.of("empty.read_only", "empty.demo")
                    : Stream.of("empty.1", "empty.2", "empty.3", "empty.demo");
            return lines.flatMap(key -> Stream.of(Paragraph.of(around.say("canyons." + key)), Paragraph.gap()))
                    .collect(Collectors.toList());
        }
        List<Paragraph> text = new ArrayList<>();
        if (!screen.search().words().isEmpty()) {
            text.add(Paragraph.of(around.say("canyons.none_found")));
        }
        if (!screen.filter().isNone()) {
            text.add(Paragraph.of(around.say("canyons.none_fits")));
        }
        return text;
    }

    private void detail(Canvas canvas) {
        List<Paragraph> text = screen.loadedDetail()
                .map(loaded -> screen.hits().about(screen.chosen(), loaded, around))
                .orElse(List.of());
        Paragraph.draw(canvas, text, 0, around);
    }
}
