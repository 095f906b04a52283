package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.text.Width;

/** The help of the commands in a terminal of 80 columns. */
final class HelpTest {

    private static final Pattern COMMAND = Pattern.compile("(?m)^  ([a-z]+)  +[A-Z]");

    @TempDir
    private Path home = Path.of("");

    private String help(String... arguments) {
        return new Shell(home).run(arguments).out();
    }

    private List<String> commands() {
        return COMMAND.matcher(help("--help"))
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void noLineIsWiderThanTheTerminal() {
        assertThat(commands()).hasSizeGreaterThan(20).contains("list", "check");
        for (String command : commands()) {
            assertThat(help(command, "--help").lines()).as(command).allMatch(line -> Width.of(line) <= 80);
        }
        assertThat(help("--help").lines()).allMatch(line -> Width.of(line) <= 80);
    }

    @Test
    void inTheListOfCommandsEachIsOneWholeSentence() {
        String list = help("--help").replaceAll("\n {4,}", " ");

        assertThat(list.lines().filter(line -> COMMAND.matcher(line).find())).allMatch(line -> line.endsWith("."));
    }

    @Test
    void noSentenceOfACommandBreaksOffBeforeTheLineIsFull() {
        for (String command : commands()) {
            String[] blocks = help(command, "--help").split("\n\n", 3);
            List<String> lines = blocks[1].lines().toList();
            for (int i = 0; i + 1 < lines.size(); i++) {
                String line = lines.get(i);
                int next = lines.get(i + 1).split(" ", 2)[0].length();
                assertThat(line.endsWith(".") || line.length() + 1 + next > 79)
                        .as(command + ": " + line)
                        .isTrue();
            }
        }
    }
}
