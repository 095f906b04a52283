package thalweg.tui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.shell.Reaction.Order;
import thalweg.units.UnitSystem;

/** The stack of screens, the keys that go everywhere, and results that come late. */
class ShellTest {

    private final Driven driven = new Driven();

    @Test
    void theFirstScreenStartsItsWork() {
        assertThat(driven.title()).startsWith("Page a");
        assertThat(driven.work()).containsExactly(new Work(1, new Page.Work("load a")));
    }

    @Test
    void aScreenOpensOnTopAndTheOneBelowIsToldWhenItReturns() {
        driven.type("+o+");
        assertThat(driven.title()).startsWith("Page ao");

        driven.press(Key.Named.ESCAPE);
        assertThat(driven.title()).startsWith("Page a ");
        assertThat(driven.top().count()).isEqualTo(1);
        assertThat(driven.top().told()).endsWith(new Message.Returned());
    }

    @Test
    void aScreenCanTakeAnothersPlace() {
        driven.type("or");
        assertThat(driven.title()).startsWith("Page aor");

        driven.press(Key.Named.ESCAPE);
        assertThat(driven.title()).startsWith("Page a ");
    }

    @Test
    void escapeOnTheLastScreenEndsNothing() {
        driven.press(Key.Named.ESCAPE);

        assertThat(driven.order()).isEqualTo(Order.NONE);
        assertThat(driven.title()).startsWith("Page a ");
    }

    @ParameterizedTest
    @CsvSource({"c, QUIT", "l, REPAINT", "z, SUSPEND"})
    void keysForTheTerminalWorkEverywhere(char letter, Order order) {
        assertThat(driven.press(Key.ctrl(letter)).order()).isEqualTo(order);
        assertThat(driven.type("?").press(Key.ctrl(letter)).order()).isEqualTo(order);
        assertThat(new Driven().type("wabc").press(Key.ctrl(letter)).order()).isEqualTo(order);
        assertThat(new Driven(5, 20).press(Key.ctrl(letter)).order()).isEqualTo(order);
    }

    @Test
    void unitsAreSwitchedOnTheSpot() {
        assertThat(driven.title()).endsWith("metric");

        driven.type("u");

        assertThat(driven.title()).endsWith("imperial");
        assertThat(driven.shell().around().units()).isEqualTo(UnitSystem.IMPERIAL);
    }

    @Test
    void whileAFieldHasTheFocusLettersAreText() {
        driven.type("wqu?+o/x");

        assertThat(driven.top().typed()).isEqualTo("qu?+o/x");
        assertThat(driven.foot()).startsWith("F1 help");
        assertThat(driven.press(Key.Named.F9).shell().around().units()).isEqualTo(UnitSystem.IMPERIAL);
    }

    @Test
    void aKeyThatCannotActSaysWhyUntilTheNextKey() {
        driven.type("x");
        assertThat(driven.foot()).isEqualTo("? help  ! There is nothing to withdraw.");

        driven.type("+");
        assertThat(driven.foot()).startsWith("? help  + count  o open");
    }

    @Test
    void quittingAsksOnlyWhereSomethingWouldBeLost() {
        assertThat(driven.type("q").order()).isEqualTo(Order.QUIT);

        Driven entered = new Driven().type("wabc").press(Key.ctrl('q'));
        assertThat(entered.order()).isEqualTo(Order.NONE);
        assertThat(entered.rowsWith("not saved")).isNotEmpty();
        assertThat(entered.type("q").order()).isEqualTo(Order.NONE);
        assertThat(entered.press(Key.ctrl('q')).type("d").order()).isEqualTo(Order.QUIT);
    }

    @Test
    void leavingAnEntryTakesAnotherKeyThanTheOneThatAsked() {
        driven.type("wabc").press(Key.Named.ESCAPE);
        assertThat(driven.rowsWith("not saved")).isNotEmpty();

        driven.press(Key.Named.ESCAPE);
        assertThat(driven.rowsWith("not saved")).isEmpty();
        assertThat(driven.top().typed()).isEqualTo("abc");

        driven.press(Key.Named.ESCAPE).type("d");
        assertThat(driven.title()).startsWith("Page a ");
    }

    @Test
    void aQuestionGoesAwayOnceTheEntryIsSaved() {
        driven.type("owabc").press(Key.ctrl('s')).press(Key.Named.ESCAPE);
        driven.answer(new Page.Saved());
        assertThat(driven.title()).startsWith("Page ao ");
        assertThat(driven.rowsWith("not saved")).isEmpty();

        driven.type("d");
        assertThat(driven.title()).startsWith("Page ao ");
        assertThat(driven.order()).isEqualTo(Order.NONE);
    }

    @Test
    void aResultGoesToTheScreenThatAskedAlsoBelowOthers() {
        driven.type("o");
        driven.tell(new Result(1, new Message.Pasted("for a")));
        assertThat(driven.top().told()).containsExactly(new Message.Opened());

        driven.press(Key.Named.ESCAPE);
        assertThat(driven.top().told()).contains(new Message.Pasted("for a"));
    }

