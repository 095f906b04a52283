package thalweg.tui.widget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thalweg.testing.Around;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;
import thalweg.tui.core.Surroundings;

/** Filling in a form. */
class FormTest {

    private static final Surroundings AROUND = Around.with(Glyphs.ASCII);

    private final Form form = Form.of(List.of(
            Field.line("name", "Name", "As it is called.", "", 20, FormTest::missing),
            Field.choice("side", "Side", "", List.of("l", "m", "r"), List.of("left", "middle", "right"), "m"),
            Field.lines("notes", "Notes", "", "one\ntwo", 50),
            Field.line("by", "By", "", "", 20, FormTest::missing)));

    private static Optional<String> missing(String text) {
        return text.isBlank() ? Optional.of("It is needed.") : Optional.empty();
    }

    private static Form pressed(Form form, Key... keys) {
        Form after = form;
        for (Key key : keys) {
            after = after.after(key);
        }
        return after;
    }

    private static Key named(Key.Named named) {
        return Key.of(named);
    }

    @Test
    void lettersGoIntoTheFieldWithTheFocus() {
        Form typed = pressed(form, Key.of('A'), Key.of('x'));

        assertThat(typed.value("name")).isEqualTo("Ax");
        assertThat(typed.value("by")).isEmpty();
        assertThat(typed.touched()).isTrue();
        assertThat(form.touched()).isFalse();
    }

    @Test
    void theFocusGoesRoundByTabEnterAndArrows() {
        assertThat(pressed(form, named(Key.Named.TAB)).focus()).isEqualTo(1);
        assertThat(pressed(form, Key.shift(Key.Named.TAB)).focus()).isEqualTo(3);
        assertThat(pressed(form, named(Key.Named.ENTER), named(Key.Named.DOWN)).focus())
                .isEqualTo(2);
        assertThat(pressed(form, named(Key.Named.DOWN), named(Key.Named.UP)).focus())
                .isZero();
    }

    @Test
    void aHiddenFieldIsPassedOverAndKeepsWhatIsInItUnchecked() {
        Form hidden = form.hiding(Set.of("side", "by"));

        assertThat(pressed(hidden, named(Key.Named.DOWN)).focused().key()).isEqualTo("notes");
        assertThat(hidden.moved(-1).focused().key()).isEqualTo("notes");
        assertThat(hidden.focusedOn("by").focused().key()).isEqualTo("name");
        assertThat(hidden.value("side")).isEqualTo("m");
        assertThat(pressed(hidden, Key.of('A')).fault(AROUND)).isEmpty();
        assertThat(pressed(hidden, Key.of('A')).hiding(Set.of()).fault(AROUND)).isPresent();
    }

    @Test
    void movingAboutEntersNothing() {
        Form moved = pressed(
                form,
                named(Key.Named.TAB),
                named(Key.Named.TAB),
                named(Key.Named.LEFT),
                named(Key.Named.HOME),
                named(Key.Named.TAB));

        assertThat(moved.touched()).isFalse();
    }

    @Test
    void inALongTextTheArrowsLeaveOnlyAtItsEnds() {
        Form notes = form.moved(2);

        assertThat(pressed(notes, named(Key.Named.DOWN)).focus()).isEqualTo(3);
        Form up = pressed(notes, named(Key.Named.UP));
        assertThat(up.focus()).isEqualTo(2);
        assertThat(pressed(up, named(Key.Named.HOME), named(Key.Named.UP)).focus())
                .isEqualTo(1);
        assertThat(pressed(notes, named(Key.Named.ENTER), Key.of('x')).value("notes"))
                .isEqualTo("one\ntwo\nx");
    }

    @Test
    void aChoiceTurnsRoundBySpaceAndArrowsAndGoesToALetter() {
        Form side = form.moved(1);

        assertThat(pressed(side, Key.of(' ')).value("side")).isEqualTo("r");
        assertThat(pressed(side, Key.of(' '), Key.of(' ')).value("side")).isEqualTo("l");
        assertThat(pressed(side, named(Key.Named.LEFT), named(Key.Named.LEFT)).value("side"))
                .isEqualTo("r");
        assertThat(pressed(side, Key.of('R')).value("side")).isEqualTo("r");
        assertThat(pressed(side, Key.of('x')).value("side")).isEqualTo("m");
    }

    private static Form kinds(String shown) {
        List<String> kinds = List.of("drop", "downclimb", "swim", "slide", "dryfall");
        return Form.of(List.of(Field.choice("kind", "Kind", "", kinds, kinds, shown)));
    }

