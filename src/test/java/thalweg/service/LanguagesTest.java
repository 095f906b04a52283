package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.text.Language;
import thalweg.text.Phrases;
import thalweg.text.Width;

/** What holds of the phrases of every language. That each English key is used is held elsewhere, and so holds of all. */
class LanguagesTest {

    private static final Phrases ENGLISH = LoadPhrases.english();
    private static final Pattern GAP = Pattern.compile("\\{[0-9]}");
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");

    /** Units, time zones and names: the same in every language. */
    private static final Set<String> EVERYWHERE = Set.of("min", "ft", "UTC", "Thalweg", "UHMWPE", "en", "es", "fr");

    /** Phrases that are the same for what they say is the same word in that language, as its dictionaries have it. */
    private static final Map<Language, Set<String>> SAME_WORD = Map.of(
            Language.ES,
            Set.of(
                    "no",
                    "material",
                    "Material",
                    "demo",
                    "imperial",
                    "normal",
                    "escape",
                    "oval (X)",
                    // "plan" is the Spanish word as well.
                    "Plan: {0}, {1}",
                    // So is "factor".
                    "Factor {0}."),
            Language.FR,
            Set.of(
                    "canyon",
                    "Canyon",
                    "Canyons",
                    "{0} canyon",
                    "{0} canyons",
                    "Canyon {0}",
                    "{0} inspection",
                    "{0} inspections",
                    "Inspections",
                    "sources",
                    "Sources",
                    "notes",
                    "Notes",
                    "note",
                    "Note",
                    "photos",
                    "photo {0}",
                    "photo {0}, sha256 {1}...",
                    "technique",
                    "Technique",
                    "triangle",
                    "Format",
                    "Fibre",
                    "nylon",
                    "polyester",
                    "Point",
                    "A, angle",
                    "Verdict",
                    "normal",
                    "piton"));

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyFileHasTheKeysOfTheEnglishOne(Language language) throws IOException {
        for (String file : LoadPhrases.FILES) {
            Set<String> keys = new TreeSet<>(file(language, file).stringPropertyNames());
            Set<String> english = new TreeSet<>(file(Language.EN, file).stringPropertyNames());
            assertThat(without(english, keys))
                    .as("missing in %s of %s", file, language)
                    .isEmpty();
            assertThat(without(keys, english))
                    .as("left over in %s of %s", file, language)
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyPhraseHasTheGapsOfTheEnglishOne(Language language) {
        LoadPhrases.of(language)
                .all()
                .forEach((key, phrase) -> assertThat(gaps(phrase))
                        .as("%s: %s", key, phrase)
                        .isEqualTo(gaps(ENGLISH.all().getOrDefault(key, ""))));
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void noPhraseIsEmptyAndNoneHasASpaceTooMany(Language language) {
        LoadPhrases.of(language).all().forEach((key, phrase) -> {
            assertThat(phrase).as(key).isNotBlank();
            assertThat(phrase.endsWith(" "))
                    .as("%s ends in a space", key)
                    .isEqualTo(ENGLISH.all().getOrDefault(key, "").endsWith(" "));
        });
    }

    @ParameterizedTest
    @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
    void nothingStandsInEnglishButTheWordsThatAreTheSame(Language language) {
        Set<String> left = new TreeSet<>();
        LoadPhrases.of(language).all().forEach((key, phrase) -> {
            if (phrase.equals(ENGLISH.all().getOrDefault(key, "")) && saysSomething(phrase)) {
                left.add(key.startsWith("language.") ? "" : phrase);
            }
        });
        left.remove("");

        assertThat(left).isEqualTo(new TreeSet<>(SAME_WORD.get(language)));
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void theMarksOfConditionsAreTheSameAndOneCellEach(Language language) {
        LoadPhrases.of(language).all().forEach((key, phrase) -> {
            if (key.startsWith("condition.mark.") || key.startsWith("timeline.mark.")) {
                assertThat(phrase).as(key).isEqualTo(ENGLISH.all().getOrDefault(key, ""));
                assertThat(Width.of(phrase)).as(key).isEqualTo(1);
            }
        });
    }

    /** A translation that leaves numbers out, or adds some, says something else. */
    @ParameterizedTest
    @EnumSource(Language.class)
    void everyNumberOfTheEnglishPhraseIsInTheOther(Language language) {
        Pattern number = Pattern.compile("[0-9]+(\\.[0-9]+)?");
        LoadPhrases.of(language).all().forEach((key, phrase) -> {
            Set<String> numbers = found(number, GAP.matcher(phrase).replaceAll(""));
            Set<String> english = found(
                    number, GAP.matcher(ENGLISH.all().getOrDefault(key, "")).replaceAll(""));
            assertThat(numbers).as(key + ": " + phrase).isEqualTo(english);
        });
    }

    private static Set<String> without(Set<String> some, Set<String> others) {
        return some.stream().filter(one -> !others.contains(one)).collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean saysSomething(String phrase) {
        return !EVERYWHERE.containsAll(found(WORD, GAP.matcher(phrase).replaceAll(" ")));
    }

    private static Set<String> gaps(String phrase) {
        return found(GAP, phrase);
    }

    private static Set<String> found(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Properties file(Language language, String name) throws IOException {
        String path = "/thalweg/phrases/" + language.word() + "/" + name + ".properties";
        Properties properties = new Properties();
        try (InputStream in = Objects.requireNonNull(LanguagesTest.class.getResourceAsStream(path), path)) {
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        return properties;
    }
}
