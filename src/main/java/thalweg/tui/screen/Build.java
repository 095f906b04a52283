package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import thalweg.body.Limits;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.TripText;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Field;

/** Builds the fields of forms: label and help by key, checks from the readers that will read what was typed. */
final class Build {

    /** Room for as many lines as a list may have, the longest names among them [characters]. */
    private static final int LONGEST_LIST = Limits.LIST * 2 * (Limits.NAME + 20);

    /** The key of why something is corrected, withdrawn or taken out. */
    static final String REASON = "reason";

    private final Surroundings around;
    private final List<Field> fields = new ArrayList<>();

    Build(Surroundings around) {
        this.around = around;
    }

    List<Field> done() {
        return fields;
    }

    /** A text that must be there. */
    Build name(String key, String label, String text) {
        String missing = around.say("form.missing");
        return line(key, label, text, Limits.NAME, typed -> typed.isBlank() ? Optional.of(missing) : Optional.empty());
    }

    /** The reason of a correction. */
    Build reason() {
        return reason("form.reason", "help.form.reason");
    }

    /** A reason that must be given. */
    Build reason(String label, String help) {
        String missing = around.say("form.missing");
        fields.add(Field.line(
                REASON,
                around.say(label),
                around.say(help),
                "",
                Limits.REASON,
                typed -> typed.isBlank() ? Optional.of(missing) : Optional.empty()));
        return this;
    }

    /** A text that may be left empty. */
    Build text(String key, String label, String text) {
        return line(key, label, text, Limits.LINE, Field.any());
    }

    /** Who says it; where nobody has set their name, the name of the account stands there, and the help says so. */
    Build signed(String key, String label, String name) {
        String help = around.say("help." + label)
                + (around.settings().keeper().isEmpty() ? " " + around.say("keeper.account") : "");
        fields.add(Field.line(key, around.say(label), help, name, Limits.LINE, Field.any()));
        return this;
    }

    /** A value that may be left empty and is read by that reader. */
    Build value(String key, String label, String text, Function<String, ?> parse) {
        return line(key, label, text, Limits.NAME, reading(typed -> parse.apply(typed.strip())));
    }

    /** A value that may be left empty, under a label of its own. */
    Build labelledValue(String key, String label, String help, String text, Function<String, ?> parse) {
        fields.add(Field.line(key, label, help, text, Limits.NAME, reading(typed -> parse.apply(typed.strip()))));
        return this;
    }

    /** A date on which somebody saw something: it must be there, have come, and be believed. */
    Build day(String key, String label, String text) {
        String missing = around.say("form.missing");
        return line(
                key,
                label,
                text,
                Limits.NAME,
                typed -> typed.isBlank()
                        ? Optional.of(missing)
                        : reading(this::seen).apply(typed));
    }

    /** A date that may be left empty but must have come. */
    Build past(String key, String label, String text) {
        return line(key, label, text, Limits.NAME, reading(this::past));
    }

    private PartialDate seen(String typed) {
        PartialDate date = past(typed);
        date.tooEarlyToBeSeen().ifPresent(why -> {
            throw new InputException(Sentence.plain(around.say("form.too_early", date.print(), why)));
        });
        return date;
    }

    private PartialDate past(String typed) {
        PartialDate date = PartialDate.parse(typed);
        if (!date.hasBegunBy(around.today())) {
            throw new InputException(Sentence.plain(around.say("form.future", date.print(), around.today())));
        }
        return date;
    }

    /** Entries one a line, which may be none; a line that is as it was shown is always taken. */
    Build list(String key, String label, String text, Function<String, ?> parse) {
        Set<String> shown = text.lines().map(String::strip).collect(Collectors.toSet());
        fields.add(Field.lines(
                key,
                around.say(label),
                around.say("help." + label),
                text,
                LONGEST_LIST,
                reading(typed ->
                        TripText.lines(typed, line -> shown.contains(line.strip()) ? line : parse.apply(line)))));
        return this;
    }

