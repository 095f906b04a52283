package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the files of the checkout look like, as far as no other tool looks. */
class SourceShapeTest {

    private static final Set<String> TOP_LEVEL =
            Set.of("README.md", "DEVELOPERS.md", "pom.xml", "src", "sample-data", "scripts", "LICENSE");

    private static final List<JavaSource> MAIN = JavaSource.under("src/main/java");
    private static final List<JavaSource> TESTS = JavaSource.under("src/test/java");
    private static final List<JavaSource> BENCHMARKS = JavaSource.under("src/bench/java");

    private static final Path RESOURCES = Path.of("src/main/resources/thalweg");
    private static final Path TEMPLATES = Path.of("src/main/jte");

    @Test
    void everyFileHasItsShape() {
        assertThat(MAIN).isNotEmpty();
        assertThat(TESTS).isNotEmpty();
        assertThat(BENCHMARKS).isNotEmpty();

        assertThat(Stream.of(MAIN, TESTS, BENCHMARKS)
                        .flatMap(List::stream)
                        .flatMap(source -> ShapeRules.findings(source).stream()))
                .isEmpty();
    }

    @Test
    void everyPackageSaysWhatItIsAndThatNothingIsNull() {
        Map<String, JavaSource> infos = new TreeMap<>();
        MAIN.stream()
                .filter(source -> source.name().endsWith("/package-info.java"))
                .forEach(source -> infos.put(folderOf(source), source));

        List<String> findings = new ArrayList<>();
        for (String folder :
                MAIN.stream().map(SourceShapeTest::folderOf).collect(Collectors.toCollection(TreeSet::new))) {
            JavaSource info = infos.get(folder);
            if (info == null) {
                findings.add(folder + ": a package has a package-info.java");
            } else if (info.unit().getPackageAnnotations().stream()
                    .noneMatch(annotation ->
                            annotation.getAnnotationType().toString().equals("NullMarked"))) {
                findings.add(info.at(1, "a package is @NullMarked"));
            } else if (!info.lines().get(0).startsWith("/**")) {
                findings.add(info.at(1, "a package says what it is"));
            }
        }

        assertThat(findings).isEmpty();
    }

    private static String folderOf(JavaSource source) {
        return source.name().substring(0, source.name().lastIndexOf('/'));
    }

    @Test
    void theTopOfTheCheckoutHoldsThisAndNothingElse() throws IOException {
        assertThat(visibleNames()).isEqualTo(TOP_LEVEL);
    }

    private static Set<String> visibleNames() throws IOException {
        try (Stream<Path> names = Files.list(Path.of("."))) {
            return names.map(path -> path.getFileName().toString())
                    .filter(name -> !name.startsWith(".") && !name.equals("target"))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    @Test
    void everyPhraseThatIsAskedForExists() throws IOException {
        PhraseKeys keys = keysInUse();

        assertThat(keys.missing(phrases().keySet())).isEmpty();
    }

    @Test
    void everyPhraseIsUsed() throws IOException {
        PhraseKeys keys = keysInUse();
        Map<String, String> phrases = phrases();

        assertThat(phrases.keySet().stream()
                        .filter(key -> !keys.isUsed(key))
                        .map(key -> phrases.get(key) + "nothing says the phrase " + key))
                .isEmpty();
    }

    private static PhraseKeys keysInUse() throws IOException {
        PhraseKeys keys = new PhraseKeys();
        MAIN.forEach(keys::add);
        for (Path template : filesUnder(TEMPLATES, "**.jte")) {
            keys.add(template.toString(), Files.readAllLines(template));
        }
        return keys;
    }

    /**
     * Each key of the English phrases with the place that holds it; those of other languages have the same keys, which
     * {@code LanguagesTest} holds them to. Empty as long as no source knows of phrases. */
    private static Map<String, String> phrases() throws IOException {
        Map<String, String> phrases = new TreeMap<>();
        if (MAIN.stream().noneMatch(source -> source.mentions("Phrases"))) {
            return phrases;
        }
        List<Path> files = filesUnder(RESOURCES, "**/phrases/en/**.properties");
        assertThat(files).as("phrases below " + RESOURCES).isNotEmpty();
        for (Path file : files) {
            List<String> lines = Files.readAllLines(file);
            Properties properties = new Properties();
            properties.load(new StringReader(String.join("\n", lines)));
            for (String key : properties.stringPropertyNames()) {
                int line = lineOf(key, lines);
                String before = phrases.put(key, file + ":" + line + ": ");
                assertThat(before).as("another place with the key " + key).isNull();
            }
        }
        return phrases;
    }

    private static int lineOf(String key, List<String> lines) {
        Pattern start = Pattern.compile(" *" + Pattern.quote(key) + " *[=: ]");
        return 1
                + (int) lines.stream()
                        .takeWhile(line -> !start.matcher(line).lookingAt())
                        .count();
    }

    private static List<Path> filesUnder(Path folder, String pattern) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        PathMatcher matcher = folder.getFileSystem().getPathMatcher("glob:" + pattern);
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(matcher::matches)
                    .sorted()
                    .toList();
        }
    }
}
