package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.fault.Sentence;
import thalweg.progress.StoppedException;
import thalweg.service.ListCanyons;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

final class ImportWalkTest {

    private static final Key SEND = Key.ctrl('s');

    @TempDir
    private Path folder;

    private String file(byte[] content) throws IOException {
        return Files.write(folder.resolve("in.json"), content).toString();
    }

    private List<String> backups() {
        Path backups = folder.resolve("backups");
        if (!Files.isDirectory(backups)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(backups)) {
            return files.map(one -> one.getFileName().toString()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void recordsAreTakenInAfterALookAndACopyOfWhatWasThere() throws IOException {
        String file = file(Samples.bytes());
        try (Walk walk = Walk.emptyIn(folder, 24, 80)) {
            walk.type("i").type(file).press(SEND);
            assertThat(walk.screen()).contains("Found in 2 canyons:", "things are new", "take it in");
            assertThat(new ListCanyons(walk.session()).count()).isZero();

            walk.press(SEND);
            assertThat(walk.screen()).contains("Taken in.", "Éclusaune");
            assertThat(backups()).singleElement().asString().contains("-before-import-");
        }
    }

    @Test
    void whatIsHereAlreadyIsNotTakenInTwice() throws IOException {
        String file = file(Samples.bytes());
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("i").type(file).press(SEND).press(SEND);

            assertThat(walk.screen()).contains("There is nothing in this file to take in.");
            assertThat(backups()).isEmpty();
        }
    }

    @Test
    void whatWouldChangeIsSaidFieldByField() throws IOException {
        String file = file(new String(Samples.bytes(), StandardCharsets.UTF_8)
                .replace("\"Porte\"", "\"Portal\"")
                .getBytes(StandardCharsets.UTF_8));
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("i").type(file).press(SEND);

            assertThat(walk.screen()).contains("would change", "Porte -> Portal");
        }
    }

    @Test
    void aBrokenFileIsToldLineByLineAndAnotherCanBeNamed() throws IOException {
        String file = file("{\"thalweg\": 1, \"canyons\": [{\"name\": 3}]}".getBytes(StandardCharsets.UTF_8));
        try (Walk walk = Walk.emptyIn(folder, 24, 80)) {
            walk.type("i").type(file).press(SEND);
            assertThat(walk.screen()).contains("Nothing is taken from this file.", "wrong with it:");

            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Records from a file");
            walk.press(Key.ctrl('u')).type(folder + "/nowhere.json").press(SEND);
            assertThat(walk.screen()).contains("There is no file");
        }
    }

    @Test
    void aFileOfWaypointsIsSentToItsKey() throws IOException {
        String file = file("<?xml version=\"1.0\"?><gpx/>".getBytes(StandardCharsets.UTF_8));
        try (Walk walk = Walk.emptyIn(folder, 24, 120)) {
            walk.type("i").type(file).press(SEND);

            assertThat(walk.screen()).contains("is a file of waypoints (GPX or GeoJSON)");
        }
    }

    @Test
    void aStoppedImportLeavesNothing() throws IOException {
        String file = file(Samples.bytes());
        try (Walk walk = Walk.emptyIn(folder, 24, 80)) {
            walk.type("i").type(file).press(SEND).watchedBy((done, all) -> {
                if (all > 0 && done > all / 2 && done < 1_000) {
                    throw new StoppedException(Sentence.of("It was stopped; nothing of it remains."));
                }
            });
            walk.press(SEND);
            assertThat(walk.screen()).contains("It was stopped; nothing of it remains.", "Take in ");
            assertThat(new ListCanyons(walk.session()).count()).isZero();

            walk.watchedBy((done, all) -> {}).press(SEND);
            assertThat(new ListCanyons(walk.session()).count()).isEqualTo(2);
        }
    }

    @Test
    void howFarItIsIsSaidAndEscapeAsksToStop() throws IOException {
        String file = file(Samples.bytes());
        try (Walk walk = Walk.emptyIn(folder, 24, 80)) {
            walk.type("i").type(file).press(SEND).tellUnanswered(new Message.KeyPressed(SEND));
            walk.told(new Message.Progressed(new Effect.Stop(), 30, 60));
            assertThat(walk.screen()).contains("50 % done; Esc stops it.");

            walk.tellUnanswered(new Message.KeyPressed(Key.of(Key.Named.ESCAPE)));
            assertThat(walk.asked()).anyMatch(Effect.Stop.class::isInstance);
            walk.answerAll();
            assertThat(walk.screen()).doesNotContain("% done");
        }
    }

    @Test
    void anImportThatIsLeftGoesOnAndSaysWhenItIsDone() throws IOException {
        String file = file(Samples.bytes());
        try (Walk walk = Walk.emptyIn(folder, 24, 80)) {
            walk.type("i").type(file).press(SEND).tellUnanswered(new Message.KeyPressed(SEND));
            walk.tellUnanswered(new Message.KeyPressed(Key.of(Key.Named.ENTER)));
            assertThat(walk.screen()).contains("No canyons yet.");

            walk.answerAll();
            assertThat(walk.screen()).contains("Taken in. The database as it was before is kept at");
        }
    }

    @Test
    void aBackupIsWrittenBesideTheDatabase() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.type("b");

            assertThat(walk.screen()).contains("Backed up to", "Éclusaune");
            assertThat(backups()).hasSize(1);
        }
    }

    @Test
    void aStoppedBackupLeavesNoFile() {
        try (Walk walk = Walk.keeping(folder)) {
            walk.watchedBy((done, all) -> {
                throw new StoppedException(Sentence.of("It was stopped; nothing of it remains."));
            });
            walk.type("b");

            assertThat(walk.screen()).contains("It was stopped; nothing of it remains.");
            assertThat(backups()).isEmpty();
        }
    }

    @Test
    void anEmptyDatabaseLeadsToTheDemo() {
        try (Walk walk = Walk.emptyIn(folder, 24, 80)) {
            walk.type("v");

            assertThat(walk.left()).isEqualTo("demo");
        }
    }

    @Test
    void readingOnlyAnEmptyDatabaseSaysWhyNothingCanBeEntered() {
        Walk.emptyIn(folder, 24, 80).close();
        try (Walk walk = Walk.keeping(folder, Clock.systemUTC(), true, 24, 80)) {
            assertThat(walk.screen()).contains("open for reading only", "v goes to the demo");

            walk.type("i");
            assertThat(walk.screen()).contains("The database is open for reading only.");
        }
    }

    @Test
    void everyStateDrawsAtEverySize() throws IOException {
        String file = file(Samples.bytes());
        try (Walk walk = Walk.emptyIn(folder, 24, 80)) {
            Sizes.drawAll(walk, "an empty database");
            walk.resize(24, 80).type("i");
            Sizes.drawAll(walk, "the form");
            walk.resize(24, 80).type(file).press(SEND);
            Sizes.drawAll(walk, "the plan");
            walk.resize(24, 80).tellUnanswered(new Message.KeyPressed(SEND));
            walk.told(new Message.Progressed(new Effect.Stop(), 1_000_000, 0));
            Sizes.drawAll(walk, "being taken in");
        }
        try (Walk walk = Walk.keeping(folder)) {
            walk.tellUnanswered(new Message.KeyPressed(Key.of('b')));
            Sizes.drawAll(walk, "a backup");
        }
    }
}
