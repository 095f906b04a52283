package thalweg.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Saying a sentence in English and in another language. */
class SentenceTest {

    private static final Map<String, String> UPSIDE_DOWN =
            Map.of("{0} holds {1}.", "{1} está en {0}.", "a thing", "cosa");

    private static String said(Sentence sentence) {
        return sentence.said(pattern -> UPSIDE_DOWN.getOrDefault(pattern, pattern));
    }

    @Test
    void gapsMayComeInAnotherOrder() {
        Sentence sentence = Sentence.of("{0} holds {1}.", "Bolt $1", Sentence.word("a thing"));

        assertThat(sentence).hasToString("Bolt $1 holds a thing.");
        assertThat(said(sentence)).isEqualTo("cosa está en Bolt $1.");
    }

    @Test
    void whatNoLanguageKnowsIsSaidInEnglish() {
        assertThat(said(Sentence.of("Nobody's {0} {x}.", 3))).isEqualTo("Nobody's 3 {x}.");
    }

    @Test
    void whatIsPlainIsNotLookedUpNorFilled() {
        assertThat(said(Sentence.plain("a thing"))).isEqualTo("a thing");
        assertThat(said(Sentence.plain("{0}"))).isEqualTo("{0}");
    }

    @Test
    void oneReasonGoesOnInTheLineAndSeveralAreListed() {
        Sentence head = Sentence.of("Unusable:");
        Sentence reason = Sentence.of("a thing");

        assertThat(Sentence.reasons(head, List.of(reason))).hasToString("Unusable: a thing");
        assertThat(said(Sentence.reasons(head, List.of(reason, reason))))
                .isEqualTo("Unusable: 2 things are wrong:\n  cosa\n  cosa");
    }

    @Test
    void aPatternIsGivenAllItsValues() {
        assertThatIllegalArgumentException().isThrownBy(() -> Sentence.of("{0} and {1}", "one"));
    }
}
