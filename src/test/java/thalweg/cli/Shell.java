package thalweg.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import thalweg.service.Folders;
import thalweg.text.Language;

/** Runs commands as a shell would, on 25 November 2026, with a home folder of its own. */
final class Shell {

    private final Path home;
    private final Clock clock = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    private final Language language;

    Shell(Path home) {
        this(home, Language.EN);
    }

    private Shell(Path home, Language language) {
        this.home = home;
        this.language = language;
    }

    /** The same where the environment asks for that language. */
    Shell speaking(Language other) {
        return new Shell(home, other);
    }

    /**
     * What a command left behind.
     *
     * @param code its exit code
     * @param out what it printed as its result
     * @param err what it said beside that
     */
    record Ran(int code, String out, String err) {}

    Path home() {
        return home;
    }

    Folders folders() {
        return Folders.of(Map.of("HOME", home.toString()));
    }

    Ran run(String... arguments) {
        return answer("", false, arguments);
    }

    /** Runs with somebody at the keyboard who types that. */
    Ran typing(String typed, String... arguments) {
        return answer(typed, true, arguments);
    }

    private Ran answer(String typed, boolean somebody, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Cli.run(
                List.of(arguments),
                new Surrounds(
                        folders(),
                        clock,
                        "ada",
                        new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        () -> somebody,
                        language,
                        "1.2.3"));
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
