package thalweg.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page on tables has every field. */
final class CsvPageTest {

    @ParameterizedTest
    @EnumSource(TableKind.class)
    void everyFieldStandsUnderItsKind(TableKind kind) throws IOException {
        String page = Files.readString(Path.of("src", "docs", "csv.md"));
        String chapter = page.split("### " + kind.word() + "\n", 2)[1].split("\n##", 2)[0];

        for (Field field : kind.fields()) {
            assertThat(chapter).contains("`" + field.word() + "`");
        }
    }
}
