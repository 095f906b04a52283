package thalweg.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import thalweg.fault.Sentence;

/** Says what is wrong with the arguments, in the words of the program instead of those of the command-line library. */
final class WrongUse {

    private WrongUse() {}

    /** One or two sentences, the last of which names the help. */
    static Sentence sentence(CommandLine.ParameterException wrong) {
        CommandSpec command = wrong.getCommandLine().getCommandSpec();
        return Sentence.of("{0} See {1} --help.", said(wrong, command), command.qualifiedName());
    }

    private static Sentence said(CommandLine.ParameterException wrong, CommandSpec command) {
        if (wrong instanceof CommandLine.UnmatchedArgumentException unmatched) {
            String first = unmatched.getUnmatched().get(0);
            if (unmatched.isUnknownOption()) {
                return Sentence.of("There is no option {0} here.", first);
            }
            return command.parent() == null
                    ? Sentence.of("There is no command \"{0}\".", first)
                    : Sentence.of("\"{0}\" is one word too many; put what belongs together in quotes.", first);
        }
        if (wrong instanceof CommandLine.MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            return missing(missing.getMissing().get(0));
        }
        if (wrong instanceof CommandLine.OverwrittenOptionException twice) {
            return Sentence.of("{0} is given twice; say it once.", name(twice.getOverwritten()));
        }
        ArgSpec argument = wrong.getArgSpec();
        String value = wrong.getValue();
        return argument == null || value == null
                ? Sentence.plain(plain(Objects.requireNonNullElse(wrong.getMessage(), "")))
                : Sentence.of("{0} is {1}, not \"{2}\".", name(argument), wanted(argument.type()), value);
    }

    private static Sentence missing(ArgSpec argument) {
        if (!(argument instanceof OptionSpec option)) {
            return Sentence.of("{0} is missing.", argument.paramLabel());
        }
        return option.required()
                ? Sentence.of("{0} {1} is needed here.", option.longestName(), option.paramLabel())
                : Sentence.of("{0} needs {1} after it.", option.longestName(), option.paramLabel());
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static Sentence wanted(Class<?> type) {
        if (type.isEnum()) {
            return Sentence.of(
                    "one of {0}",
                    Arrays.stream(type.getEnumConstants())
                            .map(one -> one.toString().toLowerCase(Locale.ROOT).replace('_', '-'))
                            .collect(Collectors.joining(", ")));
        }
        return type == double.class || type == Double.class ? Sentence.of("a number") : Sentence.of("a whole number");
    }

    private static String plain(String message) {
        String line = message.lines()
                .findFirst()
                .filter(text -> !text.isBlank())
                .orElse("The arguments are wrong")
                .strip();
        return line.endsWith(".") || line.endsWith("?") ? line : line + ".";
    }
}
