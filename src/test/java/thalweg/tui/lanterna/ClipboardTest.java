package thalweg.tui.lanterna;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ClipboardTest {

    @Test
    void theTextIsSentAsBase64OfUtf8() {
        // Source: printf 'é' | base64, GNU coreutils 9.1.
        assertThat(Clipboard.sequence("é", false)).contains("\033]52;c;w6k=\007");
    }

    @Test
    void insideTmuxItIsAlsoSentWrappedWithEveryEscDoubled() {
        assertThat(Clipboard.sequence("é", true))
                .contains("\033]52;c;w6k=\007" + "\033Ptmux;\033\033]52;c;w6k=\007\033\\");
    }

    @Test
    void theLongestTextMakesASequenceOfAHundredThousandBytes() {
        assertThat(Clipboard.sequence("x".repeat(Clipboard.LONGEST), false).orElseThrow())
                .hasSize(100_000);
        assertThat(Clipboard.sequence("x".repeat(Clipboard.LONGEST + 1), false)).isEmpty();
        assertThat(Clipboard.sequence("é".repeat(Clipboard.LONGEST / 2 + 1), false))
                .as("bytes count, not characters")
                .isEmpty();
    }
}
