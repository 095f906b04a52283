package thalweg;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.cli.Cli;
import thalweg.cli.ExitCodes;
import thalweg.cli.Surrounds;
import thalweg.fault.AppException;
import thalweg.service.Folders;
import thalweg.service.LoadPhrases;
import thalweg.service.ReadSettings;
import thalweg.service.Session;
import thalweg.text.Language;
import thalweg.text.Phrases;
import thalweg.tui.runtime.Log;

/** Starts the program: the screen, or a command. */
public final class Main {

    private static final String WARM_UP = "--warm-up";

    /** Long enough for a screen to be there before the next key, on a machine that is starting something else as well [ms]. */
    private static final long WARM_UP_PAUSE = 400;

    /** What the start script says where it has looked itself whether both standard streams are a terminal. */
    private static final String TERMINAL = "thalweg.terminal";

    /** A mistake in the program ended it. Source: EX_SOFTWARE of BSD's sysexits.h. */
    private static final int MISTAKE = 70;

    private static final int OUTPUT = 1;
    private static final int INPUT = 0;

    private Main() {}

    /**
     * Runs what the arguments ask for and ends with its exit code.
     *
     * @param arguments as given on the command line
     */
    public static void main(String[] arguments) {
        Map<String, String> environment = System.getenv();
        WatchedOutput output = new WatchedOutput(new FileOutputStream(FileDescriptor.out));
        PrintStream out = new PrintStream(output, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        Clock clock = Clock.system(ZoneId.systemDefault());
        int code;
        try {
            code = run(List.of(arguments), environment, clock, out, err);
        } catch (AppException e) {
            err.println(phrases(environment).say(e.saying()));
            code = ExitCodes.of(e);
        } catch (RuntimeException | Error e) {
            err.println("Thalweg ended because of a mistake in the program; " + logged(environment, clock, e));
            code = MISTAKE;
        }
        out.flush();
        if (output.lostSomething()) {
            err.println("Standard output could not be written, so the result is not whole; free some space or write to"
                    + " another place.");
            code = ExitCodes.WRONG_INPUT;
        }
        System.exit(code);
    }

    private static int run(
            List<String> arguments, Map<String, String> environment, Clock clock, PrintStream out, PrintStream err) {
        if (arguments.equals(List.of(WARM_UP))) {
            return OpenScreen.warmUp(environment, clock, WARM_UP_PAUSE);
        }
        Optional<ScreenArguments> forScreen = ScreenArguments.of(arguments);
        if (forScreen.isPresent()) {
            if (!Boolean.getBoolean(TERMINAL) && !(isTerminal(INPUT) && isTerminal(OUTPUT))) {
                err.println(
                        "The screen needs a terminal; use a command instead, such as thalweg list, or see thalweg --help.");
                return ExitCodes.WRONG_INPUT;
            }
            return new OpenScreen(environment, clock).run(forScreen.get());
        }
        Folders folders = Folders.of(environment);
        Session.prepare(folders.cache());
        return Cli.run(
                arguments,
                new Surrounds(
                        folders,
                        clock,
                        environment.getOrDefault("USER", System.getProperty("user.name", "")),
                        System.in,
                        out,
                        err,
                        () -> isTerminal(INPUT),
                        Language.asked(environment),
                        Version.NUMBER));
    }

    /** In the language of the person's settings; where they cannot be read, in that of the environment. */
    private static Phrases phrases(Map<String, String> environment) {
        Language asked = Language.asked(environment);
        try {
            return LoadPhrases.of(
                    ReadSettings.language(Optional.empty(), Optional.empty(), Folders.of(environment), asked));
        } catch (AppException unusable) {
            return LoadPhrases.of(asked);
        }
    }

    private static String logged(Map<String, String> environment, Clock clock, Throwable mistake) {
        Folders folders = Folders.of(environment);
        try {
            Folders.make(folders.state());
            return new Log(folders.log(), clock).failure("In a command", mistake);
        } catch (AppException e) {
            return "no log could be written: " + e.sentence();
        }
    }

    /** Java itself cannot say whether a standard stream is a terminal, so the shell is asked. */
    private static boolean isTerminal(int stream) {
        try {
            return new ProcessBuilder("sh", "-c", "test -t " + stream)
                            .inheritIO()
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
