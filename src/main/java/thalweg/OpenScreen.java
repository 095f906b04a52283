package thalweg;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Function;
import thalweg.fault.AppException;
import thalweg.service.DemoDatabase;
import thalweg.service.DraftFolder;
import thalweg.service.Folders;
import thalweg.service.LoadPhrases;
import thalweg.service.ReadSettings;
import thalweg.service.Session;
import thalweg.settings.Settings;
import thalweg.text.Language;
import thalweg.text.Phrases;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Surroundings;
import thalweg.tui.lanterna.LanternaTerminal;
import thalweg.tui.lanterna.Rehearsal;
import thalweg.tui.lanterna.TerminalOptions;
import thalweg.tui.runtime.Log;
import thalweg.tui.runtime.Loop;
import thalweg.tui.runtime.RunAsk;
import thalweg.tui.runtime.RunKeep;
import thalweg.tui.runtime.TerminalPort;
import thalweg.tui.screen.Go;
import thalweg.tui.screen.Screens;
import thalweg.tui.shell.Shell;

/** Opens the database and the screen on it. */
final class OpenScreen {

    /** Until the terminal has said how large it is. */
    private static final int ROWS = 24;

    private static final int COLUMNS = 80;

    /** Down the list, into a canyon and a station, its rig, back, a search, the end. */
    private static final List<String> WALK = List.of(
            "\033[B", "\r", "\033[B", "\033[B", "\r", "r", "\033[C", "\033", "\033", "\033", "/", "a", "b", "\033",
            "\003");

    private final Map<String, String> environment;
    private final Folders folders;
    private final Clock clock;
    private final Function<TerminalOptions, TerminalPort> terminal;

    OpenScreen(Map<String, String> environment, Clock clock) {
        this(environment, Folders.of(environment), clock, LanternaTerminal::open);
    }

    private OpenScreen(
            Map<String, String> environment,
            Folders folders,
            Clock clock,
            Function<TerminalOptions, TerminalPort> terminal) {
        this.environment = environment;
        this.folders = folders;
        this.clock = clock;
        this.terminal = terminal;
    }

    /**
     * Runs the screen until the person leaves it.
     *
     * @return exit code of the program
     * @throws AppException when the database or the terminal cannot be used
     */
    int run(ScreenArguments arguments) {
        Left left = until(arguments);
        return left.to().isPresent() ? until(arguments.toDemo()).code() : left.code();
    }

    /**
     * How a screen was left.
     *
     * @param code exit code of the program
     * @param to what begins in its place, if something does
     */
    private record Left(int code, Optional<String> to) {}

    private Left until(ScreenArguments arguments) {
        // First of all, so that it goes on beside everything else.
        CompletableFuture<Session> opening = CompletableFuture.supplyAsync(() -> open(arguments));
        try {
            return on(opening, arguments);
        } catch (RuntimeException | Error e) {
            // Whatever came in between, a database that is being opened is not to be cut off in the middle.
            closeOnceOpened(opening);
            throw e;
        }
    }

    private static void closeOnceOpened(CompletableFuture<Session> opening) {
        try {
            opening.join().close();
        } catch (CompletionException neverOpened) {
            return;
        }
    }

    private Left on(CompletableFuture<Session> opening, ScreenArguments arguments) {
        Language language =
                ReadSettings.language(arguments.language(), arguments.settings(), folders, Language.asked(environment));
        Phrases phrases = LoadPhrases.of(language);
        Settings settings = ReadSettings.of(arguments.settings(), folders, phrases);
        Folders.make(folders.state());
        Log log = new Log(folders.log(), clock);
        try (Session session = opened(opening).named(settings.keeper())) {
            Shell shell = shell(session, phrases, settings, arguments);
            RunAsk runner = new RunAsk(session, Version.NUMBER);
            TerminalOptions told = TerminalOptions.of(environment);
            TerminalOptions coloured =
                    arguments.theme().or(settings::theme).map(told::themed).orElse(told);
            TerminalOptions options = arguments.mouse() ? coloured : coloured.withoutMouse();
            RunKeep keep = new RunKeep(drafts(session, log));
            Loop loop = new Loop(terminal.apply(options), runner, keep, log, phrases::say);
            int code = loop.run(shell);
            return new Left(code, loop.leaving());
        }
    }

    /** Where what is typed is kept; nowhere where nothing can be changed. */
    private Optional<DraftFolder> drafts(Session session, Log log) {
        return session.isReadOnly()
                ? Optional.empty()
                : Optional.of(DraftFolder.of(folders.drafts(), session.file(), clock, log::note));
    }

    private Session open(ScreenArguments arguments) {
        Session.prepare(folders.cache());
        String user = environment.getOrDefault("USER", System.getProperty("user.name", ""));
        Path file = arguments.db().orElse(arguments.demo() ? folders.demo() : folders.database());
        if (arguments.demo()) {
            DemoDatabase.prepare(folders, clock, user, arguments.anew());
        } else if (arguments.db().isEmpty()) {
            Folders.make(folders.data());
        }
        return arguments.readOnly() ? Session.reading(file, clock, user) : Session.creating(file, clock, user);
    }

    private static Session opened(CompletableFuture<Session> opening) {
        try {
            return opening.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof AppException answer) {
                throw answer;
            }
            throw e;
        }
    }

    private Shell shell(Session session, Phrases phrases, Settings settings, ScreenArguments arguments) {
        return Shell.of(
                Screens::of,
                new Go.Canyons(),
                new Surroundings(
                        phrases,
                        arguments.units(),
                        session.today(),
                        glyphs(arguments),
                        session.isReadOnly(),
                        session.keeper(),
                        settings.withKeeper(session.setKeeper()),
                        ROWS,
                        COLUMNS));
    }

    /** The console of a machine without windows has no braille in its font. */
    private Glyphs glyphs(ScreenArguments arguments) {
        if (arguments.ascii()) {
            return Glyphs.ASCII;
        }
        return environment.getOrDefault("TERM", "").equals("linux") ? Glyphs.BLOCKS : Glyphs.BRAILLE;
    }

    /**
     * Walks through the demo without a terminal, in folders of its own, so that the classes on the way can be kept for later
     * starts.
     *
     * @param pause before each key [ms]
     * @return exit code of the program
     */
    static int warmUp(Map<String, String> environment, Clock clock, long pause) {
        Folders real = Folders.of(environment);
        // Later starts take the library from where it is put now.
        Session.prepare(real.cache());
        Folders.make(real.cache());
        Path folder = real.cache().resolve("warm-up-" + ProcessHandle.current().pid());
        Folders own =
                new Folders(folder.resolve("data"), folder.resolve("state"), real.cache(), folder.resolve("config"));
        try {
            return new OpenScreen(environment, own, clock, options -> new Rehearsal(options, WALK, pause))
                    .run(ScreenArguments.of(List.of("--demo")).orElseThrow());
        } finally {
            Folders.delete(folder);
        }
    }
}
