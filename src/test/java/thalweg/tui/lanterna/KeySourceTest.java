package thalweg.tui.lanterna;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thalweg.tui.core.Message;

/** Reading from a pipe with a name, which waits as a terminal does. */
@Timeout(60)
class KeySourceTest {

    @TempDir
    Path folder;

    private RandomAccessFile keyboard;
    private KeySource keys;

    @BeforeEach
    void open() throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        keyboard = new RandomAccessFile(pipe.toFile(), "rw");
        keys = new KeySource(pipe, new KeyDecoder(false), false);
    }

    @AfterEach
    void close() throws IOException {
        keys.close();
        keyboard.close();
    }

    private void type(String text) throws IOException {
        keyboard.write(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void whatIsTypedIsRead() throws IOException {
        type("jé\033[A");

        assertThat(Typed.print(keys.read())).isEqualTo("j é Up");
    }

    @Test
    void escAloneBecomesAKeyWithoutAnotherOne() throws IOException {
        type("\033");

        assertThat(Typed.print(keys.read())).isEqualTo("Esc");
    }

    @Test
    void aSequenceThatIsBrokenOffHoldsNothingUp() throws Exception {
        type("\033[1;");
        CompletableFuture<List<Message>> read = CompletableFuture.supplyAsync(keys::read, KeySourceTest::inThread);

        type("\033");

        assertThat(read.get(20, TimeUnit.SECONDS)).hasSize(1);
    }

    @Test
    void closingWakesWhoWaitsForAKey() throws Exception {
        CompletableFuture<List<Message>> read = CompletableFuture.supplyAsync(keys::read, KeySourceTest::inThread);
        Thread.sleep(50);

        keys.close();

        assertThat(read.get(10, TimeUnit.SECONDS)).isEmpty();
        assertThat(keys.read()).isEmpty();
    }

    private static void inThread(Runnable task) {
        Thread thread = new Thread(task);
        thread.setDaemon(true);
        thread.start();
    }
}
