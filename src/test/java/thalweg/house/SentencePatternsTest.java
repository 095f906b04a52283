package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.body.ThingType;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.JsonDocument;
import thalweg.rig.CheckLetter;
import thalweg.rig.FactorSource;
import thalweg.rig.Knot;
import thalweg.rig.RigKind;
import thalweg.text.Language;

/** Whether every sentence that the program makes without a key can be said in every language. */
class SentencePatternsTest {

    private static final Pattern GAP = Pattern.compile("\\{[0-9]}");
    private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");

    private static final SentencePatterns CODE = new SentencePatterns();

    static {
        JavaSource.under("src/main/java").forEach(CODE::add);
    }

    @Test
    void patternsAreLiterals() {
        assertThat(CODE.patterns()).hasSizeGreaterThan(400);
        assertThat(CODE.findings()).isEmpty();
    }

    @Test
    void aPatternThatIsPutTogetherIsFound() {
        SentencePatterns patterns = new SentencePatterns();
        patterns.add(JavaSource.of(
                "Probe.java",
                "class Probe { Object a = Sentence.of(\"One \" + \"two {0}.\", 1), b = Sentence.of(\"No \" + a), c ="
                        + " Sentence.of(\"{0}: {1}\", 1, 2); }"));

        assertThat(patterns.patterns()).containsExactly("One two {0}.");
        assertThat(patterns.findings())
                .singleElement()
                .asString()
                .startsWith("Probe.java:1: ")
                .contains("literal");
    }

    @ParameterizedTest
    @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
    void everyPatternIsTranslated(Language language) {
        Set<String> missing = new TreeSet<>(CODE.patterns());
        missing.addAll(named());
        missing.removeAll(table(language).keySet());

        assertThat(missing).isEmpty();
    }

    /** Words of lists are looked up as well, and stand in the code as texts or are made of the name of a value. */
    @ParameterizedTest
    @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
    void nothingIsTranslatedThatNobodySays(Language language) {
        Set<String> left = new TreeSet<>(table(language).keySet());
        left.removeAll(CODE.patterns());
        left.removeAll(CODE.literals());
        left.removeAll(named());

        assertThat(left).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
    void translationsHaveTheGapsAndTheNumbersOfTheEnglishPattern(Language language) {
        table(language).forEach((english, said) -> {
            assertThat(set(GAP, said)).as(said).isEqualTo(set(GAP, english));
            assertThat(numbers(said)).as(said).isEqualTo(numbers(english));
            assertThat(said.endsWith(" ")).as(said).isEqualTo(english.endsWith(" "));
        });
    }

    @Test
    void theLanguagesTranslateTheSame() {
        assertThat(table(Language.ES).keySet()).isEqualTo(table(Language.FR).keySet());
    }

    /** Words that are made of the name of a value. */
    private static Set<String> named() {
        Set<String> words = new TreeSet<>();
        Arrays.stream(ThingType.values())
                .forEach(type -> words.add(type.inWords().toString()));
        Arrays.stream(Knot.values())
                .forEach(knot -> words.add(knot.word().replace('_', ' ').replace("mans", "man's")));
        Arrays.stream(CheckLetter.values())
                .forEach(letter -> words.add(letter.called().toString()));
        Arrays.stream(RigKind.values())
                .map(kind -> kind == RigKind.LOOP ? "triangle" : kind.word())
                .forEach(
                        kind -> words.addAll(List.of(kind, Character.toUpperCase(kind.charAt(0)) + kind.substring(1))));
        Arrays.stream(FactorSource.values()).forEach(source -> words.add(source.words()));
        return words;
    }

    private static Set<String> set(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> numbers(String text) {
        return NUMBER.matcher(GAP.matcher(text).replaceAll(""))
                .results()
                .map(MatchResult::group)
                .sorted()
                .toList();
    }

    private static Map<String, String> table(Language language) {
        String path = "/thalweg/phrases/" + language.word() + "/sentences.json";
        Map<String, String> table = new TreeMap<>();
        try (InputStream in = Objects.requireNonNull(SentencePatternsTest.class.getResourceAsStream(path), path)) {
            for (FieldReader one : JsonDocument.read(path, in.readAllBytes())
                    .reader(new Findings())
                    .objects("sentences")) {
                table.put(one.exact("english", 1000), one.exact("said", 1000));
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return table;
    }
}
