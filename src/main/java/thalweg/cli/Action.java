package thalweg.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import thalweg.fault.Sentence;
import thalweg.service.Remarks;
import thalweg.text.Phrases;

/** One command: runs, prints, and says its exit code. */
@Command(
        synopsisHeading = "",
        descriptionHeading = "%n",
        parameterListHeading = "%n",
        optionListHeading = "%n",
        sortOptions = false)
abstract class Action implements Callable<Integer> {

    @Mixin
    private final Shared shared;

    // The command-line library reads it.
    @SuppressWarnings("UnusedVariable")
    @Option(names = "--help", usageHelp = true, description = "show this and end")
    private boolean help;

    Action(Surrounds surrounds) {
        this.shared = new Shared(surrounds);
    }

    final Shared shared() {
        return shared;
    }

    final Surrounds surrounds() {
        return shared.surrounds();
    }

    /** The words of the program in the language that is asked for. */
    final Phrases phrases() {
        return shared.phrases(settingsFile());
    }

    /** The settings that the command goes by, where others than the person's own are named. */
    Optional<Path> settingsFile() {
        return Optional.empty();
    }

    /** Prints a result. */
    final void print(String text) {
        surrounds().out().print(text.endsWith("\n") ? text : text + "\n");
    }

    /** Tells a person what contradicts itself since something was saved. */
    final void remark(Remarks remarks) {
        remarks.since().forEach(one -> tell(Sentence.of("Remark: {0}", one)));
    }

    /** Prints a sentence as a result. */
    final void print(Sentence sentence) {
        print(phrases().say(sentence));
    }

    /** Tells a person a sentence beside the result. */
    final void tell(Sentence sentence) {
        tell(phrases().say(sentence));
    }

    /** Tells a person something beside the result. */
    final void tell(String sentence) {
        surrounds().err().println(sentence);
    }
}
