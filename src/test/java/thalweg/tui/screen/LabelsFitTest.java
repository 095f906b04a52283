package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.service.LoadPhrases;
import thalweg.text.Language;
import thalweg.text.Phrases;
import thalweg.text.Width;
import thalweg.tui.widget.OwnLetters;

/** What is short in English is short in every language, so that nothing is cut at 80 columns. */
final class LabelsFitTest {

    private static final Phrases ENGLISH = LoadPhrases.english();

    /** Of a terminal of the classic size, beside the scroll bar. */
    private static final int COLUMNS = 78;

    private static final int HELP_ROWS = 2;

    /** A form gives its labels two fifths of the columns at most. */
    private static final int LABEL = 32;

    /** The narrowest column in which a list shows a condition with its mark. */
    private static final int CONDITION = 20;

    @ParameterizedTest
    @EnumSource(Language.class)
    void theHelpOfAFieldHasTwoLines(Language language) {
        Map<String, Integer> longer = new TreeMap<>();
        LoadPhrases.of(language).all().forEach((key, phrase) -> {
            int rows = rows(phrase);
            if (key.startsWith("help.") && rows > Math.max(HELP_ROWS, rows(ENGLISH.say(key, "", "")))) {
                longer.put(key, rows);
            }
        });

        assertThat(longer).isEmpty();
    }

    private static int rows(String text) {
        return Width.wrap(text, COLUMNS).size();
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void labelsOfFormsAreWhole(Language language) {
        Map<String, String> longer = new TreeMap<>();
        LoadPhrases.of(language).all().forEach((key, phrase) -> {
            boolean label = ENGLISH.all().containsKey("help." + key);
            if (label
                    && Width.of(phrase) > Math.max(LABEL, Width.of(ENGLISH.all().getOrDefault(key, "")))) {
                longer.put(key, phrase);
            }
        });

        assertThat(longer).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void aConditionFitsTheNarrowestColumn(Language language) {
        LoadPhrases.of(language).all().forEach((key, phrase) -> {
            if (key.matches("condition\\.[a-z]+")) {
                assertThat(Width.of("+ " + phrase)).as(key).isLessThanOrEqualTo(CONDITION);
            }
        });
    }

    @ParameterizedTest
    @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
    void theHelpOfAQuickChoiceNamesTheLetterOfEveryCondition(Language language) {
        try (Walk walk = Walk.sample(24, 80, language)) {
            List<String> labels = FoundChoices.foundLabels(walk.around().say("form.visit.skipped"), walk.around());
            List<String> letters = OwnLetters.of(labels);

            assertThat(letters).doesNotHaveDuplicates();
            for (int i = 1; i < labels.size(); i++) {
                assertThat(walk.around().say("help.form.quick")).contains(letters.get(i) + " " + labels.get(i));
            }
        }
    }

    @Test
    void theLettersOfConditionsInEnglishAreTheFirstOnes() {
        try (Walk walk = Walk.sample(24, 80)) {
            List<String> labels = FoundChoices.foundLabels(walk.around().say("form.visit.skipped"), walk.around());

            assertThat(OwnLetters.of(labels)).containsExactly("-", "s", "w", "d", "u", "g", "n");
            assertThat(walk.around().say("help.form.quick")).startsWith("s, w, d, u, g or n (not seen)");
        }
    }
}
