package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.ledger.Uid;
import thalweg.rig.Fibre;
import thalweg.rig.Kept;
import thalweg.rig.PartCondition;
import thalweg.rig.PointDraft;
import thalweg.rig.StrandTraitsDraft;
import thalweg.route.Part;
import thalweg.route.Part.Hardware;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;
import thalweg.units.Force;

/** What a rig is told of the parts that it counts on. */
class RigStandingTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 27);

    private static Part part(PartKind kind, String material, String placed, double strength, double axial) {
        return new Part(
                Uid.minted(1, new UUID(1, 1)),
                Uid.minted(2, new UUID(2, 2)),
                "V",
                "it",
                kind,
                new Hardware(material, "", "", "", ""),
                placed.isEmpty() ? Optional.empty() : Optional.of(PartialDate.parse(placed)),
                Optional.empty(),
                strength > 0 ? Optional.of(Force.kilonewtons(strength)) : Optional.empty(),
                axial > 0 ? Optional.of(Force.kilonewtons(axial)) : Optional.empty(),
                Optional.empty(),
                "");
    }

    private static PartRecord record(Part part, String... found) {
        List<Entry<Inspection>> entries = new ArrayList<>();
        for (String text : found) {
            String[] words = text.split(" ", -1);
            Inspection inspection = new Inspection(
                    part.uid(),
                    PartialDate.parse(words[0]),
                    "Ana",
                    Optional.of(Condition.valueOf(words[1])),
                    Optional.empty(),
                    Optional.empty(),
                    words.length > 2 ? List.of(Work.valueOf(words[2])) : List.of(),
                    "");
            entries.add(new Entry<>(Uid.minted(entries.size() + 5, new UUID(9, 9)), inspection, "Ana", "now"));
        }
        return PartRecord.of(part, entries);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-05-01 SOUND,  SOUND",
        "2026-05-01 WORN,   WORN",
        "2026-05-01 DOUBTFUL, DOUBTFUL",
        "2026-05-01 UNSAFE, UNSAFE",
        "2026-05-01 GONE,   GONE",
    })
    void theConditionIsThatOfTheInspections(String found, PartCondition condition) {
        PartRecord record = record(part(PartKind.BOLT, "steel", "", 25, 0), found);

        assertThat(RigStanding.condition(record.state())).isEqualTo(condition);
    }

    @Test
    void whereEntriesOfOneDayDisagreeTheWorstCounts() {
        PartRecord record = record(part(PartKind.BOLT, "steel", "", 25, 0), "2026-05-01 SOUND", "2026-05-01 DOUBTFUL");

        assertThat(RigStanding.condition(record.state())).isEqualTo(PartCondition.DOUBTFUL);
    }

    @Test
    void whatNobodyHasSeenIsUnknown() {
        assertThat(RigStanding.condition(
                        record(part(PartKind.BOLT, "", "", 25, 0)).state()))
                .isEqualTo(PartCondition.UNKNOWN);
    }

    @Test
    void aBoltOfTwoStrengthsHasBothAndAnyOtherPointHasItsOne() {
        PointDraft bolt = RigStanding.point(
                PointDraft.of("it", 0, 0, 0), record(part(PartKind.BOLT, "steel", "", 25, 15), "2026-05 WORN"));
        PointDraft tree = RigStanding.point(PointDraft.of("it", 0, 0, 0), record(part(PartKind.TREE, "", "", 20, 0)));

        assertThat(bolt.strengthKilonewtons()).isEmpty();
        assertThat(bolt.traits().bolt().radialKilonewtons()).hasValue(25);
        assertThat(bolt.traits().bolt().axialKilonewtons()).hasValue(15);
        assertThat(bolt.traits().condition()).contains(PartCondition.WORN);
        assertThat(tree.strengthKilonewtons()).hasValue(20);
        assertThat(tree.traits().bolt().radialKilonewtons()).isEmpty();
    }

    /** From the first day that a month or a year may mean: the part may be older, and is not taken for younger. */
    @ParameterizedTest
    @CsvSource({
        "'nylon, tubular', 2024-11-27, '2026-05-01 WORN',          NYLON,     2.0",
        "polyester,        2023,       '2026-05-01 WORN',          POLYESTER, 3.9",
        "UHMWPE,           2019-01,    '2026-05-27 SOUND REPLACED', UHMWPE,   0.5",
    })
    void strandsAreAsOldAsTheyMayBeSinceTheyWerePlaced(
            String material, String placed, String found, Fibre fibre, double years) {
        PartRecord record = record(part(PartKind.WEBBING, material, placed, 0, 0), found);

        StrandTraitsDraft traits = RigStanding.traits(StrandTraitsDraft.NONE, record, TODAY);

        assertThat(traits.fibre()).contains(fibre);
        assertThat(traits.ageYears()).hasValue(years);
        assertThat(traits.kept()).contains(Kept.OUTDOORS);
    }

    @ParameterizedTest
    @CsvSource({"hemp, ''", "'nylon over polyester', 2030"})
    void whatTheWordsDoNotSayIsNotKnown(String material, String placed) {
        StrandTraitsDraft traits =
                RigStanding.traits(StrandTraitsDraft.NONE, record(part(PartKind.CORD, material, placed, 0, 0)), TODAY);

        assertThat(traits.fibre()).isEmpty();
        assertThat(traits.ageYears()).isEqualTo(OptionalDouble.empty());
    }

    @Test
    void onlyOneTextileBetweenPointsIsTakenForTheStrands() {
        PartRecord bolt = record(part(PartKind.BOLT, "", "", 25, 0));
        PartRecord tree = record(part(PartKind.TREE, "", "", 25, 0));
        PartRecord cord = record(part(PartKind.CORD, "nylon", "", 0, 0));
        PartRecord gone = record(part(PartKind.WEBBING, "nylon", "", 0, 0), "2026-05 GONE");

        assertThat(RigStanding.strands(List.of(bolt, gone, cord))).contains(cord);
        assertThat(RigStanding.strands(List.of(bolt, cord, cord))).isEmpty();
        assertThat(RigStanding.strands(List.of(bolt))).isEmpty();
        assertThat(RigStanding.strands(List.of(tree, cord))).isEmpty();
    }
}
