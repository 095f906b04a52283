package thalweg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

final class WatchedOutputTest {

    private static WatchedOutput failing(String reason) {
        WatchedOutput output = new WatchedOutput(new OutputStream() {
            @Override
            public void write(int oneByte) throws IOException {
                throw new IOException(reason);
            }
        });
        PrintStream out = new PrintStream(output, false, StandardCharsets.UTF_8);
        out.print("a result");
        out.flush();
        return output;
    }

    @Test
    void aFullDiskIsNotSwallowed() {
        assertThat(failing("No space left on device").lostSomething()).isTrue();
    }

    @Test
    void aReaderThatHasSeenEnoughLosesNothing() {
        assertThat(failing("Broken pipe").lostSomething()).isFalse();
        assertThat(new WatchedOutput(OutputStream.nullOutputStream()).lostSomething())
                .isFalse();
    }
}
