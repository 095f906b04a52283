package thalweg.tui.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** Keys and how they are named. */
class KeyTest {

    @Test
    void keysAreNamedAsPeopleCallThem() {
        assertThat(Key.of('q').print()).isEqualTo("q");
        assertThat(Key.of('Q').print()).isEqualTo("Q");
        assertThat(Key.of(' ').print()).isEqualTo("Space");
        assertThat(Key.ctrl('s').print()).isEqualTo("Ctrl-S");
        assertThat(Key.of(Key.Named.PAGE_DOWN).print()).isEqualTo("PgDn");
        assertThat(Key.shift(Key.Named.TAB).print()).isEqualTo("Shift-Tab");
        assertThat(new Key(Key.Named.CHARACTER, 'b', false, true, false).print())
                .isEqualTo("Alt-b");
    }

    @Test
    void onlyPlainCharactersWrite() {
        assertThat(Key.of(0x1F600).writes()).isTrue();
        assertThat(Key.of(0x1F600).text()).isEqualTo("\uD83D\uDE00");
        assertThat(Key.ctrl('a').writes()).isFalse();
        assertThat(Key.of(Key.Named.ENTER).writes()).isFalse();
        assertThat(new Key(Key.Named.CHARACTER, 'b', false, true, false).writes())
                .isFalse();
    }

    @Test
    void aKeyIsNamedOrWritesACharacter() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Key(Key.Named.UP, 'a', false, false, false));
        assertThatIllegalArgumentException().isThrownBy(() -> Key.of(0));
    }
}
