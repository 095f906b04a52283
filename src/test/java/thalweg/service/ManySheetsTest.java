package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.Finding;
import thalweg.logbook.SheetGiven;
import thalweg.progress.Progress;
import thalweg.progress.StoppedException;
import thalweg.sheet.Paper;
import thalweg.units.UnitSystem;

final class ManySheetsTest {

    @TempDir
    private Path folder = Path.of("");

    private static List<CanyonRow> canyons(Session session) {
        return new ListCanyons(session).found(Finding.ALL).rows();
    }

    private int write(Session session, boolean overwrite, Progress progress) {
        return write(session, canyons(session), overwrite, progress);
    }

    private int write(Session session, List<CanyonRow> canyons, boolean overwrite, Progress progress) {
        return new ManySheets(session, new MakeSheet(session, LoadPhrases.english(), "1.2.3"))
                .write(
                        canyons,
                        new SheetOrder(MakeSheet.Format.TEXT, Paper.A4, UnitSystem.METRIC, Optional.empty(), folder),
                        folder,
                        overwrite,
                        progress);
    }

    private List<String> files() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void withTwoMore(Desk desk) {
        ImportRecords records = new ImportRecords(desk.session());
        String more = """
                {"format": "thalweg records", "version": 2, "canyons": [{"name": "Ущелье"}, {"name": "Probe"}]}
                """;
        records.accept(
                records.preview("more", more.getBytes(StandardCharsets.UTF_8)).plan());
    }

    @Test
    void everySheetIsNumberedAndNotedInOneChange() throws IOException {
        try (Desk desk = new Desk()) {
            withTwoMore(desk);
            int changes = new ListChanges(desk.session()).latest(100).size();

            write(desk.session(), false, Progress.UNWATCHED);

            List<SheetGiven> noted = new ListGiven(desk.session())
                    .of(Optional.empty()).stream()
                            .map(given -> given.entry().content())
                            .toList();
            assertThat(noted).extracting(SheetGiven::number).containsExactlyInAnyOrder(1L, 2L, 3L);
            for (SheetGiven sheet : noted) {
                assertThat(Files.readString(folder.resolve(sheet.file())))
                        .contains("sheet " + sheet.mark().print());
            }
            assertThat(new ListChanges(desk.session()).latest(100)).hasSize(changes + 1);
        }
    }

    @Test
    void everyCanyonGetsASheetUnderANameOfItsOwn() {
        try (Desk desk = new Desk()) {
            withTwoMore(desk);

            assertThat(write(desk.session(), false, Progress.UNWATCHED)).isEqualTo(3);

            assertThat(files())
                    .hasSize(3)
                    .allMatch(file -> file.endsWith(".txt"))
                    .anyMatch(file -> file.startsWith("ущелье-"))
                    .filteredOn(file -> file.startsWith("probe-"))
                    .hasSize(2);
        }
    }

    @Test
    void whatIsThereIsReplacedOnlyWhereThatIsSaid() throws IOException {
        try (Desk desk = new Desk()) {
            withTwoMore(desk);
            write(desk.session(), false, Progress.UNWATCHED);
            Path first = folder.resolve(files().get(0));
            Files.writeString(first, "mine");

            assertThatThrownBy(() -> write(desk.session(), false, Progress.UNWATCHED))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("3 of these files are there already");
            assertThat(first).hasContent("mine");

            assertThat(write(desk.session(), true, Progress.UNWATCHED)).isEqualTo(3);
            assertThat(Files.readString(first)).isNotEqualTo("mine");
        }
    }

    @Test
    void nothingRemainsOfWorkThatWasStopped() {
        try (Desk desk = new Desk()) {
            withTwoMore(desk);
            Progress stopping = (done, all) -> {
                assertThat(all).isEqualTo(3);
                if (done == 2) {
                    throw new StoppedException(Sentence.of("It was stopped; nothing of it remains."));
                }
            };

            assertThatThrownBy(() -> write(desk.session(), false, stopping)).isInstanceOf(StoppedException.class);

            assertThat(files()).isEmpty();
        }
    }

    @Test
    void withoutCanyonOrFolderNothingIsWritten() {
        try (Desk desk = new Desk()) {
            assertThatThrownBy(() -> write(desk.session(), List.of(), false, Progress.UNWATCHED))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("nothing was written");
            assertThat(files()).isEmpty();

            List<CanyonRow> canyons = canyons(desk.session());
            folder = folder.resolve("none");
            assertThatThrownBy(() -> write(desk.session(), canyons, false, Progress.UNWATCHED))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("There is no folder");
        }
    }
}
