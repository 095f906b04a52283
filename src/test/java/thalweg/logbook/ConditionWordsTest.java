package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.service.LoadPhrases;
import thalweg.text.Phrases;
import thalweg.text.Width;

class ConditionWordsTest {

    private static final Phrases PHRASES = LoadPhrases.english();

    @Test
    void whereThereIsRoomNothingIsLeftOut() {
        Standing standing = new Standing(Optional.of(Condition.DOUBTFUL), 1, 2);

        assertThat(ConditionWords.told(standing, 80, PHRASES)).isEqualTo(ConditionWords.told(standing, PHRASES));
    }

    @Test
    void inTwentyCellsEveryConditionAndBothCountsAreThere() {
        for (Condition worst : Condition.values()) {
            if (worst != Condition.GONE) {
                String told = ConditionWords.told(new Standing(Optional.of(worst), 3, 9), 20, PHRASES);

                assertThat(Width.of(told)).isLessThanOrEqualTo(20);
                assertThat(told)
                        .startsWith("x 3, ")
                        .endsWith(", . 9")
                        .contains(PHRASES.say("condition." + worst.name().toLowerCase(Locale.ROOT)));
            }
        }
    }

    @Test
    void whatHasOneWordKeepsIt() {
        assertThat(ConditionWords.told(Standing.NOTHING, 3, PHRASES)).isEqualTo(". never inspected");
        assertThat(ConditionWords.told(new Standing(Optional.empty(), 2, 0), 3, PHRASES))
                .isEqualTo("x gone");
    }
}
