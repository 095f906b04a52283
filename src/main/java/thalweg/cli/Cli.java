package thalweg.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import thalweg.fault.AppException;
import thalweg.fault.Sentence;
import thalweg.fault.ThereAlreadyException;
import thalweg.service.LoadPhrases;
import thalweg.text.Phrases;

/** Runs the command that the arguments name. */
public final class Cli {

    /** What the narrowest terminal in use shows without breaking lines of its own [columns]. */
    private static final int HELP_WIDTH = 80;

    private Cli() {}

    @Command(
            name = "thalweg",
            description = {
                "",
                "A logbook of canyons, stations and anchors with a rig calculator and sheets to hand out.",
                "Without a command it opens the screen: thalweg [--db FILE | --demo [--anew]] [--settings FILE] [--read-only]"
                        + " [--ascii] [--no-mouse] [--units metric|imperial] [--theme terminal|contrast|plain]"
                        + " [--language en|es|fr]",
                ""
            },
            footer = {
                "",
                "Every command has --help. Exit codes: 0 done, 1 the answer is no or there are findings,"
                        + " 2 wrong use or input, 3 the database cannot be used.",
                "",
                "An aid for people trained in this. It does not replace training, inspection on the spot,"
                        + " local rules or licensed practice."
            },
            synopsisHeading = "",
            customSynopsis = "thalweg COMMAND [OPTIONS]",
            commandListHeading = "%n")
    private static final class Root {
        // The command-line library reads it.
        @SuppressWarnings("UnusedVariable")
        @Option(names = "--help", usageHelp = true, description = "show this and end")
        private boolean help;

        // The command-line library reads it.
        @SuppressWarnings("UnusedVariable")
        @Option(names = "--version", versionHelp = true, description = "show the version and end")
        private boolean version;
    }

    /**
     * Runs the command and returns its exit code; whatever went wrong has been said in one sentence.
     *
     * @param arguments with the command first
     */
    public static int run(List<String> arguments, Surrounds surrounds) {
        CommandLine line = new CommandLine(CommandSpec.forAnnotatedObject(new Root()));
        line.getCommandSpec().version("thalweg " + surrounds.version());
        List<Action> actions = List.of(
                new ListAction(surrounds),
                new ShowAction(surrounds),
                new StationsAction(surrounds),
                new DueAction(surrounds),
                new PlanAction(surrounds),
                new InspectAction(surrounds),
                new RoundAction(surrounds),
                new CorrectAction(surrounds),
                new WithdrawAction(surrounds),
                new MoveAction(surrounds),
                new RemoveAction(surrounds),
                new ChangesAction(surrounds),
                new UndoAction(surrounds),
                new RedoAction(surrounds),
                new AnalyzeAction(surrounds),
                new SheetAction(surrounds),
                new SheetsAction(surrounds),
                new TripsAction(surrounds),
                new TripAction(surrounds),
                new GivenAction(surrounds),
                new PrivateAction(surrounds),
                new ImportAction(surrounds),
                new ExportAction(surrounds),
                new BackupAction(surrounds),
                new RestoreAction(surrounds),
                new CheckAction(surrounds));
        actions.forEach(action -> line.addSubcommand(action));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(HELP_WIDTH);
        line.setOut(new PrintWriter(surrounds.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(surrounds.err(), true, StandardCharsets.UTF_8));
        line.setParameterExceptionHandler((wrong, given) -> {
            surrounds.err().println(said(wrong.getCommandLine(), surrounds, WrongUse.sentence(wrong)));
            return ExitCodes.WRONG_INPUT;
        });
        line.setExecutionExceptionHandler((failure, command, parsed) -> {
            if (failure instanceof ThereAlreadyException there) {
                surrounds.err().println(said(command, surrounds, there.saying("--overwrite")));
                return ExitCodes.of(there);
            }
            if (failure instanceof AppException answer) {
                surrounds.err().println(said(command, surrounds, answer.saying()));
                return ExitCodes.of(answer);
            }
            throw failure;
        });
        if (arguments.isEmpty()) {
            line.usage(surrounds.err());
            return ExitCodes.WRONG_INPUT;
        }
        int code = line.execute(arguments.toArray(new String[0]));
        surrounds.out().flush();
        return code;
    }

    /** In the language of the command; where the settings that state it are what is wrong, in that of the environment. */
    private static String said(CommandLine command, Surrounds surrounds, Sentence saying) {
        Phrases phrases;
        try {
            phrases = command.getCommand() instanceof Action action
                    ? action.phrases()
                    : LoadPhrases.of(surrounds.language());
        } catch (AppException unusable) {
            phrases = LoadPhrases.of(surrounds.language());
        }
        return phrases.say(saying);
    }
}
