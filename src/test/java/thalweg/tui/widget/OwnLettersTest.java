package thalweg.tui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class OwnLettersTest {

    @Test
    void wordsThatBeginDifferentlyHaveTheirFirstLetters() {
        assertThat(OwnLetters.of(List.of("- none -", "Sound", "worn", "unsafe")))
                .containsExactly("-", "s", "w", "u");
    }

    @Test
    void theLaterOfTwoThatBeginAlikeHasALetterWithWhichNoneBegins() {
        assertThat(OwnLetters.of(List.of("douteux", "dangereux", "absent", "non vu")))
                .containsExactly("d", "g", "a", "n");
    }

    @Test
    void aWordWhoseLettersAreAllTakenKeepsItsFirst() {
        assertThat(OwnLetters.of(List.of("ab", "ba", "aa"))).containsExactly("a", "b", "a");
    }
}
