package thalweg;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.settings.Theme;
import thalweg.text.Language;
import thalweg.units.UnitSystem;

/**
 * What the screen is started with. Read by hand, because the command-line library would double the time to the first
 * picture.
 *
 * @param db the database, where another than one's own is named
 * @param demo whether it is the copy of the sample data
 * @param anew whether that copy is made fresh
 * @param readOnly whether nothing is to be changed
 * @param ascii whether only ASCII may be used
 * @param mouse whether the mouse is listened to
 * @param units in which quantities are shown
 * @param settings the file of settings, where another than one's own is named
 * @param theme how the screen is coloured, where that is said
 * @param language in which it speaks, where that is said
 */
record ScreenArguments(
        Optional<Path> db,
        boolean demo,
        boolean anew,
        boolean readOnly,
        boolean ascii,
        boolean mouse,
        UnitSystem units,
        Optional<Path> settings,
        Optional<Theme> theme,
        Optional<Language> language) {

    /**
     * The arguments, or empty where they name a command or ask for help.
     *
     * @throws InputException when an option of the screen lacks its value
     */
    static Optional<ScreenArguments> of(List<String> arguments) {
        Deque<String> left = new ArrayDeque<>(arguments);
        ScreenArguments read = new ScreenArguments(
                Optional.empty(),
                false,
                false,
                false,
                false,
                true,
                UnitSystem.METRIC,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        while (!left.isEmpty()) {
            String argument = left.removeFirst();
            Optional<ScreenArguments> next = read.with(argument, left);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            read = next.get();
        }
        if (read.db.isPresent() && read.demo) {
            throw new InputException(Sentence.of("--db and --demo name two databases; choose one of them."));
        }
        return Optional.of(read);
    }

    private Optional<ScreenArguments> with(String argument, Deque<String> left) {
        if (argument.startsWith("--db=")) {
            return Optional.of(database(argument.substring("--db=".length())));
        }
        if (argument.startsWith("--units=")) {
            return Optional.of(units(argument.substring("--units=".length())));
        }
        if (argument.startsWith("--settings=")) {
            return Optional.of(settings(argument.substring("--settings=".length())));
        }
        if (argument.startsWith("--theme=")) {
            return Optional.of(theme(argument.substring("--theme=".length())));
        }
        if (argument.startsWith("--language=")) {
            return Optional.of(language(argument.substring("--language=".length())));
        }
        return switch (argument) {
            case "--language" -> Optional.of(language(value(argument, left)));
            case "--theme" -> Optional.of(theme(value(argument, left)));
            case "--settings" -> Optional.of(settings(value(argument, left)));
            case "--db" -> Optional.of(database(value(argument, left)));
            case "--units" -> Optional.of(units(value(argument, left)));
            case "--demo" ->
                Optional.of(
                        new ScreenArguments(db, true, anew, readOnly, ascii, mouse, units, settings, theme, language));
            case "--anew" ->
                Optional.of(
                        new ScreenArguments(db, demo, true, readOnly, ascii, mouse, units, settings, theme, language));
            case "--read-only" ->
                Optional.of(new ScreenArguments(db, demo, anew, true, ascii, mouse, units, settings, theme, language));
            case "--ascii" ->
                Optional.of(
                        new ScreenArguments(db, demo, anew, readOnly, true, mouse, units, settings, theme, language));
            case "--no-mouse" ->
                Optional.of(
                        new ScreenArguments(db, demo, anew, readOnly, ascii, false, units, settings, theme, language));
            default -> Optional.empty();
        };
    }

    /** The same on the copy of the sample data. */
    ScreenArguments toDemo() {
        return new ScreenArguments(
                Optional.empty(), true, false, false, ascii, mouse, units, settings, theme, language);
    }

    private static String value(String option, Deque<String> left) {
        if (left.isEmpty()) {
            throw new InputException(Sentence.of("{0} needs a value after it; see thalweg --help.", option));
        }
        return left.removeFirst();
    }

    private ScreenArguments database(String file) {
        if (file.isBlank()) {
            throw new InputException(Sentence.of("--db needs the name of a file after it; see thalweg --help."));
        }
        return new ScreenArguments(
                Optional.of(Path.of(file)), demo, anew, readOnly, ascii, mouse, units, settings, theme, language);
    }

    private ScreenArguments settings(String file) {
        return new ScreenArguments(
                db, demo, anew, readOnly, ascii, mouse, units, Optional.of(Path.of(file)), theme, language);
    }

    private ScreenArguments theme(String word) {
        Theme named = Theme.of(word)
                .orElseThrow(() -> new InputException(
                        Sentence.of("\"{0}\" is no theme; --theme takes one of {1}.", word, Theme.words())));
        return new ScreenArguments(
                db, demo, anew, readOnly, ascii, mouse, units, settings, Optional.of(named), language);
    }

    private ScreenArguments language(String word) {
        Language named = Language.of(word)
                .orElseThrow(() -> new InputException(Sentence.of(
                        "\"{0}\" is no language known here; --language takes one of {1}.", word, Language.words())));
        return new ScreenArguments(db, demo, anew, readOnly, ascii, mouse, units, settings, theme, Optional.of(named));
    }

    private ScreenArguments units(String word) {
        UnitSystem system = switch (word) {
            case "metric" -> UnitSystem.METRIC;
            case "imperial" -> UnitSystem.IMPERIAL;
            default ->
                throw new InputException(
                        Sentence.of("\"{0}\" are no units known here; --units takes metric or imperial.", word));
        };
        return new ScreenArguments(db, demo, anew, readOnly, ascii, mouse, system, settings, theme, language);
    }
}
