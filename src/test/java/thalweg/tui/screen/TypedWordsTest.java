package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.logbook.CanyonMeasure;
import thalweg.logbook.Condition;
import thalweg.logbook.Trip;
import thalweg.text.Language;
import thalweg.tui.core.Surroundings;

final class TypedWordsTest {

    @ParameterizedTest
    @CsvSource({
        "FR, ..usé, ..worn",
        "FR, douteux..Dangereux, doubtful..unsafe",
        "FR, doubtful, doubtful",
        "ES, PELIGROSO, unsafe",
        "ES, sanote, sanote"
    })
    void conditionsAreReadInTheLanguageOfTheScreenAndInEnglish(Language language, String typed, String read) {
        try (Walk walk = Walk.sample(24, 80, language)) {
            assertThat(TypedWords.whole("condition", Condition.class, walk.around())
                            .read(typed))
                    .isEqualTo(read);
        }
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void whatIsShownIsReadBackAsItWas(Language language) {
        try (Walk walk = Walk.sample(24, 80, language)) {
            Surroundings around = walk.around();
            for (Condition condition : Condition.values()) {
                String english = condition.name().toLowerCase(Locale.ROOT) + "..";
                TypedWords<Condition> words = TypedWords.whole("condition", Condition.class, around);
                assertThat(words.read(words.shown(english))).isEqualTo(english);
                assertThat(CanyonMeasure.WORST
                                .read(words.read(words.shown(english)))
                                .isAny())
                        .isFalse();
            }
        }
    }

    @Test
    void aRoleIsReadBehindItsCommaAndANameStaysAsItIs() {
        try (Walk walk = Walk.sample(24, 80, Language.ES)) {
            TypedWords<Trip.Role> roles = TypedWords.listed("trip_role", Trip.Role.class, walk.around());

            assertThat(roles.read("Ana, guía, 62 kg")).isEqualTo("Ana, lead, 62 kg");
            assertThat(roles.read("Ana; Guía")).isEqualTo("Ana; lead");
            assertThat(roles.read("Guía, capaz")).isEqualTo("Guía, able");
            assertThat(roles.read("\"Paz, capaz\", guía")).isEqualTo("\"Paz, capaz\", lead");
            assertThat(roles.shown("Ana, lead, 62 kg")).isEqualTo("Ana, guía, 62 kg");
        }
    }
}