    // Only whether the reader takes it counts here; what it reads is asked for when the form is sent.
    @SuppressWarnings("ReturnValueIgnored")
    private Function<String, Optional<String>> reading(Function<String, ?> parse) {
        return typed -> {
            if (typed.isBlank()) {
                return Optional.empty();
            }
            try {
                parse.apply(typed);
                return Optional.empty();
            } catch (InputException e) {
                return Optional.of(around.phrases().say(e.saying()));
            }
        };
    }

    private Build line(String key, String label, String text, int longest, Function<String, Optional<String>> check) {
        fields.add(Field.line(key, around.say(label), around.say("help." + label), text, longest, check));
        return this;
    }

    /** A text of several lines. */
    Build lines(String key, String label, String text) {
        fields.add(Field.lines(key, around.say(label), around.say("help." + label), text, Limits.PROSE));
        return this;
    }

    /** One value of a list. */
    <E extends Enum<E>> Build word(String key, String label, String list, Class<E> words, E chosen) {
        return choice(
                key,
                around.say(label),
                around.say("help." + label),
                list,
                words,
                Optional.of(chosen),
                Optional.empty());
    }

    /** One value of a list, or what that phrase says. */
    <E extends Enum<E>> Build orElse(
            String key, String label, String list, Class<E> words, Optional<E> chosen, String none) {
        return choice(
                key,
                around.say(label),
                around.say("help." + label),
                list,
                words,
                chosen,
                Optional.of(around.say(none)));
    }

    /** One value of a list, or unknown. */
    <E extends Enum<E>> Build maybe(String key, String label, String list, Class<E> words, Optional<E> chosen) {
        return labelledMaybe(key, around.say(label), around.say("help." + label), list, words, chosen);
    }

    /** One value of a list, or unknown, under a label that is filled already. */
    <E extends Enum<E>> Build labelledMaybe(
            String key, String label, String help, String list, Class<E> words, Optional<E> chosen) {
        return choice(key, label, help, list, words, chosen, Optional.of(around.say("unknown")));
    }

    private <E extends Enum<E>> Build choice(
            String key,
            String label,
            String help,
            String list,
            Class<E> words,
            Optional<E> chosen,
            Optional<String> none) {
        List<String> options = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        none.ifPresent(word -> {
            options.add("");
            labels.add(word);
        });
        Arrays.stream(words.getEnumConstants()).forEach(one -> {
            options.add(key(one));
            labels.add(Looks.word(around, list, one));
        });
        fields.add(hinted(Field.choice(
                key, label, help, options, labels, chosen.map(Build::key).orElse(""))));
        return this;
    }

    /** One of some options with labels of their own. */
    Build options(String key, String label, List<String> options, List<String> labels, String chosen) {
        fields.add(hinted(Field.choice(key, label, around.say("help.form.choice"), options, labels, chosen)));
        return this;
    }

    /** The field with a word on letters by which several of its options begin, if there are such. */
    private Field hinted(Field field) {
        return field.input() instanceof Field.Input.Chosen chosen && chosen.sharesLetters()
                ? field.withHelp(field.help() + " " + around.say("help.form.choice.again"))
                : field;
    }

    /** One of some options, which a letter chooses before it moves on. */
    Build quick(String key, String label, List<String> options, List<String> labels, String chosen) {
        fields.add(Field.choice(key, label, around.say("help.form.quick"), options, labels, chosen)
                .movingOn());
        return this;
    }

    /** A field of one line with a label of its own. */
    Build labelled(String key, String label, String help) {
        fields.add(Field.line(key, label, help, "", Limits.PROSE, Field.any()));
        return this;
    }

    /** A field of several lines with a label of its own. */
    Build labelledLines(String key, String label, String help, String text) {
        fields.add(Field.lines(key, label, help, text, Limits.PROSE));
        return this;
    }

    /** A field of several lines for each heading. */
    <K extends Enum<K>> Build prose(String list, Class<K> headings, Prose<K> prose) {
        for (K heading : headings.getEnumConstants()) {
            fields.add(Field.lines(
                    key(heading),
                    Looks.word(around, list, heading),
                    around.say("help.form.prose"),
                    prose.under(heading).orElse(""),
                    Limits.PROSE));
        }
        return this;
    }

    private static String key(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
