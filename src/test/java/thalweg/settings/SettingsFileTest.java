package thalweg.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.fault.InputException;
import thalweg.rig.SuddenLoad;
import thalweg.service.LoadPhrases;
import thalweg.text.Language;
import thalweg.text.Phrases;
import thalweg.units.Force;
import thalweg.units.Length;
import thalweg.units.Mass;

class SettingsFileTest {

    private static final Phrases PHRASES = LoadPhrases.english();

    private static Settings read(String text) {
        return SettingsFile.read("mine.json", text.getBytes(StandardCharsets.UTF_8), PHRASES);
    }

    @Test
    void aLanguageIsOneOfThoseThatAreSpoken() {
        assertThat(read("{\"language\": \"fr\"}").language()).contains(Language.FR);
        assertThat(read("{}").language()).isEmpty();
        assertThatThrownBy(() -> read("{\"language\": \"FR\"}"))
                .hasMessageContaining("language: is \"FR\"; it should be one of en, es, fr.");
    }

    @Test
    void anEmptyObjectIsTheStandard() {
        assertThat(read("{}")).isEqualTo(Settings.standard(PHRASES));
    }

    @Test
    void theNameOfTheKeeperIsReadAndABlankOneRefused() {
        assertThat(read("{\"keeper\": \" Ada Probe \"}").keeper()).contains("Ada Probe");
        assertThat(read("{}").keeper()).isEmpty();
        assertThatThrownBy(() -> read("{\"keeper\": \" \"}"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("keeper: is blank");
    }

    @Test
    void aThemeIsOneOfTheWords() {
        assertThat(read("{\"theme\": \"contrast\"}").theme()).contains(Theme.CONTRAST);
        assertThat(read("{}").theme()).isEmpty();
        assertThatThrownBy(() -> read("{\"theme\": \"pink\"}"))
                .hasMessageContaining("theme: is \"pink\"; it should be one of terminal, contrast, plain.");
    }

    @Test
    void ownSharesOfAStrengthAreReadByTheirWords() {
        assertThat(read("{\"derating\": {\"worn\": 0.7, \"age\": 0.5}}").derating())
                .containsExactly(Map.entry("worn", 0.7), Map.entry("age", 0.5));
        assertThat(read("{}").derating()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"rust, 0.5, is no factor", "worn, 0, out of range", "worn, 1.2, out of range", "worn, \"half\", worn"})
    void sharesThatMakeNoSenseAreRefusedByName(String word, String share, String part) {
        String text = "{\"derating\": {\"" + word + "\": " + share + "}}";

        assertThatThrownBy(() -> read(text))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(word)
                .hasMessageContaining(part);
    }

    @Test
    void ownLoadsStandInThePlaceOfTheStandardOnes() {
        Settings settings = read("""
                {"loads": [
                  {"name": "the two of us", "mass_kg": 171.5, "factor": 1.2, "source": "weighed"},
                  {"name": "tug", "force_kN": 2}
                ]}
                """);

        assertThat(settings.loads())
                .containsExactly(
                        new LoadPreset("the two of us", Optional.of(new Mass(171.5)), Optional.empty(), 1.2, "weighed"),
                        new LoadPreset(
                                "tug",
                                Optional.empty(),
                                Optional.of(Force.kilonewtons(2)),
                                1,
                                "from your settings, which name no source"));
        assertThat(read("{\"loads\": []}").loads()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    {"weights": []}                                            | weights: is a key that is not known here
                    {"loads": 3}                                               | loads: should be a list of objects
                    {"loads": [{"mass_kg": 80}]}                               | loads[0].name: is missing
                    {"loads": [{"name": "a"}]}                                 | neither mass_kg nor force_kN
                    {"loads": [{"name": "a", "mass_kg": 80, "force_kN": 1}]}   | states both
                    {"loads": [{"name": "a", "mass_kg": -1}]}                  | loads[0].mass_kg: is out of range
                    {"loads": [{"name": "a", "mass_kg": 80, "factor": 0.5}]}   | loads[0].factor: is out of range; it should be a number from 1 to 10
                    {"loads": [{"name": "a", "mass_kg": 80, "factr": 2}]}      | loads[0].factr: is a key that is not known here; known are name, mass_kg
                    {"loads": [{"name": "a", "mass_kg": 80}, {"name": "a", "mass_kg": 90}]} | loads[1].name: is the name of another load as well
                    """)
    void whatCannotBeUsedIsRefusedByFileAndKey(String text, String reason) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("mine.json cannot be used: ")
                .hasMessageContaining(reason);
    }

    @Test
    void everythingThatIsWrongIsSaidAtOnce() {
        assertThatThrownBy(() -> read("{\"loads\": [{\"name\": \"a\", \"mass_kg\": 0}], \"more\": 1}"))
                .hasMessageContaining("2 things are wrong")
                .hasMessageContaining("loads[0].mass_kg")
                .hasMessageContaining("more: is a key");
    }

    @Test
    void theStandardLoadsSayWhereTheyAreFrom() {
        List<LoadPreset> loads = Settings.standard(PHRASES).loads();

        assertThat(loads).extracting(LoadPreset::factor).containsExactly(1.0, 1.0, 1.0, 1.5, 2.0);
        assertThat(loads)
                .extracting(load -> load.mass().orElseThrow().kilograms())
                .containsExactly(80.0, 100.0, 200.0, 100.0, 100.0);
        assertThat(loads.get(0).source()).contains("EN 892");
        assertThat(loads.get(3).source()).contains("from memory");
    }

    @Test
    void theBouncingLoadHasTheFactorOfOneThatIsLetGo() {
        LoadPreset bouncing = Settings.standard(PHRASES).loads().get(4);

        assertThat(bouncing.factor()).isEqualTo(SuddenLoad.factor(new Length(0), 5_000, new Force(900)));
    }

    @Test
    void aLoadIsKnownAgainByMassAndFactor() {
        LoadPreset lowered = Settings.standard(PHRASES).loads().get(3);

        assertThat(lowered.is(OptionalDouble.of(100), OptionalDouble.empty(), 1.5))
                .isTrue();
        assertThat(lowered.is(OptionalDouble.of(100), OptionalDouble.empty(), 1))
                .isFalse();
        assertThat(lowered.is(OptionalDouble.of(101), OptionalDouble.empty(), 1.5))
                .isFalse();
        assertThat(lowered.is(OptionalDouble.empty(), OptionalDouble.of(100), 1.5))
                .isFalse();
    }
}
