package thalweg.tui.runtime;

import java.util.List;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Destination;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/**
 * A screen to try terminals with: it says what it was told.
 *
 * @param told by the last message
 */
public record DemoScreen(String told) implements Screen {

    /** Where it is. */
    public record Start() implements Destination {}

    /** Work that takes so long. */
    public record Rest(long milliseconds) implements Effect {}

    /** Work that changes nothing. */
    public record Reading() implements Effect.AfterPicture {}

    /** Work that fails by a mistake. */
    public record Fall() implements Effect {}

    /** Work was done. */
    public record Rested() implements Message {}

    @Override
    public String title(Surroundings around) {
        return "Demo " + around.columns() + "x" + around.rows();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        return List.of(
                Binding.of(Key.of('r'), "rest", () -> new DemoScreen("resting").doing(new Rest(50))),
                Binding.of(Key.of('R'), "rest long", () -> new DemoScreen("resting").doing(new Rest(1000))),
                Binding.of(Key.of('l'), "look up", () -> new DemoScreen("looking up").doing(new Reading())),
                Binding.of(Key.of('f'), "fall", () -> new DemoScreen("falling").doing(new Fall())),
                Binding.of(Key.of('y'), "copy", () -> new DemoScreen("copied").doing(new Effect.Copy("sling"))),
                Binding.of(Key.of('Y'), "copy much", () -> new DemoScreen("copied").doing(copyOf(100_000))),
                Binding.of(Key.of('e'), "break", () -> {
                    throw new IllegalStateException("broken on purpose");
                }),
                Binding.of(Key.of('d'), "break later", () -> Step.stay(new DemoScreen("break while drawing"))));
    }

    private static Effect copyOf(int characters) {
        return new Effect.Copy("x".repeat(characters));
    }

    private Step doing(Effect effect) {
        return Step.stay(this).doing(effect);
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.KeyPressed pressed) {
            return Step.stay(new DemoScreen("key " + pressed.key().print()));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(new DemoScreen(failed.sentence()));
        }
        if (told.endsWith("always")) {
            return Step.stay(this);
        }
        return Step.stay(new DemoScreen(message.toString().replace('\n', '|')));
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (told.startsWith("break while drawing")) {
            throw new IllegalStateException("drawing broke on purpose");
        }
        canvas.put(1, 2, told, Style.STRONG);
        canvas.cursor(1, 0);
        int row = 3;
        for (Style style : Style.values()) {
            canvas.put(row, 2, style.name(), style);
            canvas.put(row++, 20, "│", Style.NORMAL);
        }
        canvas.put(3, 22, "wide 峡谷 after|", Style.NORMAL);
        canvas.put(4, 22, "marks e\u0301a\u030A\u0323 after|", Style.NORMAL);
        canvas.put(5, 22, "emoji \uD83E\uDDD7 after|", Style.NORMAL);
        canvas.put(6, 22, "thai \u0E19\u0E49\u0E33 after|", Style.NORMAL);
        canvas.put(7, 22, "dots ⣿⡇ boxes ┌─┐ blocks ▀█ after|", Style.NORMAL);
        canvas.put(8, 22, "rare → … ≥ ✓ after|", Style.NORMAL);
    }
}
