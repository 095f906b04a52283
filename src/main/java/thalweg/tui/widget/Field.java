package thalweg.tui.widget;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.text.Fold;

/**
 * One line of a form.
 *
 * @param key by which the form's owner asks for it
 * @param label in front of it
 * @param help one sentence about what goes in, shown while it has the focus
 * @param input what is in it
 * @param check why what is in it will not do, if so
 */
public record Field(String key, String label, String help, Input input, Function<String, Optional<String>> check) {

    /** What a field holds and how it is edited. */
    public sealed interface Input {

        /** As text: what was typed, or the key of what was chosen. */
        String value();

        /** Typed text. */
        record Typed(TextField field) implements Input {
            @Override
            public String value() {
                return field.text();
            }
        }

        /**
         * One of a few.
         *
         * @param options keys, in order
         * @param labels what is shown for each
         * @param chosen index
         * @param movesOn whether a letter that chooses moves the focus on to the next field
         */
        record Chosen(List<String> options, List<String> labels, int chosen, boolean movesOn) implements Input {
            public Chosen {
                options = List.copyOf(options);
                labels = List.copyOf(labels);
                if (options.size() != labels.size() || chosen < 0 || chosen >= options.size()) {
                    throw new IllegalArgumentException("one of the options is chosen, and each has a label");
                }
            }

            @Override
            public String value() {
                return options.get(chosen);
            }

            /**
             * Whether that letter, large or small, with or without its accent, asks for what is shown: the first of its label, or where a letter moves
             * on and so cannot be pressed again, the one that is its own.
             */
            public boolean begins(String letter) {
                if (movesOn) {
                    return OwnLetters.of(labels).get(chosen).equalsIgnoreCase(letter);
                }
                String asked = Fold.fold(letter);
                return !asked.isEmpty() && Fold.fold(labels.get(chosen)).startsWith(asked);
            }

            /** Whether several options begin with the same letter. */
            public boolean sharesLetters() {
                return labels.stream()
                                .map(label -> label.codePoints()
                                        .limit(1)
                                        .map(Character::toLowerCase)
                                        .sum())
                                .distinct()
                                .count()
                        < labels.size();
            }

            /** The next option, or the one before, around the end. */
            public Chosen turned(int by) {
                return new Chosen(options, labels, Math.floorMod(chosen + by, options.size()), movesOn);
            }
        }
    }

    /** A field of one line. */
    public static Field line(
            String key, String label, String help, String text, int longest, Function<String, Optional<String>> check) {
        return new Field(key, label, help, new Input.Typed(TextField.of(text, longest)), check);
    }

    /** A field of several lines. */
    public static Field lines(String key, String label, String help, String text, int longest) {
        return lines(key, label, help, text, longest, any());
    }

    /** A field of several lines that is checked. */
    public static Field lines(
            String key, String label, String help, String text, int longest, Function<String, Optional<String>> check) {
        return new Field(key, label, help, new Input.Typed(TextField.lines(text, longest)), check);
    }

    /** A field in which one of a few is chosen. */
    public static Field choice(
            String key, String label, String help, List<String> options, List<String> labels, String chosen) {
        int at = Math.max(0, options.indexOf(chosen));
        return new Field(key, label, help, new Input.Chosen(options, labels, at, false), any());
    }

    /** The same, which a letter that chooses leaves for the next field. */
    public Field movingOn() {
        return input instanceof Input.Chosen chosen
                ? with(new Input.Chosen(chosen.options(), chosen.labels(), chosen.chosen(), true))
                : this;
    }

    /** The check that lets everything pass. */
    public static Function<String, Optional<String>> any() {
        return text -> Optional.empty();
    }

    /** What is in it. */
    public String value() {
        return input.value();
    }

    /** Why what is in it will not do. */
    public Optional<String> fault() {
        return check.apply(value());
    }

    /** Whether it takes line ends. */
    public boolean manyLines() {
        return input instanceof Input.Typed typed && typed.field().manyLines();
    }

    /** The same with something else in it. */
    public Field with(Input other) {
        return new Field(key, label, help, other, check);
    }

    /** The same under another label. */
    public Field withLabel(String other) {
        return new Field(key, other, help, input, check);
    }

    /** The same with another sentence about what goes in. */
    public Field withHelp(String other) {
        return new Field(key, label, other, input, check);
    }
}
