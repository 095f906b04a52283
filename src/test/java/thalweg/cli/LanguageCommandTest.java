package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.service.LoadPhrases;
import thalweg.text.Language;

final class LanguageCommandTest {

    private static final String RIG = """
            {"name": "two", "points": [{"name": "A", "at": [-0.3, 0]}, {"name": "B", "at": [0.3, 0]}],
             "load": {"mass_kg": 100, "factor": 1.5, "toward_deg": 0},
             "rig": {"kind": "focused", "focus": [0, -0.6], "EA_kN": 70}}
            """;

    /** Shorter ones may be part of what people entered. */
    private static final int TELLING = 12;

    @TempDir
    private Path home = Path.of("");

    private Path rig = Path.of("");

    @BeforeEach
    void takeIn() throws IOException {
        rig = Files.writeString(home.resolve("rig.json"), RIG);
        Shell.Ran ran = new Shell(home).run("import", "sample-data/records.json", "--accept");
        assertThat(ran.code()).as(ran.err()).isLessThan(2);
    }

    private void settings(String text) throws IOException {
        Path file = home.resolve(".config/thalweg/settings.json");
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    @ParameterizedTest
    @CsvSource({"en, worn", "es, gastado", "fr, usé"})
    void theOptionSaysTheLanguageOfWhatIsPrinted(String language, String worn) {
        Shell.Ran ran = new Shell(home).run("list", "--language", language);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("~ " + worn);
    }

    @Test
    void theOptionGoesBeforeTheSettingsAndThoseBeforeTheEnvironment() throws IOException {
        Shell french = new Shell(home).speaking(Language.FR);
        assertThat(french.run("list").out()).contains("~ usé");

        settings("{\"language\": \"es\"}");
        assertThat(french.run("list").out()).contains("~ gastado");
        assertThat(french.run("list", "--language", "en").out()).contains("~ worn");
    }

    @Test
    void anotherFileOfSettingsSaysItWhereACommandGoesByIt() throws IOException {
        Path other = Files.writeString(home.resolve("other.json"), "{\"language\": \"fr\"}");

        assertThat(new Shell(home)
                        .run("analyze", rig.toString(), "--settings", other.toString())
                        .out())
                .contains("Mises en garde");
    }

    @Test
    void anUnknownLanguageIsRefusedInOneSentence() throws IOException {
        Shell.Ran option = new Shell(home).run("list", "--language", "de");
        assertThat(option.code()).isEqualTo(ExitCodes.WRONG_INPUT);
        assertThat(option.err().strip())
                .isEqualTo("--language is one of en, es, fr, not \"de\". See thalweg list --help.");

        settings("{\"language\": \"de\"}");
        Shell.Ran set = new Shell(home).run("list");
        assertThat(set.code()).isEqualTo(ExitCodes.WRONG_INPUT);
        assertThat(set.err()).contains("language: is \"de\"; it should be one of en, es, fr.");
        assertThat(set.out()).isEmpty();
        assertThat(new Shell(home).run("list", "--language", "es").code()).isZero();
    }

    @ParameterizedTest
    @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
    void beyondEnglishTheEnglishCautionStandsBesideTheTranslatedOne(Language language) {
        String translated = LoadPhrases.of(language).say("rig.caution.model");
        String english = LoadPhrases.english().say("rig.caution.model");

        String out = words(new Shell(home).run("analyze", rig.toString(), "--language", language.word()));

        assertThat(out).contains(translated).contains(english);
        assertThat(words(new Shell(home).run("analyze", rig.toString())))
                .contains(english)
                .doesNotContain("[English:");
    }

    @ParameterizedTest
    @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
    void aLoadIsChosenByItsNameInThatLanguageOrInEnglish(Language language) {
        String name = LoadPhrases.of(language).say("settings.load.two");
        String[] own = {"analyze", rig.toString(), "--language", language.word(), "--load", name};
        String[] english = {"analyze", rig.toString(), "--language", language.word(), "--load", "two people, rescue"};

        assertThat(new Shell(home).run(own).out()).contains("200 kg");
        assertThat(new Shell(home).run(english)).isEqualTo(new Shell(home).run(own));
    }

    /** What a program reads is the same in every language. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "list --json",
                "show Éclusaune --json",
                "due --json",
                "stations --json",
                "changes --json",
                "list --parts --json",
                "trips --json",
                "given --json"
            })
    void jsonIsTheSameInEveryLanguage(String command) {
        Shell.Ran english = new Shell(home).run(command.split(" "));
        assertThat(english.out().substring(0, 1)).as(english.err()).isIn("{", "[");

        assertThat(new Shell(home).speaking(Language.FR).run(command.split(" ")).out())
                .isEqualTo(english.out());
        assertThat(new Shell(home).speaking(Language.ES).run(command.split(" ")).out())
                .isEqualTo(english.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"list --parts --csv", "due --csv"})
    void tablesForOtherProgramsAreTheSameInEveryLanguage(String command) {
        String english = new Shell(home).run(command.split(" ")).out();
        assertThat(english.lines().count()).isGreaterThan(9);

        assertThat(new Shell(home).speaking(Language.FR).run(command.split(" ")).out())
                .isEqualTo(english);
    }

    @Test
    void theAnswerOfARigAsJsonIsTheSameInEveryLanguage() {
        String english =
                new Shell(home).run("analyze", rig.toString(), "--json").out();

        assertThat(new Shell(home)
                        .run("analyze", rig.toString(), "--json", "--language", "fr")
                        .out())
                .isEqualTo(english);
    }

    /** What people entered stays as they wrote it, and so do the sentences of a rig, which are kept with its answer. */
    @ParameterizedTest
    @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
    void aSheetHasNoEnglishPhraseButTheCautions(Language language) throws IOException {
        Map<String, String> left = new TreeMap<>();
        String sheet = words(new Shell(home).run("sheet", "Éclusaune", "--as", "text", "--language", language.word()));
        assertThat(sheet).contains(LoadPhrases.english().say("caution.aid"));
        String withoutOriginals = sheet.replaceAll("\\[(En inglés|En anglais\u00a0): [^\\]]*]", "");
        assertThat(withoutOriginals).doesNotContain(LoadPhrases.english().say("caution.aid"));
        String entered = Files.readString(Path.of("sample-data", "records.json"));
        Set<String> said = segments(withoutOriginals).collect(Collectors.toSet());
        LoadPhrases.english()
                .all()
                .forEach((key, phrase) -> segments(phrase)
                        .filter(segment -> segment.replaceAll("\\P{L}", "").length() > TELLING)
                        .filter(segment -> !segment.contains("{") && said.contains(segment))
                        .filter(segment -> !entered.contains(segment))
                        .forEach(segment -> left.put(key, segment)));

        assertThat(left).isEmpty();
    }

    /** What stands between two marks by itself; what people entered may have the words of a phrase among others. */
    private static Stream<String> segments(String text) {
        return Stream.of(text.split("[:;.,|•!=\\[\\]()]+| -+ ")).map(String::strip);
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void aPageSaysItsLanguage(Language language) {
        assertThat(new Shell(home)
                        .run("sheet", "Éclusaune", "--language", language.word())
                        .out())
                .contains("<html lang=\"" + language.word() + "\"");
    }

    private static String words(Shell.Ran ran) {
        return ran.out().replaceAll("\\s+", " ");
    }
}
