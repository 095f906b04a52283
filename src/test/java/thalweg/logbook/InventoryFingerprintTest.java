package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import thalweg.ledger.Uid;
import thalweg.logbook.InventoryFingerprint.Change;
import thalweg.logbook.InventoryFingerprint.Kind;
import thalweg.route.HoldsAlone;
import thalweg.route.Part;
import thalweg.route.Part.Hardware;
import thalweg.route.PartKind;
import thalweg.route.PartPlace;
import thalweg.route.PartialDate;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;
import thalweg.units.Force;
import thalweg.units.Length;

class InventoryFingerprintTest {

    private static final Uid PART = Uid.minted(1, new UUID(1, 1));
    private static final Uid ANCHOR = Uid.minted(2, new UUID(2, 2));
    private static final Hardware STEEL = new Hardware("steel", "10 x 90 mm", "EN 959", "Nobody & Co", "b1");
    private static final PartPlace PLACE = new PartPlace(new Length(0.35), new Length(-0.1), new Length(0));

    private static Part part(
            PartKind kind,
            Hardware hardware,
            String placed,
            PartPlace place,
            double strength,
            double axial,
            Optional<HoldsAlone> holdsAlone) {
        return new Part(
                PART,
                ANCHOR,
                "V",
                "left bolt",
                kind,
                hardware,
                Optional.of(PartialDate.parse(placed)),
                Optional.of(place),
                Optional.of(new Force(strength)),
                Optional.of(new Force(axial)),
                holdsAlone,
                "");
    }

    private static final Part BOLT =
            part(PartKind.BOLT, STEEL, "2019-06", PLACE, 25_000, 15_000, Optional.of(HoldsAlone.YES));

    private static PartRecord record(Part part, String... inspections) {
        List<Entry<Inspection>> entries = new ArrayList<>();
        for (String text : inspections) {
            String[] words = text.split(" ", -1);
            entries.add(new Entry<>(
                    Uid.minted(entries.size(), new UUID(9, 9)),
                    new Inspection(
                            part.uid(),
                            PartialDate.parse(words[0]),
                            "Ana",
                            Optional.of(Condition.valueOf(words[1])),
                            Optional.empty(),
                            Optional.empty(),
                            words.length > 2 ? List.of(Work.valueOf(words[2])) : List.of(),
                            ""),
                    "Ana",
                    "now"));
        }
        return PartRecord.of(part, entries);
    }

    private static List<Change> changes(PartRecord before, PartRecord after) {
        return InventoryFingerprint.of(List.of(before)).changesTo(InventoryFingerprint.of(List.of(after)));
    }

    private static Part otherwise(Hardware hardware) {
        return part(PartKind.BOLT, hardware, "2019-06", PLACE, 25_000, 15_000, Optional.of(HoldsAlone.YES));
    }

    @Test
    void everyChangeThatMayMatterIsSeen() {
        Optional<HoldsAlone> yes = Optional.of(HoldsAlone.YES);
        Map<String, Part> changed = new LinkedHashMap<>();
        changed.put("kind", part(PartKind.PITON, STEEL, "2019-06", PLACE, 25_000, 15_000, yes));
        changed.put("material", otherwise(new Hardware("inox", "10 x 90 mm", "EN 959", "Nobody & Co", "b1")));
        changed.put("size", otherwise(new Hardware("steel", "12 x 90 mm", "EN 959", "Nobody & Co", "b1")));
        changed.put("standard", otherwise(new Hardware("steel", "10 x 90 mm", "", "Nobody & Co", "b1")));
        changed.put("maker", otherwise(new Hardware("steel", "10 x 90 mm", "EN 959", "Other", "b1")));
        changed.put("batch", otherwise(new Hardware("steel", "10 x 90 mm", "EN 959", "Nobody & Co", "b2")));
        changed.put("shifted fields", otherwise(new Hardware("", "steel", "10 x 90 mm", "EN 959", "Nobody & Co")));
        changed.put("placed", part(PartKind.BOLT, STEEL, "2019-06-01", PLACE, 25_000, 15_000, yes));
        for (int axis = 0; axis < 3; axis++) {
            PartPlace moved = new PartPlace(
                    new Length(0.35 + (axis == 0 ? 0.01 : 0)),
                    new Length(-0.1 + (axis == 1 ? 0.01 : 0)),
                    new Length(axis == 2 ? 0.01 : 0));
            changed.put("axis " + axis, part(PartKind.BOLT, STEEL, "2019-06", moved, 25_000, 15_000, yes));
        }
        changed.put("strength", part(PartKind.BOLT, STEEL, "2019-06", PLACE, 25_001, 15_000, yes));
        changed.put("axial strength", part(PartKind.BOLT, STEEL, "2019-06", PLACE, 25_000, 15_001, yes));
        changed.put("swapped strengths", part(PartKind.BOLT, STEEL, "2019-06", PLACE, 15_000, 25_000, yes));
        changed.put("belief", part(PartKind.BOLT, STEEL, "2019-06", PLACE, 25_000, 15_000, Optional.of(HoldsAlone.NO)));
        changed.put("belief lost", part(PartKind.BOLT, STEEL, "2019-06", PLACE, 25_000, 15_000, Optional.empty()));

        changed.forEach((what, part) -> assertThat(changes(record(BOLT), record(part)))
                .as(what)
                .containsExactly(new Change(PART, Kind.CHANGED)));
    }

