package thalweg.tui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thalweg.testing.Around;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;
import thalweg.tui.core.Style;

/** Forms as they are drawn. */
class FormViewTest {

    private static final Form FORM = Form.of(List.of(
            Field.line("name", "Name", "As it is called.", "Río", 20, FormViewTest::missing),
            Field.choice("side", "Side", "", List.of("l", "r"), List.of("left", "right"), "r"),
            Field.lines("notes", "Notes", "", "a\nb\nc\nd\ne", 50),
            Field.line("by", "By", "", "", 20, FormViewTest::missing)));

    private static Optional<String> missing(String text) {
        return text.isBlank() ? Optional.of("It is needed.") : Optional.empty();
    }

    private static Canvas drawn(Form form, int rows, int columns) {
        Canvas canvas = Canvas.of(rows, columns);
        FormView.draw(canvas, form, Around.with(Glyphs.ASCII));
        return canvas;
    }

    @Test
    void labelsFieldsAndTheHelpOfTheFocusedOneAreShown() {
        assertThat(drawn(FORM, 10, 30).text()).isEqualTo("""
                > Name   Río
                  Side   right
                  Notes  a
                         b
                         c
                         d…
                  By

                As it is called.

                """);
    }

    @Test
    void theCursorStandsWhereTheNextLetterGoes() {
        assertThat(drawn(FORM, 10, 30).cursor()).contains(new Canvas.Spot(0, 12));
        assertThat(drawn(FORM.moved(1), 10, 30).cursor()).contains(new Canvas.Spot(1, 9));
        assertThat(drawn(FORM.moved(2), 10, 30).cursor()).contains(new Canvas.Spot(5, 10));
    }

    @Test
    void aLongTextIsShownAroundTheCursor() {
        Form longer = FORM.with("name", new Field.Input.Typed(TextField.of("0123456789", 20)));

        assertThat(drawn(longer, 10, 17).row(0)).isEqualTo("> Name   3456789");
        assertThat(drawn(longer, 10, 17).cursor()).contains(new Canvas.Spot(0, 16));
        assertThat(drawn(longer.moved(1), 10, 17).row(0)).isEqualTo("  Name   0123456…");
    }

    @Test
    void theFaultOfTheFocusedFieldTakesThePlaceOfItsHelp() {
        assertThat(drawn(FORM.moved(3), 10, 30).text()).doesNotContain("! It is needed.");

        Canvas canvas = drawn(FORM.moved(3).atFault(), 10, 30);

        assertThat(canvas.row(8)).contains("! ", "It is needed.");
        assertThat(canvas.cell(8, 0).style()).isEqualTo(Style.ERROR);
    }

    @Test
    void afterSavingInVainEveryFaultIsMarkedByASign() {
        Form cleared = FORM.with("name", new Field.Input.Typed(TextField.of("", 20)));
        Canvas canvas = drawn(cleared.moved(1).atFault().moved(1), 10, 30);

        assertThat(canvas.row(0)).startsWith("! Name");
        assertThat(canvas.row(6)).startsWith("! By");
    }

    @Test
    void aFormThatIsHigherThanTheScreenFollowsTheFocusBesideAScrollBar() {
        Canvas top = drawn(FORM, 6, 30);
        Canvas bottom = drawn(FORM.moved(3), 6, 30);

        assertThat(top.row(0)).startsWith("> Name").endsWith("#");
        assertThat(top.row(3)).endsWith("|");
        assertThat(bottom.text()).contains("> By").doesNotContain("Name");
    }

    @Test
    void aFieldIsFoundAtTheRowOnWhichItStands() {
        assertThat(FormView.fieldAt(FORM, 0, 10)).contains(0);
        assertThat(FormView.fieldAt(FORM, 4, 10)).contains(2);
        assertThat(FormView.fieldAt(FORM, 6, 10)).contains(3);
        assertThat(FormView.fieldAt(FORM, 7, 10)).isEmpty();
        assertThat(FormView.fieldAt(FORM, 9, 10)).isEmpty();
        assertThat(FormView.fieldAt(FORM, -1, 10)).isEmpty();
    }

    @Test
    void theFocusedFieldIsInViewAtEverySize() {
        List<Field> fields = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            fields.add(
                    i % 3 == 2
                            ? Field.lines("f" + i, "F" + i, "Help.", "漢字\nb", 50)
                            : Field.line("f" + i, "F" + i, "Help.", "漢字漢字漢字", 50, Field.any()));
        }
        for (int rows = 1; rows < 20; rows++) {
            for (int columns = 1; columns < 30; columns++) {
                for (int focus = 0; focus < fields.size(); focus++) {
                    Canvas canvas = drawn(new Form(fields, focus, false, false, "", Set.of()), rows, columns);
                    assertThat(rows < 3 || columns < 3 || canvas.text().contains(">"))
                            .as("%dx%d, field %d", columns, rows, focus)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void pressingAKeyMovesTheCursorOnTheScreen() {
        Form left = FORM.after(Key.of(Key.Named.LEFT));

        assertThat(drawn(left, 10, 30).cursor()).contains(new Canvas.Spot(0, 11));
    }
}
