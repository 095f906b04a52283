package thalweg.tui.lanterna;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.tui.runtime.TerminalPort;

/**
 * The settings of a terminal, by way of the command {@code stty}: Java itself cannot reach them.
 *
 * @see "POSIX.1-2017, stty"
 */
final class Stty {

    /**
     * Every byte at once and as it was typed, none echoed, none taken for a signal or for flow control. Output is left
     * as it was.
     */
    private static final String RAW =
            "-icanon -echo -isig -iexten -ixon -ixoff -icrnl -inlcr -igncr -istrip min 1 time 0";

    /** What a terminal has that does not tell its size, on a serial line for one. */
    private static final TerminalPort.Size USUAL = new TerminalPort.Size(24, 80);

    private static final Pattern ERASE = Pattern.compile("\\berase = (\\^.)");

    /**
     * What was found.
     *
     * @param settings all of them, in a form that only {@code stty} reads
     * @param size of the terminal
     * @param backspaceIsCtrlH whether its Backspace sends what Ctrl-H does
     */
    record Found(String settings, TerminalPort.Size size, boolean backspaceIsCtrlH) {}

    private final Path device;

    /**
     * @param device the terminal, "/dev/tty" for the one the program runs in
     */
    Stty(Path device) {
        this.device = device;
    }

    /** Asks for everything and switches to raw keys, by one process. */
    Found enterRaw() throws IOException {
        String answer = sh("stty -g && stty size && stty -a && stty " + RAW);
        String[] lines = answer.split("\n", 3);
        if (lines.length < 3) {
            throw new IOException("stty said: " + answer);
        }
        Matcher erase = ERASE.matcher(lines[2]);
        boolean ctrlH = erase.find() && erase.group(1).equals("^H");
        return new Found(lines[0].strip(), size(lines[1]).orElse(USUAL), ctrlH);
    }

    /** The size at this moment; empty when the terminal is gone. */
    Optional<TerminalPort.Size> size() {
        try {
            return size(sh("stty size"));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Two numbers; where they are 0 the terminal does not know. */
    static Optional<TerminalPort.Size> size(String answer) {
        Matcher numbers = Pattern.compile("(\\d{1,5}) (\\d{1,5})").matcher(answer.strip());
        if (!numbers.matches()) {
            return Optional.empty();
        }
        int rows = Integer.parseInt(numbers.group(1));
        int columns = Integer.parseInt(numbers.group(2));
        return Optional.of(rows == 0 || columns == 0 ? USUAL : new TerminalPort.Size(rows, columns));
    }

    /** Puts the settings back as they were found. */
    void restore(String settings) throws IOException {
        sh("stty " + settings);
    }

    /**
     * Stops this process and all that were started with it, a start script for one, as Ctrl-Z does; returns when they
     * are continued. Where nobody could continue them the system ignores it.
     */
    void stopGroup() throws IOException {
        sh("kill -s TSTP 0");
    }

    private String sh(String command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder("sh", "-c", command)
                .redirectInput(device.toFile())
                .redirectErrorStream(true);
        // The answer is read, so it must not come in the person's language.
        builder.environment().put("LC_ALL", "C");
        Process process = builder.start();
        String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        try {
            if (process.waitFor() != 0) {
                throw new IOException(command + ": " + answer.strip());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(command, e);
        }
        return answer;
    }
}
