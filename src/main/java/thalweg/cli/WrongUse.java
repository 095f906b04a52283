package thalweg.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Says what is wrong with the arguments, in the words of the program instead of those of the command-line library. */
final class WrongUse {

    private WrongUse() {}

    /** One or two sentences, the last of which names the help. */
    static String sentence(CommandLine.ParameterException wrong) {
        CommandSpec command = wrong.getCommandLine().getCommandSpec();
        return said(wrong, command) + " See " + command.qualifiedName() + " --help.";
    }

    private static String said(CommandLine.ParameterException wrong, CommandSpec command) {
        if (wrong instanceof CommandLine.UnmatchedArgumentException unmatched) {
            String first = unmatched.getUnmatched().get(0);
            if (unmatched.isUnknownOption()) {
                return "There is no option " + first + " here.";
            }
            return command.parent() == null
                    ? "There is no command \"" + first + "\"."
                    : "\"" + first + "\" is one word too many; put what belongs together in quotes.";
        }
        if (wrong instanceof CommandLine.MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            return missing(missing.getMissing().get(0));
        }
        if (wrong instanceof CommandLine.OverwrittenOptionException twice) {
            return name(twice.getOverwritten()) + " is given twice; say it once.";
        }
        ArgSpec argument = wrong.getArgSpec();
        String value = wrong.getValue();
        return argument == null || value == null
                ? plain(Objects.requireNonNullElse(wrong.getMessage(), ""))
                : name(argument) + " is " + wanted(argument.type()) + ", not \"" + value + "\".";
    }

    private static String missing(ArgSpec argument) {
        if (!(argument instanceof OptionSpec option)) {
            return argument.paramLabel() + " is missing.";
        }
        return option.required()
                ? option.longestName() + " " + option.paramLabel() + " is needed here."
                : option.longestName() + " needs " + option.paramLabel() + " after it.";
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static String wanted(Class<?> type) {
        if (type.isEnum()) {
            return "one of "
                    + Arrays.stream(type.getEnumConstants())
                            .map(one -> one.toString().toLowerCase(Locale.ROOT).replace('_', '-'))
                            .collect(Collectors.joining(", "));
        }
        return type == double.class || type == Double.class ? "a number" : "a whole number";
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
