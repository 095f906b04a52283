package thalweg.testing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * A real terminal for tests: a server of tmux of its own, with an interactive shell in it. Nothing is waited for without
 * an end.
 */
public final class Tmux implements AutoCloseable {

    /** A machine with much else to do may take this long for what takes a moment [s]. */
    private static final long PATIENCE = 30;

    private final Path folder;
    private final Path socket;

    /**
     * @param environment of the shell, "NAME=value"
     */
    public Tmux(Path folder, int columns, int rows, String... environment) throws IOException, InterruptedException {
        this.folder = folder;
        // Beside the test's other files, so that it goes with them; a path of a socket is short.
        this.socket = folder.resolve("tmux");
        List<String> start =
                new ArrayList<>(List.of("new-session", "-d", "-x", "" + columns, "-y", "" + rows, "-n", "t"));
        start.addAll(List.of("env", "PS1=ready> ", "ENV="));
        start.addAll(List.of(environment));
        start.addAll(List.of("sh", "-i"));
        run(start.toArray(new String[0]));
        await("ready>");
        run("set-option", "-s", "set-clipboard", "on");
    }

    /**
     * Starts a program of this build as the start script does: beside a shell that waits for it. The settings of the
     * terminal are noted before and after.
     *
     * @param program with a main method
     * @param arguments as a shell reads them
     */
    public void start(Class<?> program, String arguments) throws IOException {
        runScript("""
                exec 3<&0
                stty -g >'%1$s/before'
                %2$s %3$s <&3 &
                echo $! >'%1$s/pid'
                wait $!
                code=$?
                stty -g >'%1$s/after'
                echo "ended $code"
                """.formatted(folder, java(program), arguments));
    }

    /**
     * Starts a command as a person does. The settings of the terminal are noted before and after; where {@link #signal} is
     * to find the program, that leaves its number in the file pid.
     *
     * @param command as a shell reads it
     */
    public void startCommand(String command) throws IOException {
        runScript("""
                stty -g >'%1$s/before'
                %2$s
                code=$?
                stty -g >'%1$s/after'
                echo "ended $code"
                """.formatted(folder, command));
    }

    /** The command that starts a program of this build, without its arguments, as a shell reads it. */
    public static String java(Class<?> program) {
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path", ""));
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        return "'%s' -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp '%s' %s"
                .formatted(java, classPath, program.getName());
    }

    private void runScript(String script) throws IOException {
        Files.writeString(folder.resolve("run.sh"), script);
        text("sh " + folder.resolve("run.sh"));
        keys("Enter");
    }

    /** Sends keys by tmux's names. */
    public void keys(String... names) throws IOException {
        run(Stream.concat(Stream.of("send-keys"), Arrays.stream(names)).toArray(String[]::new));
    }

    /** Sends a text as it is. */
    public void text(String text) throws IOException {
        run("send-keys", "-l", text);
    }

    /** Has the window another size. */
    public void resize(int columns, int rows) throws IOException {
        run("resize-window", "-x", "" + columns, "-y", "" + rows);
    }

    /** Sends a signal to the program. */
    public void signal(String name) throws IOException {
        String pid = Files.readString(folder.resolve("pid")).strip();
        finish(new ProcessBuilder("kill", "-s", name, pid));
    }

    /** What the terminal shows, a line a row. */
    public String screen() throws IOException {
        return run("capture-pane", "-p");
    }

    /** What the terminal shows, when it shows a text. */
    public String await(String text) throws InterruptedException {
        String[] shown = {""};
        boolean came = within(() -> {
            shown[0] = quietScreen();
            return shown[0].contains(text);
        });
        if (!came) {
            throw new AssertionError("\"" + text + "\" never came; the screen shows\n" + shown[0]);
        }
        return shown[0];
    }

    private String quietScreen() {
        try {
            return screen();
        } catch (IOException e) {
            return "no screen: " + e.getMessage();
        }
    }

    private static boolean within(BooleanSupplier condition) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE);
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() - end > 0) {
                return false;
            }
            Thread.sleep(30);
        }
        return true;
    }

    /** The settings of the terminal as they were noted: "before", "after" or by another name. */
    public String settings(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    /** Runs a command of tmux and returns what it says. */
    public String run(String... command) throws IOException {
        List<String> all = new ArrayList<>(List.of("tmux", "-u", "-S", socket.toString(), "-f", "/dev/null"));
        all.addAll(List.of(command));
        return finish(new ProcessBuilder(all));
    }

    private static String finish(ProcessBuilder command) throws IOException {
        Process process = command.redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        try {
            if (process.waitFor(PATIENCE, TimeUnit.SECONDS) && process.exitValue() == 0) {
                return said;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        throw new IOException(String.join(" ", command.command()) + ": " + said);
    }

    @Override
    public void close() throws IOException {
        run("kill-server");
    }
}
