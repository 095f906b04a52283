package thalweg.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class LanguageTest {

    @Test
    void theFirstVariableThatIsSetSaysTheLanguage() {
        assertThat(Language.asked(Map.of("LANG", "es_ES.UTF-8"))).isEqualTo(Language.ES);
        assertThat(Language.asked(Map.of("LANG", "es_ES.UTF-8", "LC_MESSAGES", "fr_CH")))
                .isEqualTo(Language.FR);
        assertThat(Language.asked(Map.of("LANG", "es_ES.UTF-8", "LC_MESSAGES", "fr", "LC_ALL", "C")))
                .isEqualTo(Language.EN);
        assertThat(Language.asked(Map.of("LANG", "fr_FR@euro", "LC_ALL", ""))).isEqualTo(Language.FR);
    }

    @Test
    void anEnvironmentThatAsksForNothingKnownGetsEnglish() {
        assertThat(Language.asked(Map.of())).isEqualTo(Language.EN);
        assertThat(Language.asked(Map.of("LANG", "C.UTF-8"))).isEqualTo(Language.EN);
        assertThat(Language.asked(Map.of("LANG", "POSIX"))).isEqualTo(Language.EN);
        assertThat(Language.asked(Map.of("LANG", "de_AT.UTF-8"))).isEqualTo(Language.EN);
        assertThat(Language.asked(Map.of("LANG", "frr_DE"))).isEqualTo(Language.EN);
    }

    @Test
    void wordsAreReadAsTheyAreWritten() {
        assertThat(Language.of("fr")).contains(Language.FR);
        assertThat(Language.of("FR")).isEmpty();
        assertThat(Language.of("french")).isEmpty();
        assertThat(Language.words()).isEqualTo("en, es, fr");
    }
}