    @Test
    void theFirstPressOfALetterKeepsWhatIsShownWhereItBeginsWithIt() {
        Form once = pressed(kinds("drop"), Key.of('d'));

        assertThat(once.value("kind")).isEqualTo("drop");
        assertThat(once.touched()).isFalse();
    }

    @Test
    void theSameLetterAgainGoesOnAndComesRound() {
        Form kinds = kinds("drop");

        assertThat(pressed(kinds, Key.of('d'), Key.of('D')).value("kind")).isEqualTo("downclimb");
        assertThat(pressed(kinds, Key.of('d'), Key.of('d'), Key.of('d')).value("kind"))
                .isEqualTo("dryfall");
        assertThat(pressed(kinds, Key.of('d'), Key.of('d'), Key.of('d'), Key.of('d'))
                        .value("kind"))
                .isEqualTo("drop");
        assertThat(pressed(kinds, Key.of('s'), Key.of('s')).value("kind")).isEqualTo("slide");
    }

    @Test
    void aLetterAfterAnotherKeyIsAFirstPressAgain() {
        Form moved = pressed(kinds("drop"), Key.of('d'), named(Key.Named.RIGHT), Key.of('d'));
        Form left = pressed(kinds("drop"), Key.of('d'), named(Key.Named.TAB), Key.of('d'));

        assertThat(moved.value("kind")).isEqualTo("downclimb");
        assertThat(left.value("kind")).isEqualTo("drop");
    }

    @Test
    void aLetterThatKeepsWhatIsShownMovesOnWhereLettersDo() {
        Form side = Form.of(List.of(
                Field.choice("side", "Side", "", List.of("l", "r"), List.of("left", "right"), "l")
                        .movingOn(),
                form.fields().get(3)));

        assertThat(pressed(side, Key.of('l')).focus()).isEqualTo(1);
        assertThat(pressed(side, Key.of('l')).value("side")).isEqualTo("l");
    }

    @Test
    void aLetterThatChangesNoChoiceEntersNothing() {
        assertThat(pressed(form.moved(1), Key.of('x')).touched()).isFalse();
    }

    @Test
    void aLetterThatChoosesCanMoveOnToTheNextField() {
        Form side =
                Form.of(List.of(form.fields().get(1).movingOn(), form.fields().get(3)));

        assertThat(pressed(side, Key.of('l')).value("side")).isEqualTo("l");
        assertThat(pressed(side, Key.of('l')).focus()).isEqualTo(1);
        assertThat(pressed(side, Key.of(' ')).focus()).isZero();
        assertThat(pressed(side, Key.of('x')).focus()).isZero();
    }

    @Test
    void theFocusCanBePutOnAFieldByItsKey() {
        assertThat(form.focusedOn("notes").focus()).isEqualTo(2);
        assertThat(form.focusedOn("nobody").focus()).isZero();
    }

    @Test
    void pastedTextGoesIntoTypedFieldsOnly() {
        assertThat(form.pasted("Rio\nVero").value("name")).isEqualTo("Rio Vero");
        assertThat(form.moved(1).pasted("right")).isEqualTo(form.moved(1));
    }

    @Test
    void theFirstFaultIsNamedWithItsField() {
        assertThat(form.fault(AROUND)).contains("Name: It is needed.");
        assertThat(pressed(form, Key.of('A')).fault(AROUND)).contains("By: It is needed.");
        assertThat(pressed(form, Key.of('A')).atFault().focus()).isEqualTo(3);
        assertThat(form.with("name", typed("A")).with("by", typed("B")).fault(AROUND))
                .isEmpty();
    }

    private static Field.Input typed(String text) {
        return new Field.Input.Typed(TextField.of(text, 20));
    }

    @Test
    void aFieldThatIsNotThereIsABug() {
        assertThatIllegalArgumentException().isThrownBy(() -> form.value("nmae"));
        assertThatIllegalArgumentException().isThrownBy(() -> Form.of(List.of()));
    }

    @Test
    void anAccentIsNotNeededToChoose() {
        Form kinds =
                Form.of(List.of(Field.choice("kind", "Kind", "", List.of("o", "e"), List.of("otro", "Épinglé"), "o")));

        assertThat(pressed(kinds, Key.of('e')).value("kind")).isEqualTo("e");
        assertThat(pressed(kinds, Key.of('É')).value("kind")).isEqualTo("e");
    }
}
