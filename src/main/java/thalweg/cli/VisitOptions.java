package thalweg.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.WaterLevel;
import thalweg.route.PartialDate;
import thalweg.text.Clean;

/** What can be said about any visit; empty where the option was not given. */
final class VisitOptions {

    private static final int LONGEST_NAME = 120;
    private static final int LONGEST_NOTE = 4000;

    @Option(names = "--on", paramLabel = "DATE", description = "2026-06-14, 2026-06 or 2026")
    private @Nullable String on;

    @Option(names = "--by", paramLabel = "NAME", description = "who looked")
    private @Nullable String by;

    @Option(names = "--note", paramLabel = "TEXT", description = "what else was seen")
    private @Nullable String note;

    @Option(names = "--water", paramLabel = "LEVEL", description = "dry, low, normal, high, flood, or unknown")
    private @Nullable String water;

    /** A word as its list has it: small, with hyphens. */
    static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    /**
     * The value of that name.
     *
     * @throws InputException with that sentence where there is none
     */
    static <E extends Enum<E>> E oneOf(String word, Class<E> words, Sentence saying) {
        return Arrays.stream(words.getEnumConstants())
                .filter(one -> plain(one.name()).equals(word))
                .findFirst()
                .orElseThrow(() -> new InputException(saying));
    }

    /** The names of a list, commas between. */
    static String known(Class<? extends Enum<?>> words) {
        return Arrays.stream(words.getEnumConstants())
                .map(one -> plain(one.name()))
                .collect(Collectors.joining(", "));
    }

    Optional<PartialDate> on() {
        return Optional.ofNullable(on).map(PartialDate::parse);
    }

    Optional<String> by() {
        return Optional.ofNullable(by).map(name -> Clean.line(name, LONGEST_NAME));
    }

    Optional<String> note() {
        return Optional.ofNullable(note).map(text -> Clean.lines(text, LONGEST_NOTE));
    }

    /** The water level; the inner value is empty where it is said to be unknown. */
    // Two answers in one on purpose: whether something was said, and whether that was a level.
    @SuppressWarnings("OptionalMapToOptional")
    Optional<Optional<WaterLevel>> water() {
        return Optional.ofNullable(water).map(VisitOptions::water);
    }

    private static Optional<WaterLevel> water(String word) {
        return plain(word).equals("unknown")
                ? Optional.empty()
                : Optional.of(oneOf(
                        plain(word),
                        WaterLevel.class,
                        Sentence.of(
                                "The water level \"{0}\" is not known; it is one of {1}, or unknown.",
                                word, known(WaterLevel.class))));
    }
}
