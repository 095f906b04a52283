package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.fault.InputException;

final class ReadFileTest {

    private static final Map<String, String> HOME = Map.of("HOME", "/home/nobody");

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', textBlock = """
        a.gpx,             a.gpx
        ` a b.gpx `,       a b.gpx
        ~,                 /home/nobody
        ~/a.gpx,           /home/nobody/a.gpx
        ~/a/~b.gpx,        /home/nobody/a/~b.gpx
        ~ana/a.gpx,        ~ana/a.gpx
        a~/b.gpx,          a~/b.gpx
        '/tmp/a b.gpx',    /tmp/a b.gpx
        "~/a.gpx",         /home/nobody/a.gpx
        'a.gpx,            'a.gpx
        ',                 '
        滝.gpx,            滝.gpx
        """)
    void aPathIsReadAsPeopleTypeIt(String typed, String path) {
        assertThat(ReadFile.typed(typed, HOME)).isEqualTo(Path.of(path));
    }

    @Test
    void whatIsNoNameOfAFileIsRefused() {
        assertThatThrownBy(() -> ReadFile.typed(" ", HOME))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("empty");
        assertThatThrownBy(() -> ReadFile.typed("a\0b", HOME))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("no name of a file");
        assertThatThrownBy(() -> ReadFile.typed("/dev/zero", HOME))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("is a device or a pipe; name a file.");
    }

    @Test
    void whatCannotBeReadIsSaidInOneSentence(@TempDir Path folder) throws IOException {
        assertThatThrownBy(() -> ReadFile.bytes(folder))
                .isInstanceOf(InputException.class)
                .hasMessage(folder + " is a folder; name a file in it.");
        Path missing = folder.resolve("missing.gpx");
        assertThatThrownBy(() -> ReadFile.bytes(missing))
                .isInstanceOf(InputException.class)
                .hasMessage("There is no file " + missing + "; check the path.");
        assertThat(ReadFile.bytes(Files.writeString(missing, "x"))).containsExactly('x');
    }
}
