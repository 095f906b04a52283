package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.draft.Draft;
import thalweg.draft.DraftEntry;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.draft.DraftRig;
import thalweg.draft.KeptDraft;
import thalweg.fault.StoreException;
import thalweg.ledger.Uid;
import thalweg.rig.LoadDraft;
import thalweg.rig.PointDraft;
import thalweg.rig.RigDraft;
import thalweg.rig.RigKind;
import thalweg.rig.SetupDraft;
import thalweg.units.UnitSystem;

final class DraftFolderTest {

    private static final Uid PART = new Uid(new UUID(1, 2));
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private final List<String> log = new ArrayList<>();

    private DraftFolder drafts(String database) {
        return DraftFolder.of(folder.resolve("drafts"), folder.resolve(database), CLOCK, log::add);
    }

    private static Draft draft(DraftKey key, String typed) {
        return new Draft(
                key,
                "Part left bolt",
                "Station Porte",
                UnitSystem.IMPERIAL,
                "label",
                Map.of("label", new DraftEntry("Label", " ", typed, typed), "note", new DraftEntry("Note", "", "", "")),
                Optional.empty());
    }

    @Test
    void whatWasKeptIsFoundToTheLetterBlanksToo() {
        Draft draft = draft(DraftKey.of(DraftKind.PART, PART), " 滝\n\"two\"\tlines \u0007");
        drafts("records.db").keep(draft);

        KeptDraft found = drafts("records.db").find(draft.key()).orElseThrow();
        assertThat(found.draft()).isEqualTo(draft);
        assertThat(found.at()).isEqualTo(CLOCK.instant());
        assertThat(found.ageSeconds()).isZero();
    }

    @Test
    void aRigThatCannotBeComputedIsKeptAsItIs() {
        RigDraft rig = new RigDraft(
                "half a rig",
                List.of(PointDraft.of("A", 0.1, 0.2, 0)),
                LoadDraft.ofForce(3, 12, 5),
                SetupDraft.of(RigKind.FOCUSED, 0, -1, 0, 70));
        Draft draft = new Draft(
                DraftKey.anew(DraftKind.RIG, PART),
                "Rig",
                "",
                UnitSystem.METRIC,
                "",
                Map.of(),
                Optional.of(new DraftRig(rig, Set.of("LOAD", "field load"))));
        drafts("records.db").keep(draft);

        assertThat(drafts("records.db").find(draft.key()).orElseThrow().draft()).isEqualTo(draft);
    }

    @Test
    void draftsOnAnotherDatabaseAreNotFound() {
        DraftKey key = DraftKey.of(DraftKind.PART, PART);
        drafts("records.db").keep(draft(key, "a"));

        assertThat(drafts("other.db").find(key)).isEmpty();
        assertThat(drafts("other.db").all()).isEmpty();
    }

    @Test
    void aDatabaseHasItsDraftsHoweverItIsNamed() throws IOException {
        Files.createFile(folder.resolve("records.db"));
        Files.createSymbolicLink(folder.resolve("link.db"), folder.resolve("records.db"));
        DraftKey key = DraftKey.of(DraftKind.PART, PART);
        drafts("records.db").keep(draft(key, "a"));

        assertThat(drafts("link.db").find(key)).isPresent();
    }

    @Test
    void somethingNewAndTheThingItIsInHaveDraftsOfTheirOwn() {
        DraftFolder drafts = drafts("records.db");
        drafts.keep(draft(DraftKey.of(DraftKind.PART, PART), "a"));
        drafts.keep(draft(DraftKey.anew(DraftKind.PART, PART), "b"));

        assertThat(drafts.all()).hasSize(2);
        drafts.drop(DraftKey.of(DraftKind.PART, PART));
        assertThat(drafts.all()).hasSize(1);
    }

    @Test
    void theNewestIsListedFirst() {
        for (int minute = 0; minute < 3; minute++) {
            Clock then = Clock.offset(CLOCK, Duration.ofMinutes(minute));
            DraftFolder.of(folder.resolve("drafts"), folder.resolve("records.db"), then, log::add)
                    .keep(draft(DraftKey.of(DraftKind.PART, new Uid(new UUID(1, minute))), "typed " + minute));
        }

        assertThat(drafts("records.db").all())
                .extracting(kept -> kept.draft().changes().get(0).is())
                .containsExactly("typed 2", "typed 1", "typed 0");
    }

    @Test
    void whatCannotBeReadIsLoggedAndLeftAlone() throws IOException {
        DraftFolder drafts = drafts("records.db");
        for (String broken : List.of(
                "",
                "{",
                "[]",
                "{\"draft\": 2}",
                "{\"draft\": 1, \"kind\": \"canoe\", \"new\": true}",
                "{\"draft\": 1, \"kind\": \"part\", \"new\": false}")) {
            DraftKey key = DraftKey.of(DraftKind.PART, PART);
            drafts.keep(draft(key, "a"));
            Path file;
            try (Stream<Path> files = Files.walk(folder.resolve("drafts"))) {
                file = files.filter(Files::isRegularFile).findFirst().orElseThrow();
            }
            Files.writeString(file, broken);
            log.clear();

            assertThat(drafts.find(key)).as(broken).isEmpty();
            assertThat(log).as(broken).singleElement().asString().contains("cannot be read and is passed over");
            assertThat(file).content().isEqualTo(broken);
        }
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws IOException {
        Files.writeString(folder.resolve("drafts"), "a file where the folder should be");

        assertThatThrownBy(() -> drafts("records.db").keep(draft(DraftKey.of(DraftKind.PART, PART), "a")))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("drafts");
    }
}
