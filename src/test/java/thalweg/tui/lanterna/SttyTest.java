package thalweg.tui.lanterna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import thalweg.tui.runtime.TerminalPort;

class SttyTest {

    @Test
    void theSizeIsRowsAndColumns() {
        assertThat(Stty.size("24 80\n")).contains(new TerminalPort.Size(24, 80));
        assertThat(Stty.size("1 250\n")).contains(new TerminalPort.Size(1, 250));
    }

    @Test
    void aTerminalThatDoesNotKnowItsSizeHasTheUsualOne() {
        assertThat(Stty.size("0 0\n")).contains(new TerminalPort.Size(24, 80));
        assertThat(Stty.size("50 0\n")).contains(new TerminalPort.Size(24, 80));
    }

    @Test
    void anythingElseIsNoSize() {
        assertThat(Stty.size("")).isEmpty();
        assertThat(Stty.size("stty: 'standard input': Inappropriate ioctl for device\n"))
                .isEmpty();
    }

    @Test
    void whatIsNoTerminalIsRefused() {
        Stty stty = new Stty(Path.of("/dev/null"));

        assertThatThrownBy(stty::enterRaw).isInstanceOf(IOException.class);
        assertThat(stty.size()).isEmpty();
    }
}
