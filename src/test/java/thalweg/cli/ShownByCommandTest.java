package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsWriter;
import thalweg.service.MakeSheet;
import thalweg.testing.PdfText;
import thalweg.testing.ShownFields;

/** Every field of every record comes in by a file, and is shown, written on every sheet, and written to a file again. */
final class ShownByCommandTest {

    private static final String[] ON_SHEETS = {"canyon", "obstacle", "station", "anchor", "part", "inspection", "note"};

    @TempDir
    private Path home = Path.of("");

    static IntStream seeds() {
        return IntStream.range(0, 12);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyFieldIsShown(int seed) throws IOException {
        Shell shell = new Shell(home);
        ShownFields fields = new ShownFields(seed);
        String written = RecordsWriter.write(List.of(Parcel.of(fields.record())));
        Path file = Files.writeString(home.resolve("records.json"), written);
        assertThat(shell.run("import", file.toString(), "--accept").code()).isZero();
        String canyon = fields.record().canyon().uid().text();
        String station = fields.record().stations().get(0).station().uid().text();

        assertThat(shell.run("export").out()).isEqualTo(written);
        assertThat(fields.missingIn(shell.run("show", canyon).out(), "canyon", "obstacle"))
                .isEmpty();
        assertThat(fields.missingIn(
                        shell.run("show", station).out(), "station", "anchor", "part", "inspection", "note"))
                .isEmpty();
        Path paper = home.resolve("sheet.pdf");
        shell.run("sheet", canyon, "--out", paper.toString());
        assertThat(fields.missingOnPaper(PdfText.unbroken(Files.readAllBytes(paper)), ON_SHEETS))
                .isEmpty();
        for (MakeSheet.Format format : MakeSheet.Format.values()) {
            if (format == MakeSheet.Format.PDF) {
                continue;
            }
            String sheet = shell.run("sheet", canyon, "--as", format.name().toLowerCase(Locale.ROOT))
                    .out();
            assertThat(fields.missingIn(sheet, ON_SHEETS)).as(format.name()).isEmpty();
        }
    }
}
