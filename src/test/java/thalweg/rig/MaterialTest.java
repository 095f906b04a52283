package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** Lengths to cut, added up by hand. */
class MaterialTest {

    /** A ring bend with two tails of 75 mm. */
    private static final double BEND = TakeUp.RING_BEND_METRES + 0.15;

    /** Legs of 0.5 m each, from points 0.6 m apart. */
    private static RigDraft pair() {
        return Rigs.focused(
                List.of(PointDraft.of("A", -0.3, 0, 0), PointDraft.of("B", 0.3, 0, 0)),
                new Vector3(0, -0.4, 0),
                1,
                0,
                0);
    }

    private static RigMaterial material(RigDraft draft) {
        return Rigs.answer(draft).material();
    }

    private static double total(RigDraft draft) {
        return material(draft).total().metres();
    }

    @Test
    void aFocusedLoopSpansEachLegTwiceAndPassesTheMasterKnotWithEachStrand() {
        RigMaterial material = material(pair());

        assertThat(material.pieces()).hasSize(1);
        assertThat(material.total().metres()).isCloseTo(4 * 0.5 + 4 * TakeUp.MASTER_KNOT_METRES + BEND, within(1e-9));
        assertThat(material.connectors()).isEqualTo(3);
    }

    @Test
    void slackIsCutToo() {
        RigDraft slack = pair().withRig(pair().rig().withSlack(Map.of("B", 0.1)));

        assertThat(total(slack) - total(pair())).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void singleStrandsHaveALoopTiedInEachEnd() {
        RigMaterial material = material(pair().withRig(pair().rig().withStrands(1)));

        assertThat(material.pieces()).hasSize(2);
        assertThat(material.total().metres()).isCloseTo(2 * (0.5 + 2 * TakeUp.END_LOOP_METRES), within(1e-9));
    }

    @Test
    void threeStrandsAreALoopAndAStrand() {
        RigMaterial material = material(pair().withRig(pair().rig().withStrands(3)));

        assertThat(material.pieces()).extracting(RigMaterial.Piece::count).containsExactly(1, 1, 1, 1);
        assertThat(material.total().metres())
                .isCloseTo(2 * (1.0 + BEND + 0.5 + 2 * TakeUp.END_LOOP_METRES), within(1e-9));
        assertThat(material(pair().withRig(pair().rig().withStrands(4))).pieces())
                .extracting(RigMaterial.Piece::count)
                .containsExactly(2, 2);
    }

    @Test
    void aSlidingLoopSpansEachWayTwice() {
        RigDraft sliding = pair().withRig(SetupDraft.of(RigKind.SLIDING, 0, -0.4, 0, 70));

        assertThat(total(sliding)).isCloseTo(2.0 + BEND, within(1e-9));
    }

    @Test
    void aTriangleGoesOnceAround() {
        RigDraft triangle = pair().withRig(SetupDraft.of(RigKind.LOOP, 0, -0.4, 0, 70));

        assertThat(total(triangle)).isCloseTo(0.5 + 0.5 + 0.6 + BEND, within(1e-9));
    }

    @Test
    void aSinglePointTakesOneLoopAndTwoConnectors() {
        RigMaterial material = material(new RigDraft(
                "",
                List.of(PointDraft.of("tree", 0, 0, 0)),
                LoadDraft.ofForce(1, 0, 0),
                SetupDraft.of(RigKind.SINGLE, 0, -0.5, 0, 70)));

        assertThat(material.total().metres()).isCloseTo(1.0 + BEND, within(1e-9));
        assertThat(material.connectors()).isEqualTo(2);
    }

    @Test
    void knotsAreCountedAsTheyAreTied() {
        assertThat(material(pair()).knots())
                .as("a bend and the knot that gathers")
                .isEqualTo(2);
        assertThat(material(pair().withRig(pair().rig().withStrands(1))).knots())
                .as("a loop in each end of two strands")
                .isEqualTo(4);
        assertThat(material(pair().withRig(pair().rig().withStrands(3))).knots())
                .as("on each leg a bend and two end loops")
                .isEqualTo(6);
        assertThat(material(pair().withRig(SetupDraft.of(RigKind.SLIDING, 0, -0.4, 0, 70)))
                        .knots())
                .as("a bend")
                .isEqualTo(1);
        LimitDraft limits = new LimitDraft(Optional.of(List.of(0.1, 0.1)), Optional.empty(), OptionalLong.empty());
        assertThat(material(pair().withRig(SetupDraft.of(RigKind.LIMITED, 0, -0.4, 0, 70)
                                .withLimits(limits, 0.2)))
                        .knots())
                .as("a bend and two limiters")
                .isEqualTo(3);
    }

    @Test
    void aLengthToCutIsNeverRoundedDown() {
        assertThat(RigMaterial.print(new Length(4.201), UnitSystem.METRIC)).isEqualTo("4.21 m");
        assertThat(RigMaterial.print(new Length(4.2), UnitSystem.METRIC)).isEqualTo("4.20 m");
        assertThat(RigMaterial.print(new Length(3.049), UnitSystem.IMPERIAL)).isEqualTo("10.1 ft");
    }

    @Test
    void everyLayoutTakesMoreThanItsStrandsSpan() {
        RandomRigs.ofEachKind(3, 10).forEach(input -> {
            double spans = LayStrands.of(input).strands().stream()
                    .mapToDouble(strand -> strand.count() * strand.unloadedMetres())
                    .sum();

            assertThat(FindMaterial.of(input).total().metres()).isGreaterThan(spans + BEND - 1e-9);
        });
    }
}
