package thalweg.tui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/** The list of everything the keys do: search it, do it. */
class KeyListTest {

    private final Driven driven = new Driven().type("?");

    @Test
    void everyKeyOfTheScreenAndOfTheProgramIsListed() {
        assertThat(driven.screen())
                .contains("count", "open", "replace", "Ctrl-S  ", "back", "F9 u")
                .contains("withdraw  (There is nothing to withdraw.)");
    }

    @Test
    void wordsFindCommandsWhateverTheirAccentsAndCase() {
        driven.type("RÉPL");

        assertThat(driven.rowsWith("replace")).hasSize(1);
        assertThat(driven.rowsWith("count")).isEmpty();
    }

    @Test
    void pastedWordsSearchToo() {
        driven.tell(new Message.Pasted("repl"));

        assertThat(driven.rowsWith("count")).isEmpty();
    }

    @Test
    void theChosenCommandIsDone() {
        driven.type("open").press(Key.Named.ENTER);

        assertThat(driven.title()).startsWith("Page ao ");
    }

    @Test
    void aCommandOfTheWholeProgramIsDoneToo() {
        driven.type("imperial").press(Key.Named.ENTER);

        assertThat(driven.title()).endsWith("imperial");
    }

    @Test
    void aCommandThatCannotBeDoneSaysWhy() {
        driven.type("withdraw").press(Key.Named.ENTER);

        assertThat(driven.foot()).contains("! There is nothing to withdraw.");
    }

    @Test
    void theCommandIsDoneOnTheScreenAsItIsNow() {
        driven.tell(new Result(1, new Message.Pasted("loaded meanwhile")));

        driven.type("count").press(Key.Named.ENTER);

        assertThat(driven.top().count()).isEqualTo(1);
        assertThat(driven.top().told()).contains(new Message.Pasted("loaded meanwhile"));
    }

    @Test
    void arrowsAndTheWheelChoose() {
        driven.press(Key.Named.DOWN);
        assertThat(driven.rowsWith(">").findFirst().orElseThrow()).contains("open");

        driven.tell(new Message.Wheel(1));
        assertThat(driven.rowsWith(">").findFirst().orElseThrow()).contains("write");

        driven.press(Key.Named.END);
        assertThat(driven.rowsWith(">").findFirst().orElseThrow()).contains("quit");
    }

    @Test
    void escapeClosesTheListAndNothingElse() {
        driven.press(Key.Named.ESCAPE);

        assertThat(driven.title()).startsWith("Page a ");
        assertThat(driven.foot()).startsWith("? help");
    }

    @Test
    void nothingFoundIsSaid() {
        driven.type("zzz");

        assertThat(driven.screen()).contains("Nothing here has these words.");
        assertThat(driven.press(Key.Named.ENTER).title()).startsWith("Page a ");
    }
}