    @Test
    void aResultForAScreenThatHasGoneChangesNothing() {
        driven.type("o").press(Key.Named.ESCAPE).type("o");
        Shell before = driven.shell();

        driven.tell(new Result(2, new Page.Saved()));

        assertThat(driven.shell()).isEqualTo(before);
    }

    @Test
    void aFailureIsSaidAlsoWhenItsScreenHasGone() {
        driven.type("o").press(Key.Named.ESCAPE);

        driven.tell(new Result(2, new Message.Failed(new Page.Work("save"), "The disk is full.")));

        assertThat(driven.foot()).contains("! The disk is full.");
    }

    @Test
    void aScreenBelowCanNeitherSpeakNorLeave() {
        driven.type("o");

        driven.tell(new Result(1, new Page.Saved()));

        assertThat(driven.title()).startsWith("Page ao ");
        assertThat(driven.foot()).doesNotContain("Saved.");
        driven.press(Key.Named.ESCAPE);
        assertThat(driven.title()).startsWith("Page a ");
    }

    @Test
    void aPressIsCountedFromTheScreensOwnFirstRow() {
        driven.tell(new Message.MousePressed(3, 7));

        assertThat(driven.top().told()).endsWith(new Message.MousePressed(2, 7));
    }

    @Test
    void aPressOnTheFootLineDoesWhatIsNamedThere() {
        int open = driven.foot().indexOf("o open");

        driven.tell(new Message.MousePressed(23, open + 2));
        assertThat(driven.title()).startsWith("Page ao ");

        driven.tell(new Message.MousePressed(23, 3));
        assertThat(driven.foot()).startsWith("Esc close");
    }

    @Test
    void aPressBetweenTheHintsOrOnANoticeDoesNothing() {
        driven.tell(new Message.MousePressed(23, 79));
        assertThat(driven.title()).startsWith("Page a ");

        driven.type("x");
        driven.tell(new Message.MousePressed(23, driven.foot().indexOf("withdraw")));
        assertThat(driven.title()).startsWith("Page a ");
    }

    @Test
    void inATerminalThatIsTooSmallKeysDoNothingUnseen() {
        driven.type("wabc").press(Key.Named.ESCAPE);
        driven.tell(new Resized(11, 80)).type("d");
        assertThat(driven.screen()).contains("needs 40 columns and 12 rows");

        driven.tell(new Resized(12, 40));
        assertThat(driven.top().typed()).isEqualTo("abc");
        assertThat(driven.rowsWith("not saved")).isNotEmpty();
    }

    @Test
    void aNoticeThatIsTooLongForTheFootTakesRowsAboveIt() {
        Driven narrow = new Driven(12, 40);
        String sentence = "The file was not written, because the folder is read-only; choose another folder.";

        narrow.tell(new Result(1, new Message.Failed(new Page.Work("save"), sentence)));

        assertThat(String.join(" ", narrow.screen().lines().map(String::strip).toList()))
                .contains("! " + sentence);
        assertThat(narrow.foot()).startsWith("? help");
    }

    @Test
    void everySizeIsDrawnInEveryState() {
        List<Driven> states = List.of(
                new Driven(),
                new Driven().type("x"),
                new Driven().type("?"),
                new Driven().type("?zzz"),
                new Driven().type("wabc").press(Key.Named.ESCAPE));
        for (int rows = 1; rows <= 60; rows += rows < 15 ? 1 : 9) {
            for (int columns = 1; columns <= 250; columns += columns < 45 ? 1 : 23) {
                for (Driven state : states) {
                    state.tell(new Resized(rows, columns));
                    assertThat(state.screen().lines()).hasSize(rows).allMatch(line -> line.length() <= 250);
                }
            }
        }
    }

    @Test
    void keysPressedBeforeTheContentIsThereAreActedOnOnceItIs() {
        driven.type("s++");
        assertThat(driven.top().count()).isZero();
        assertThat(driven.foot()).contains("Loading...");

        driven.answer(new Page.Loaded());
        assertThat(driven.top().count()).isEqualTo(2);
        assertThat(driven.foot()).doesNotContain("Loading...");
    }

    @Test
    void keysPressedAheadGoOnThroughTheScreenThatTheyOpen() {
        driven.type("ss+");
        driven.answer(new Page.Loaded());
        assertThat(driven.title()).startsWith("Page ass ");
        assertThat(driven.top().count()).isZero();

        driven.answer(new Page.Loaded());
        assertThat(driven.top().count()).isEqualTo(1);
    }

    @Test
    void whatWasPressedAheadIsDroppedWhenItsScreenIsLeftOrCannotBeFilled() {
        driven.type("s+").press(Key.Named.ESCAPE).answer(new Page.Loaded());
        assertThat(driven.title()).startsWith("Page a ");
        assertThat(driven.top().count()).isZero();

        driven.type("s+").answer(new Message.Failed(new Page.Work("load"), "The disk is gone."));
        driven.answer(new Page.Loaded());
        assertThat(driven.top().count()).isZero();
    }

    @Test
    void aKeyThatIsLeantOnIsNotKeptForEver() {
        driven.type("s" + "+".repeat(1_000)).answer(new Page.Loaded());

        assertThat(driven.top().count()).isEqualTo(32);
    }
}
