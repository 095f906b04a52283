package thalweg.tui.runtime;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import thalweg.service.LoadPhrases;
import thalweg.settings.Settings;
import thalweg.text.Phrases;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Surroundings;
import thalweg.tui.shell.Shell;
import thalweg.units.UnitSystem;

/** A loop with a demo screen and a terminal in memory, and what it printed. */
final class DemoRun implements AutoCloseable {

    private static final Phrases PHRASES = LoadPhrases.english();

    final FakeTerminal terminal = new FakeTerminal();
    private final ByteArrayOutputStream printed = new ByteArrayOutputStream();
    private final PrintStream err = System.err;
    private final CompletableFuture<Integer> code;

    /** Starts it; what the interface prints itself is caught until it is closed. */
    DemoRun(Path log, EffectRunner runner, Key... typedAhead) {
        this(log, runner, () -> new DemoScreen("ready"), typedAhead);
    }

    /** The same with another screen. */
    DemoRun(Path log, EffectRunner runner, Supplier<Screen> screen, Key... typedAhead) {
        System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
        Clock clock = Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC);
        Loop loop = new Loop(terminal, runner, new Log(log, clock));
        if (typedAhead.length > 0) {
            terminal.press(typedAhead);
        }
        code = CompletableFuture.supplyAsync(() -> loop.run(shell(screen)), task -> new Thread(task).start());
    }

    static Shell shell(Supplier<Screen> screen) {
        Surroundings around = new Surroundings(
                PHRASES,
                UnitSystem.METRIC,
                LocalDate.of(2026, 6, 1),
                Glyphs.BRAILLE,
                false,
                "demo",
                Settings.standard(PHRASES),
                1,
                1);
        return Shell.of(destination -> screen.get(), new DemoScreen.Start(), around);
    }

    /** Its exit code, which must come soon. */
    int code() throws Exception {
        return code.get(20, TimeUnit.SECONDS);
    }

    /** Ends it as a person does. */
    int quit() throws Exception {
        terminal.press(Key.ctrl('c'));
        return code();
    }

    /** What was printed on standard error. */
    String printed() {
        return printed.toString(StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        System.setErr(err);
    }
}
