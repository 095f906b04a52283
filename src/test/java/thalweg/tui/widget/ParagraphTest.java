package thalweg.tui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thalweg.testing.Around;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Style;

/** Text that scrolls. */
class ParagraphTest {

    private static final List<Paragraph> TEXT = List.of(
            Paragraph.of("Ropes", Style.TITLE),
            new Paragraph(2, "two of twenty metres", Style.NORMAL),
            Paragraph.gap(),
            Paragraph.of("end"));

    private static String drawn(int rows, int columns, int top) {
        Canvas canvas = Canvas.of(rows, columns);
        Paragraph.draw(canvas, TEXT, top, Around.with(Glyphs.ASCII));
        return canvas.text();
    }

    @Test
    void textIsWrappedBehindItsMargin() {
        assertThat(drawn(6, 14, 0)).isEqualTo("Ropes\n  two of\n  twenty\n  metres\n\nend\n");
        assertThat(Paragraph.height(TEXT, 14)).isEqualTo(6);
    }

    @Test
    void aTextThatFitsHasNoScrollBarAndCannotBeScrolled() {
        assertThat(drawn(4, 22, 3)).isEqualTo("Ropes\n  two of twenty metres\n\nend\n");
        assertThat(Paragraph.scrolled(TEXT, 0, 1, 4, 22)).isZero();
    }

    @Test
    void aLongTextIsWrappedBesideItsScrollBar() {
        assertThat(drawn(3, 16, 0)).isEqualTo("Ropes          #\n  two of       |\n  twenty       |\n");
    }

    @Test
    void scrollingEndsWhereTheLastLineIsInView() {
        int end = Paragraph.scrolled(TEXT, 0, 1_000, 3, 16);

        assertThat(drawn(3, 16, end)).isEqualTo("  metres       |\n               |\nend            #\n");
        assertThat(Paragraph.scrolled(TEXT, end, -1, 3, 16)).isEqualTo(end - 1);
        assertThat(Paragraph.scrolled(TEXT, 0, -1, 3, 16)).isZero();
    }

    @Test
    void oneStepBackFromAStateThatNoLongerFitsIsSeen() {
        int end = Paragraph.scrolled(TEXT, 0, 1_000, 3, 16);

        assertThat(Paragraph.scrolled(TEXT, end + 50, -1, 3, 16)).isEqualTo(end - 1);
    }

    @Test
    void everySizeIsDrawn() {
        for (int rows = 0; rows < 8; rows++) {
            for (int columns = 0; columns < 30; columns++) {
                for (int top = 0; top < 9; top++) {
                    String text = drawn(rows, columns, top);

                    assertThat(text.lines().count()).isEqualTo(rows);
                }
            }
        }
        assertThat(IntStream.range(1, 30).map(width -> Paragraph.height(TEXT, width)))
                .isSortedAccordingTo((one, other) -> other - one);
    }
}