    @Test
    void conditionAndReplacementAreSeen() {
        PartRecord sound = record(BOLT, "2020-05-01 SOUND");

        assertThat(changes(record(BOLT), sound)).hasSize(1);
        assertThat(changes(sound, record(BOLT, "2020-05-01 SOUND", "2021-05-01 WORN")))
                .hasSize(1);
        assertThat(changes(sound, record(BOLT, "2020-05-01 SOUND REPLACED"))).hasSize(1);
    }

    @Test
    void anInspectionThatFindsTheSameAgainIsNoChange() {
        assertThat(changes(
                        record(BOLT, "2020-05-01 SOUND"), record(BOLT, "2020-05-01 SOUND", "2021-05-01 SOUND CLEANED")))
                .isEmpty();
    }

    @Test
    void namesNotesAndOrderAreNoChange() {
        Part renamed = new Part(
                PART,
                ANCHOR,
                "zz",
                "bolt 1",
                BOLT.kind(),
                BOLT.hardware(),
                BOLT.placed(),
                BOLT.place(),
                BOLT.strength(),
                BOLT.axialStrength(),
                BOLT.holdsAlone(),
                "a note");

        assertThat(changes(record(BOLT), record(renamed))).isEmpty();
    }

    @Test
    void partsThatCameAndWentAreNamed() {
        RandomRecords records = new RandomRecords(1, Fill.EVERYTHING);
        PartRecord bolt = record(BOLT);
        PartRecord other = record(records.things().part(Uid.minted(3, new UUID(3, 3)), ANCHOR, "W"));

        assertThat(InventoryFingerprint.of(List.of(bolt)).changesTo(InventoryFingerprint.of(List.of(bolt, other))))
                .containsExactly(new Change(other.part().uid(), Kind.ADDED));
        assertThat(InventoryFingerprint.of(List.of(bolt, other)).changesTo(InventoryFingerprint.of(List.of(other))))
                .containsExactly(new Change(PART, Kind.REMOVED));
    }

    @Test
    void theOrderOfTheListMakesNoDifference() {
        RandomRecords records = new RandomRecords(5, Fill.SOMETHING);
        List<PartRecord> parts = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            parts.add(record(records.things().part(records.uid(), ANCHOR, "V")));
        }
        InventoryFingerprint fingerprint = InventoryFingerprint.of(parts);
        Collections.shuffle(parts, new Random(1));

        assertThat(InventoryFingerprint.of(parts)).isEqualTo(fingerprint);
        assertThat(InventoryFingerprint.of(parts).changesTo(fingerprint)).isEmpty();
        assertThat(fingerprint.hashes())
                .hasSize(10)
                .allSatisfy((uid, hash) -> assertThat(hash).matches("[0-9a-f]{16}"));
    }

    /** Worked out apart from this program, with Python's hashlib, and kept: another value would make every stored analysis look out of date. */
    @Test
    void theFingerprintOfAPartNeverChanges() {
        assertThat(InventoryFingerprint.of(List.of(record(BOLT, "2020-05-01 SOUND REPLACED")))
                        .hashes())
                .containsExactly(Map.entry(PART, "4b1badb95d48d683"));
    }
}
