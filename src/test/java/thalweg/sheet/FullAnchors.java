package thalweg.sheet;

import java.util.List;
import java.util.Optional;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.Work;
import thalweg.route.AnchorRole;
import thalweg.route.HoldsAlone;
import thalweg.route.Part;
import thalweg.route.PartKind;

/** Anchors of the invented canyon: new and old, good and bad, contradictory, sought in vain and never looked at. */
final class FullAnchors {

    private static final Optional<HoldsAlone> YES = Optional.of(HoldsAlone.YES);

    private static final Optional<HoldsAlone> NO = Optional.of(HoldsAlone.NO);

    private final Things things;

    FullAnchors(Things things) {
        this.things = things;
    }

    AnchorRecord main() {
        Part left = things.known(
                things.part("left bolt", PartKind.BOLT),
                new Part.Hardware("stainless steel", "10 x 90 mm", "EN 959", "Invented Works", "B-17"),
                "2019-06",
                Things.at(0, 0, 0),
                "25 kN",
                "15 kN",
                YES,
                "Cap marked in yellow.");
        Part right = things.known(
                things.part("right bolt", PartKind.BOLT),
                new Part.Hardware("stainless steel", "10 x 90 mm", "", "", ""),
                "2019-06-14",
                Things.at(0.35, -0.1, 0.05),
                "25 kN",
                "",
                YES,
                "");
        Part webbing = things.known(
                things.part("webbing between the bolts", PartKind.WEBBING),
                new Part.Hardware("nylon", "25 mm", "", "", ""),
                "2019",
                Optional.empty(),
                "17.8 kN",
                "",
                Optional.empty(),
                "");
        return things.anchor(
                AnchorRole.MAIN,
                "",
                "Reach it from the ledge, clipped in.",
                things.record(
                        left,
                        things.seen(left, "2026-09-12", "Ana Kovač", Condition.SOUND, "Torque checked."),
                        things.seen(left, "2024-07", "Club outing", Condition.SOUND, ""),
                        things.seen(left, "2022", "", Condition.WORN, "Rust on the hanger, wiped off."),
                        things.seen(left, "2020-08-01", "Club outing", Condition.SOUND, "Entry beyond the third day.")),
                things.record(
                        right,
                        things.seen(right, "2026-09-12", "Ana Kovač", Condition.SOUND, ""),
                        things.seen(right, "2026-09-12", "Bruno Sample", Condition.DOUBTFUL, "Hanger turns."),
                        things.notSeen(right, "2026-10-03", "Bruno Sample", "Under foam.")),
                things.record(
                        webbing,
                        things.worked(
                                webbing,
                                "2024-07",
                                "Club outing",
                                Condition.UNSAFE,
                                Condition.SOUND,
                                List.of(Work.REPLACED, Work.CLEANED),
                                "Old one cut through halfway."),
                        things.seen(webbing, "2026-09-12", "Ana Kovač", Condition.WORN, "")));
    }

    AnchorRecord highWater() {
        Part thread = things.known(
                things.part("thread", PartKind.THREAD), Part.Hardware.UNKNOWN, "", Optional.empty(), "", "", NO, "");
        Part cord = things.part("cord", PartKind.CORD);
        Part ring = things.part("ring", PartKind.RING);
        return things.anchor(
                AnchorRole.HIGH_WATER,
                "upper shelf",
                "",
                things.record(thread, things.seen(thread, "2022", "", Condition.SOUND, "")),
                things.record(cord, things.seen(cord, "2022", "", Condition.GONE, "Flood took it.")),
                things.record(ring, things.notSeen(ring, "2022", "", "")));
    }

    AnchorRecord tree() {
        Part pine = things.known(
                things.part("pine", PartKind.TREE),
                new Part.Hardware("living pine", "about 40 cm thick", "", "", ""),
                "",
                Optional.empty(),
                "",
                "",
                YES,
                "");
        Part sling = things.part("sling round the pine", PartKind.SLING);
        return things.anchor(
                AnchorRole.ALTERNATIVE,
                "",
                "",
                things.record(pine, things.seen(pine, "2026-09-12", "Ana Kovač", Condition.SOUND, "Green.")),
                things.record(sling));
    }
}
