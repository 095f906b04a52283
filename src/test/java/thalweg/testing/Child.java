package thalweg.testing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The program as a child process between pipes, as another program would talk to it. It is never waited for without end. */
public final class Child implements AutoCloseable {

    /** A machine with much else to do may take this long for what takes a moment [s]. */
    private static final long PATIENCE = 60;

    private final Process process;
    private final Path errors;
    private final BufferedReader answers;

    /**
     * @param home folder for everything that the child keeps
     * @param program with a main method
     * @param heapMegabytes that it may use
     */
    public Child(Path home, Class<?> program, int heapMegabytes, String... arguments) throws IOException {
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path", ""));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Dslf4j.internal.verbosity=ERROR",
                "-Xmx" + heapMegabytes + "m",
                "-cp",
                classPath,
                program.getName()));
        command.addAll(List.of(arguments));
        this.errors = home.resolve("errors.txt");
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(errors.toFile());
        builder.environment().put("XDG_DATA_HOME", home.resolve("data").toString());
        builder.environment().put("XDG_STATE_HOME", home.resolve("state").toString());
        builder.environment().put("XDG_CACHE_HOME", home.resolve("cache").toString());
        builder.environment().put("XDG_CONFIG_HOME", home.resolve("config").toString());
        this.process = builder.start();
        this.answers = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** Where to write what the child reads; closing it is the end of its input. */
    public OutputStream input() {
        return process.getOutputStream();
    }

    /** Writes a line and sends it off. */
    public void say(String line) throws IOException {
        input().write((line + "\n").getBytes(StandardCharsets.UTF_8));
        input().flush();
    }

    /** The next line that the child says; the child is ended where it says nothing for long. */
    public String answer() throws IOException {
        Thread watch = new Thread(() -> {
            try {
                Thread.sleep(TimeUnit.SECONDS.toMillis(PATIENCE));
                process.destroyForcibly();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        watch.setDaemon(true);
        watch.start();
        String line = answers.readLine();
        watch.interrupt();
        if (line == null) {
            throw new IOException("nothing came; on standard error: " + errors());
        }
        return line;
    }

    /** Lets go of what the child says, as a reader does that has seen enough. */
    public void hangUp() throws IOException {
        answers.close();
    }

    /** What it said beside its answers. */
    public String errors() throws IOException {
        return Files.readString(errors);
    }

    /** Its exit code, when it has ended by itself. */
    public int code() throws IOException, InterruptedException {
        if (!process.waitFor(PATIENCE, TimeUnit.SECONDS)) {
            throw new IOException("it does not end; on standard error: " + errors());
        }
        return process.exitValue();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
