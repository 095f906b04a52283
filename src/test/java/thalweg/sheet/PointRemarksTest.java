package thalweg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thalweg.logbook.StationRecord;
import thalweg.rig.LoadDraft;
import thalweg.rig.PointDraft;
import thalweg.rig.RigDraft;
import thalweg.rig.RigInput;
import thalweg.rig.RigKind;
import thalweg.rig.SetupDraft;
import thalweg.service.LoadPhrases;
import thalweg.testing.SampleRecords;
import thalweg.units.UnitSystem;

final class PointRemarksTest {

    private static final StationRecord RIDEAU = SampleRecords.CANYONS.stream()
            .flatMap(canyon -> canyon.stations().stream())
            .filter(station -> station.station().name().equals("Rideau"))
            .findFirst()
            .orElseThrow();

    private static RigInput rig(PointDraft... points) {
        return new RigDraft(
                        "", List.of(points), LoadDraft.ofMass(90, 0), SetupDraft.of(RigKind.FOCUSED, 0.3, -0.8, 0, 70))
                .check()
                .input()
                .orElseThrow();
    }

    private static List<String> said(RigInput input) {
        return PointRemarks.of(input, RIDEAU, LoadPhrases.english(), UnitSystem.METRIC).stream()
                .map(PointRemarks.Remark::text)
                .toList();
    }

    @Test
    void aDoubtfulPointIsNamedWithTheDayAndAMissingOneAsMissing() {
        assertThat(said(rig(PointDraft.of("left bolt", 0, 0, 0), PointDraft.of("horn", 0.6, 0, 0))))
                .contains(
                        "left bolt: ? doubtful, 2026-09-19; entries disagree",
                        "horn: no part of that name is entered here");
    }

    @Test
    void anotherStrengthAndAnotherPlaceThanEnteredAreSaid() {
        assertThat(said(rig(PointDraft.of("left bolt", 0, 0, 0), PointDraft.of("right bolt", 3, 0, 0))))
                .contains(
                        "left bolt: computed with a strength of unknown, entered with 25.0 kN",
                        "right bolt: computed in another place than it is entered");
    }
}
