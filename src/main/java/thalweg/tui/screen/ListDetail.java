package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Message;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.ListState;
import thalweg.tui.widget.Lists;
import thalweg.tui.widget.Paragraph;

/** A list with the chosen row in full beside it, or below it where a narrow terminal has room for that. */
final class ListDetail {

    /** Rows of a terminal of which a narrow one gives half to the chosen row. */
    private static final int TALL = 30;

    /** Rows that are worth showing something in full. */
    private static final int LEAST_DETAIL_ROWS = 6;

    private ListDetail() {}

    /** Rows of the list in a body of so many. */
    static int listHeight(Surroundings around, int bodyRows, int size) {
        if (around.wide()) {
            return bodyRows;
        }
        if (around.rows() >= TALL) {
            return bodyRows / 2;
        }
        return bodyRows - size - 1 >= LEAST_DETAIL_ROWS ? size : bodyRows;
    }

    static void draw(
            Canvas canvas,
            ListState list,
            int size,
            List<Paragraph> detail,
            Surroundings around,
            Lists.RowPainter painter) {
        int width = around.wide() ? canvas.columns() / 2 : canvas.columns();
        int height = listHeight(around, canvas.rows(), size);
        Lists.draw(canvas.part(0, 0, height, width), list, size, true, around, painter);
        if (around.wide()) {
            Canvas right = canvas.part(0, width + 1, canvas.rows(), canvas.columns() - width - 2);
            Paragraph.draw(right, detail, 0, around);
        } else if (height < canvas.rows()) {
            Canvas below = canvas.part(height + 1, 1, canvas.rows() - height - 1, canvas.columns() - 2);
            Paragraph.draw(below, detail, 0, around);
        }
    }

    /** The row of the list that was pressed, if one was. */
    static Optional<Integer> pressed(Message.MousePressed mouse, ListState list, int size, Surroundings around) {
        return pressed(mouse, list, size, around.rows() - 2, around);
    }

    /** The same in a body of so many rows. */
    static Optional<Integer> pressed(
            Message.MousePressed mouse, ListState list, int size, int bodyRows, Surroundings around) {
        int height = listHeight(around, bodyRows, size);
        int row = list.shownIn(height, size).top() + mouse.row();
        return mouse.row() >= 0 && mouse.row() < height && row < size ? Optional.of(row) : Optional.empty();
    }
}
