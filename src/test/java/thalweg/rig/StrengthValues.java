package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is published of bolts, connectors, knots and old textile, held against what the calculator takes of them. */
final class StrengthValues {

    private static final String BOLT = "EN 959:2018, rock anchor 25 kN radial, 15 kN axial";
    private static final String INTERACTION = "1 / (F cos b / 25 + F sin b / 15), strengths of EN 959:2018";
    private static final String CONNECTOR = "EN 12275:2013, class ";
    private static final String SLINGS = "DAV Panorama 4/2015, p. 60";
    private static final String OUTDOORS = "WSTDA outdoor exposure test 1997 to 2004";

    private StrengthValues() {}

    static List<OutsideValue> all() {
        List<OutsideValue> values = new ArrayList<>();
        values.add(OutsideValue.seen("bolt under 1 kN across its axis: ratio", BOLT, "25", "", 1e-6, () -> bolt(0)));
        values.add(OutsideValue.seen("bolt under 1 kN along its axis: ratio", BOLT, "15", "", 1e-6, () -> bolt(90)));
        for (int slant : List.of(30, 45, 60)) {
            double b = Math.toRadians(slant);
            double exact = 1 / (Math.cos(b) / 25 + Math.sin(b) / 15);
            values.add(OutsideValue.derived(
                    "bolt under 1 kN, " + slant + "° out of the rock: ratio",
                    INTERACTION,
                    exact,
                    "",
                    exact * 1e-4,
                    () -> bolt(slant)));
        }
        values.add(connector(ConnectorClass.B, ConnectorLoad.LONG, "20"));
        values.add(connector(ConnectorClass.B, ConnectorLoad.OPEN, "7"));
        values.add(connector(ConnectorClass.B, ConnectorLoad.ACROSS, "7"));
        values.add(connector(ConnectorClass.H, ConnectorLoad.OPEN, "6"));
        values.add(connector(ConnectorClass.K, ConnectorLoad.LONG, "25"));
        values.add(connector(ConnectorClass.K, ConnectorLoad.OPEN, "8"));
        values.add(connector(ConnectorClass.X, ConnectorLoad.LONG, "18"));
        values.add(connector(ConnectorClass.X, ConnectorLoad.OPEN, "5"));
        values.add(connector(ConnectorClass.Q, ConnectorLoad.LONG, "25"));
        values.add(connector(ConnectorClass.Q, ConnectorLoad.ACROSS, "10"));
        values.add(OutsideValue.seen(
                "UHMWPE sling of 22 kN, under 3 years: left",
                SLINGS + "; printed as just under",
                "20",
                "kN",
                1e-6,
                () -> 22 * aged(Fibre.UHMWPE, Kept.INDOORS, 2).nominal()));
        values.add(OutsideValue.seen(
                "UHMWPE sling of 22 kN, 4 years: left",
                SLINGS,
                "16",
                "kN",
                1e-6,
                () -> 22 * aged(Fibre.UHMWPE, Kept.INDOORS, 4).nominal()));
        values.add(OutsideValue.seen(
                "nylon, 36 months outdoors: lost at least",
                OUTDOORS,
                "0.50",
                "",
                1e-6,
                () -> 1 - aged(Fibre.NYLON, Kept.OUTDOORS, 3).high()));
        values.add(OutsideValue.seen(
                "nylon, 36 months outdoors: lost at most",
                OUTDOORS,
                "0.60",
                "",
                1e-6,
                () -> 1 - aged(Fibre.NYLON, Kept.OUTDOORS, 3).low()));
        values.add(OutsideValue.seen(
                "polyester, 2 years outdoors: lost",
                OUTDOORS + "; printed as near",
                "0.30",
                "",
                1e-6,
                () -> 1 - aged(Fibre.POLYESTER, Kept.OUTDOORS, 2).nominal()));
        return values;
    }

    private static StrengthFactor aged(Fibre fibre, Kept kept, double years) {
        return TextileAge.of(fibre, kept, years).factor().orElseThrow();
    }

    private static OutsideValue connector(ConnectorClass kind, ConnectorLoad way, String holds) {
        return OutsideValue.seen(
                "connector at the master under 1 kN, class " + kind + ", " + way.word() + ": ratio",
                CONNECTOR + kind + ", seen second-hand",
                holds,
                "",
                1e-6,
                () -> ratio(
                        one(
                                PointDraft.of("A", 0, 0, 0),
                                0,
                                StrandTraitsDraft.NONE.withConnector(Optional.of(kind.pulled(way)))),
                        RigInput.MASTER_CONNECTOR));
    }

    private static double bolt(double slant) {
        PointDraft point = PointDraft.of("A", 0, 0, 0).withTraits(PointTraitsDraft.NONE.withBolt(BoltDraft.of(25, 15)));
        return ratio(one(point, slant, StrandTraitsDraft.NONE), "A");
    }

    private static RigDraft one(PointDraft point, double lean, StrandTraitsDraft traits) {
        return new RigDraft(
                "",
                List.of(point),
                LoadDraft.ofForce(1, 0, 0).withLeanOut(lean),
                SetupDraft.of(RigKind.SINGLE, 0, -0.6, 0, 70).withTraits(traits));
    }

    private static double ratio(RigDraft draft, String part) {
        return Rigs.answer(draft).safety().stream()
                .filter(one -> one.part().equals(part))
                .findFirst()
                .orElseThrow()
                .steady()
                .ratio()
                .orElseThrow();
    }
}
