package thalweg.tui.lanterna;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import thalweg.settings.Theme;

class TerminalOptionsTest {

    private static final TerminalOptions USUAL = new TerminalOptions(true, Theme.TERMINAL, false, false);

    @Test
    void anEnvironmentThatSaysNothingMeansMouseAndColours() {
        assertThat(TerminalOptions.of(Map.of())).isEqualTo(USUAL);
    }

    @Test
    void noColorCountsWhenItIsNotEmpty() {
        assertThat(TerminalOptions.of(Map.of("NO_COLOR", "1"))).isEqualTo(USUAL.themed(Theme.PLAIN));
        assertThat(TerminalOptions.of(Map.of("NO_COLOR", ""))).isEqualTo(USUAL);
    }

    @Test
    void networkAndTmuxAreKnownByTheirVariables() {
        assertThat(TerminalOptions.of(Map.of("SSH_CONNECTION", "192.0.2.1 5 192.0.2.2 22"))
                        .remote())
                .isTrue();
        assertThat(TerminalOptions.of(Map.of("SSH_TTY", "/dev/pts/1")).remote()).isTrue();
        assertThat(TerminalOptions.of(Map.of("TMUX", "/tmp/tmux-1000/default,1,0"))
                        .insideTmux())
                .isTrue();
    }

    @Test
    void theMouseCanBeLeftToTheTerminal() {
        assertThat(USUAL.withoutMouse()).isEqualTo(new TerminalOptions(false, Theme.TERMINAL, false, false));
    }
}
