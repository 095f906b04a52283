package thalweg.house;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A small checkout in a temporary folder with the real scripts in it, and a path of commands on which Java and Maven
 * are stand-ins that note how they were called.
 */
final class Checkout {

    /** What the scripts may use beside the shell, Java and Maven. */
    private static final List<String> ORDINARY = List.of(
            "sh",
            "cat",
            "cksum",
            "dirname",
            "find",
            "grep",
            "kill",
            "mkdir",
            "mv",
            "readlink",
            "rm",
            "script",
            "sed",
            "sleep",
            "stty",
            "tee",
            "touch");

    private static final Duration LIMIT = Duration.ofSeconds(60);

    /** How a command ended and what it printed. */
    record Outcome(int code, String out, String err) {}

    private final Path home;
    private final Path commands;
    private final Path notes;
    private final Map<String, String> environment = new TreeMap<>();

    /**
     * Makes the checkout; Java and Maven still have to be put on the path.
     *
     * @param folder empty one
     */
    Checkout(Path folder) throws IOException {
        home = Files.createDirectories(folder.resolve("a check out"));
        commands = Files.createDirectories(folder.resolve("commands"));
        notes = Files.createDirectories(folder.resolve("notes"));
        Files.createDirectories(home.resolve("src/main/java"));
        Files.writeString(home.resolve("src/main/java/Main.java"), "class Main {}");
        Files.writeString(home.resolve("pom.xml"), "<project/>");
        Files.createDirectories(home.resolve("scripts"));
        for (String script : List.of("thalweg", "test", "bench", "make-large-db")) {
            Files.copy(
                    Path.of("scripts", script),
                    home.resolve("scripts").resolve(script),
                    StandardCopyOption.COPY_ATTRIBUTES);
        }
        for (String command : ORDINARY) {
            withCommand(command, "exec '" + found(command) + "' \"$@\"");
        }
        environment.put("PATH", commands.toString());
        environment.put("HOME", folder.toString());
        environment.put("LANG", "C.UTF-8");
    }

    private static Path found(String command) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> Path.of(folder, command))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new AssertionError("the tests need the command " + command));
    }

    Path home() {
        return home;
    }

    Path script(String name) {
        return home.resolve("scripts").resolve(name);
    }

    Path target(String name) {
        return home.resolve("target").resolve(name);
    }

    /** Puts a shell script on the path. */
    Checkout withCommand(String name, String body) throws IOException {
        write(commands.resolve(name), body);
        return this;
    }

    /** Takes a command off the path. */
    Checkout without(String name) throws IOException {
        Files.deleteIfExists(commands.resolve(name));
        return this;
    }

    private static void write(Path file, String body) throws IOException {
        Files.writeString(file, "#!/bin/sh\n" + body + "\n");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    /** Puts a Java on the path that says this version and notes its arguments before it does as it is told. */
    Checkout withJava(String version, String body) throws IOException {
        return withCommand("java", javaThat(version, body));
    }

    private String javaThat(String version, String body) {
        return """
                if [ "$1" = -version ]; then
                    echo 'openjdk version "VERSION" 2021-09-14' >&2
                    exit 0
                fi
                for argument in "$@"; do
                    case $argument in
                        -XX:ArchiveClassesAtExit=*) printf '%s\\n' "$@" >"${argument#*=}"; exit 0 ;;
                    esac
                done
                printf '%s\\0' "$@" >'NOTES/java'
                BODY
                """.replace("VERSION", version)
                .replace("NOTES", notes.toString())
                .replace("BODY", body);
    }

    /** Makes a home of Java whose version stands in a file, and whose program refuses to say it. */
    Path javaHome(String version) throws IOException {
        Path folder = Files.createDirectories(home.resolveSibling("java home"));
        Files.createDirectories(folder.resolve("bin"));
        Files.writeString(folder.resolve("release"), "IMPLEMENTOR=\"N\"\nJAVA_VERSION=\"" + version + "\"\n");
        write(folder.resolve("bin/java"), "[ \"$1\" != -version ] || exit 1\n" + javaThat(version, ""));
        return folder;
    }

    /** Puts a Maven on the path that makes a jar and its libraries, and notes each call. */
    Checkout withMaven(String body) throws IOException {
        return withCommand("mvn", """
                printf 'called\\n' >>'NOTES/mvn'
                mkdir -p 'HOME/target/lib'
                printf 'jar' >'HOME/target/thalweg-1.jar'
                BODY
                """.replace("NOTES", notes.toString())
                .replace("HOME", home.toString())
                .replace("BODY", body));
    }

    Checkout with(String variable, String value) {
        environment.put(variable, value);
        return this;
    }

    /** Starts the script of the checkout. */
    Outcome start(String... arguments) throws IOException, InterruptedException {
        return run(home, command("thalweg", arguments));
    }

    /** Runs any command to its end. */
    Outcome run(Path folder, List<String> command) throws IOException, InterruptedException {
        return ended(begin(folder, command));
    }

    List<String> command(String script, String... arguments) {
        List<String> command = new ArrayList<>(List.of(script(script).toString()));
        command.addAll(List.of(arguments));
        return command;
    }

    /** Begins a command and lets it run. */
    Process begin(Path folder, List<String> command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectInput(new File("/dev/null"))
                .redirectOutput(notes.resolve("out").toFile())
                .redirectError(notes.resolve("err").toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        return builder.start();
    }

    /** Waits for the end of what was begun. */
    Outcome ended(Process process) throws IOException, InterruptedException {
        if (!process.waitFor(LIMIT.toSeconds(), TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("the script did not end");
        }
        return new Outcome(
                process.exitValue(), Files.readString(notes.resolve("out")), Files.readString(notes.resolve("err")));
    }

    /** The arguments of the last start of Java; empty when there was none. */
    List<String> javaArguments() throws IOException {
        Path note = notes.resolve("java");
        if (!Files.exists(note)) {
            return List.of();
        }
        String text = Files.readString(note);
        return List.of(text.substring(0, text.length() - 1).split("\0", -1));
    }

    /** What reached the program: everything behind the jar. */
    List<String> programArguments() throws IOException {
        List<String> all = javaArguments();
        return all.subList(all.indexOf("-jar") + 2, all.size());
    }

    long builds() throws IOException {
        Path note = notes.resolve("mvn");
        return Files.exists(note) ? Files.readAllLines(note).size() : 0;
    }

    /** Makes a file older than everything else. */
    static void age(Path file) throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(Instant.EPOCH.plusSeconds(1_000_000_000)));
    }

    /** Waits until the file is there. */
    static void await(Path file) throws InterruptedException {
        long end = System.nanoTime() + LIMIT.toNanos();
        while (!Files.exists(file)) {
            if (System.nanoTime() > end) {
                throw new AssertionError("there is still no " + file);
            }
            Thread.sleep(20);
        }
    }
}
