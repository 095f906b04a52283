package thalweg.tui.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.draft.Draft;
import thalweg.draft.DraftEntry;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.testing.Around;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Destination;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.screen.Keep;

/** What becomes of the others when one screen meets a mistake of the program. */
final class ShellFailureTest {

    private record To(String name) implements Destination {}

    /** A screen whose keys say in which method it fails from then on. */
    private record Fragile(String name, String fails, int returned) implements Screen {

        static Screen of(Destination destination) {
            return new Fragile(((To) destination).name(), "", 0);
        }

        private void failing(String method) {
            if (fails.equals(method)) {
                throw new IllegalStateException(method + " broke on purpose");
            }
        }

        @Override
        public String title(Surroundings around) {
            failing("title");
            return name + " returned " + returned;
        }

        @Override
        public List<Binding> bindings(Surroundings around) {
            failing("bindings");
            return List.of(
                    Binding.of(Key.of('o'), "open", () -> Step.open(this, new To(name + "o"))),
                    Binding.of(Key.of('a'), "act", () -> {
                        throw new StackOverflowError("acting broke on purpose");
                    }),
                    Binding.of(Key.of('t'), "title", () -> Step.stay(new Fragile(name, "title", returned))),
                    Binding.of(Key.of('b'), "bindings", () -> Step.stay(new Fragile(name, "bindings", returned))),
                    Binding.of(Key.of('d'), "draw", () -> Step.stay(new Fragile(name, "draw", returned))),
                    Binding.of(Key.of('u'), "update", () -> Step.stay(new Fragile(name, "update", returned))));
        }

        @Override
        public Step update(Message message, Surroundings around) {
            failing("update");
            int times = message instanceof Message.Returned ? returned + 1 : returned;
            return Step.stay(new Fragile(name, fails, times));
        }

        @Override
        public Optional<Draft> draft(Surroundings around) {
            Map<String, DraftEntry> fields = new LinkedHashMap<>();
            fields.put("name", new DraftEntry("Name", "", name, name));
            return Optional.of(new Draft(
                    new DraftKey(DraftKind.CANYON, true, Optional.empty()),
                    name,
                    "",
                    around.units(),
                    "name",
                    fields,
                    Optional.empty()));
        }

        @Override
        public void draw(Canvas canvas, Surroundings around) {
            failing("draw");
            canvas.put(0, 0, name, Style.NORMAL);
        }
    }

    private static Shell after(String keys) {
        Shell shell = Shell.of(Fragile::of, new To("a"), Around.classic());
        for (int key : keys.codePoints().toArray()) {
            shell = shell.update(new Message.KeyPressed(Key.of(key))).shell();
        }
        return shell;
    }

    private static ScreenFailure failure(Shell shell) {
        return catchThrowableOfType(ScreenFailure.class, () -> {
            shell.update(new Message.KeyPressed(Key.of('x')));
            shell.draw();
        });
    }

    @Test
    void whereverAScreenFailsTheOneBelowGoesOnAndWhatWasEnteredIsKept() {
        for (String way : List.of("t", "b", "d", "u")) {
            Shell broken = after("oo" + way);
            ScreenFailure failure = failure(broken);

            Reaction reaction = broken.without(failure.frame(), "the log says more.");

            assertThat(reaction.shell().draw().text())
                    .as(way)
                    .contains("ao returned 1", "This screen was closed", "the log says more.");
            if (!way.equals("t")) {
                assertThat(reaction.work()).extracting(Work::effect).anyMatch(Keep.Hold.class::isInstance);
            }
        }
    }

    @Test
    void aKeyThatRecursesWithoutEndIsCaughtToo() {
        Shell shell = after("o");
        ScreenFailure failure =
                catchThrowableOfType(ScreenFailure.class, () -> shell.update(new Message.KeyPressed(Key.of('a'))));

        assertThat(failure).hasCauseInstanceOf(StackOverflowError.class);
        assertThat(shell.without(failure.frame(), "x").shell().draw().text()).contains("a returned 1");
    }

    @Test
    void aScreenBelowThatFailsLeavesTheOneOnTopAlone() {
        Shell shell = after("ou");
        Shell top = shell.update(new Message.KeyPressed(Key.of('o'))).shell();
        ScreenFailure failure = catchThrowableOfType(
                ScreenFailure.class, () -> top.update(new Result(2, new Message.Progressed(new Keep.ListAll(), 1, 2))));

        assertThat(failure.frame()).isEqualTo(2);
        assertThat(top.without(failure.frame(), "x").shell().draw().text()).contains("aoo returned 0");
    }

    @Test
    void theFirstScreenBeginsAnew() {
        Shell broken = after("d");

        Shell anew = broken.without(failure(broken).frame(), "x").shell();

        assertThat(anew.draw().text()).contains("a returned 0", "This screen was closed");
    }
}
