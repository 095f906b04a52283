package thalweg.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.PartFinding;
import thalweg.route.PartKind;

/** Which parts are wanted, as options. */
final class PartOptions {

    @Option(
            names = "--parts",
            description = "list parts of anchors in place of canyons; WORDS may be of anything about them")
    private boolean parts;

    @Option(names = "--kind", paramLabel = "KIND", description = "with --parts: such as bolt, webbing, quick_link")
    private String kind = "";

    @Option(names = "--material", paramLabel = "WORDS", description = "with --parts: such as stainless")
    private String material = "";

    @Option(names = "--size", paramLabel = "WORDS", description = "with --parts: such as \"10 x 90\"")
    private String size = "";

    @Option(names = "--standard", paramLabel = "WORDS", description = "with --parts: such as \"EN 959\"")
    private String standard = "";

    @Option(names = "--maker", paramLabel = "WORDS", description = "with --parts: who made it")
    private String maker = "";

    @Option(
            names = "--batch",
            paramLabel = "WORDS",
            description = "with --parts: as a recall names it, or its beginning")
    private String batch = "";

    /** Whether parts are wanted at all. */
    boolean asked() {
        return parts;
    }

    /**
     * What was asked for.
     *
     * @throws InputException when there is no such kind
     */
    PartFinding finding(String words) {
        return new PartFinding(words, kindOf(kind), material, size, standard, maker, batch);
    }

    /** Whether something was asked of parts without asking for parts. */
    boolean forgotten() {
        return !parts && !finding("").equals(PartFinding.ALL);
    }

    private static Optional<PartKind> kindOf(String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        String name = text.strip().toLowerCase(Locale.ROOT).replaceAll("[ -]+", "_");
        Optional<PartKind> kind = Arrays.stream(PartKind.values())
                .filter(one -> word(one).equals(name))
                .findFirst();
        if (kind.isEmpty()) {
            throw new InputException(Sentence.of(
                    "The kind \"{0}\" is not known; it is one of: {1}.",
                    text.strip(),
                    Arrays.stream(PartKind.values()).map(PartOptions::word).collect(Collectors.joining(", "))));
        }
        return kind;
    }

    private static String word(PartKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }
}
