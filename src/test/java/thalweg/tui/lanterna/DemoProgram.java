package thalweg.tui.lanterna;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import thalweg.service.LoadPhrases;
import thalweg.settings.Settings;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Message;
import thalweg.tui.core.Surroundings;
import thalweg.tui.runtime.DemoScreen;
import thalweg.tui.runtime.Log;
import thalweg.tui.runtime.Loop;
import thalweg.tui.runtime.TerminalException;
import thalweg.tui.shell.Shell;
import thalweg.units.UnitSystem;

/** A program around {@link DemoScreen}, to be run in a real terminal. */
public final class DemoProgram {

    private DemoProgram() {}

    /**
     * Runs it.
     *
     * @param arguments the file of the log, and what the screen shows at first where that matters
     */
    public static void main(String[] arguments) {
        Surroundings around = new Surroundings(
                LoadPhrases.english(),
                UnitSystem.METRIC,
                LocalDate.of(2026, 6, 1),
                Glyphs.BRAILLE,
                false,
                "demo",
                Settings.standard(LoadPhrases.english()),
                24,
                80);
        String told = arguments.length > 1 ? arguments[1] : "ready";
        Shell shell = Shell.of(destination -> new DemoScreen(told), new DemoScreen.Start(), around);
        try {
            LanternaTerminal terminal = LanternaTerminal.open(TerminalOptions.of(System.getenv()));
            Log log = new Log(Path.of(arguments[0]), Clock.systemUTC());
            System.exit(new Loop(terminal, DemoProgram::run, log).run(shell));
        } catch (TerminalException e) {
            System.err.println(e.sentence());
            System.exit(2);
        }
    }

    private static Message run(Effect effect) {
        if (effect instanceof DemoScreen.Rest rest) {
            try {
                Thread.sleep(rest.milliseconds());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            System.err.println("rested");
            return new DemoScreen.Rested();
        }
        throw new IllegalStateException("fell on purpose");
    }
}
