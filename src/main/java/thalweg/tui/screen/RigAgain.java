package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RigStanding;
import thalweg.logbook.StationRecord;
import thalweg.rig.Analyze;
import thalweg.rig.BoltDraft;
import thalweg.rig.Kept;
import thalweg.rig.PointDraft;
import thalweg.rig.PointForce;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigDraft;
import thalweg.rig.RigInput;
import thalweg.rig.RigPoint;
import thalweg.rig.SetupDraft;
import thalweg.sheet.PointRemarks;
import thalweg.tui.core.Surroundings;

/** A rig that was kept, on what is entered today: points that are gone are left out, strengths are as they are entered now. */
final class RigAgain {

    /** Two forces this near to each other, in parts of either, are shown alike. */
    private static final double ALIKE = 0.005;

    private RigAgain() {}

    /** The rig as it is today, with what has become of its points and forces as remarks. */
    static InventoryRig of(StationRecord station, RigInput kept, Surroundings around) {
        List<String> remarks = new ArrayList<>();
        PointRemarks.of(kept, station, around.phrases(), around.units()).forEach(remark -> remarks.add(remark.text()));
        List<PointDraft> points = new ArrayList<>();
        Map<String, PointDraft> entered = entered(station, around);
        List<PointDraft> before = RigDraft.of(kept).points();
        for (PointDraft point : before) {
            if (isGone(station, point.name())) {
                remarks.add(around.say("rig.left_out.gone", point.name()));
            } else {
                points.add(today(point, Optional.ofNullable(entered.get(point.name()))));
            }
        }
        if (points.isEmpty()) {
            return new InventoryRig(Optional.empty(), remarks);
        }
        RigDraft draft = RigDraft.of(kept)
                .withPoints(points)
                .withRig(strands(setup(kept, points), station, around))
                .deratedBy(around.settings().derating());
        draft.check().input().ifPresent(now -> remarks.addAll(differences(kept, now, around)));
        return new InventoryRig(Optional.of(draft), remarks);
    }

    private static Map<String, PointDraft> entered(StationRecord station, Surroundings around) {
        Map<String, PointDraft> entered = new LinkedHashMap<>();
        for (AnchorRecord anchor : station.anchors()) {
            InventoryRig.of(anchor, around)
                    .draft()
                    .ifPresent(draft -> draft.points().forEach(point -> entered.putIfAbsent(point.name(), point)));
        }
        return entered;
    }

    private static boolean isGone(StationRecord station, String name) {
        return station.parts().stream()
                .filter(part -> part.part().label().equals(name))
                .anyMatch(part -> part.state().condition().equals(Optional.of(Condition.GONE)));
    }

    private static PointDraft today(PointDraft kept, Optional<PointDraft> entered) {
        return entered.map(now -> kept.withStrength(now.strengthKilonewtons())
                        .withBelief(now.holdsAlone().or(kept::holdsAlone))
                        .withSling(now.is().or(kept::is), kept.sling())
                        .withTraits(kept.traits()
                                .found(now.traits().condition())
                                .withBolt(
                                        today(kept.traits().bolt(), now.traits().bolt()))))
                .orElse(kept);
    }

    /** Where an axis was stated it still is; nobody enters one. */
    private static BoltDraft today(BoltDraft kept, BoltDraft now) {
        return now.radialKilonewtons().isEmpty()
                ? BoltDraft.NONE
                : new BoltDraft(now.radialKilonewtons(), now.axialKilonewtons(), kept.axis());
    }

    /** Strands that were left outdoors are as they are entered and as old as they are today, where it is clear which they are. */
    private static SetupDraft strands(SetupDraft kept, StationRecord station, Surroundings around) {
        List<PartRecord> entered = station.anchors().stream()
                .flatMap(anchor -> RigStanding.strands(anchor.parts()).stream())
                .toList();
        boolean outdoors = kept.traits().kept().equals(Optional.of(Kept.OUTDOORS));
        return outdoors && entered.size() == 1
                ? kept.withTraits(RigStanding.traits(kept.traits(), entered.get(0), around.today()))
                : kept;
    }

    /** Slack belongs to legs that are still there. */
    private static SetupDraft setup(RigInput kept, List<PointDraft> points) {
        SetupDraft setup = RigDraft.of(kept).rig();
        Map<String, Double> slack = new LinkedHashMap<>(setup.slackMetres());
        slack.keySet().retainAll(points.stream().map(PointDraft::name).collect(Collectors.toSet()));
        return setup.withSlack(slack);
    }

    private static List<String> differences(RigInput kept, RigInput now, Surroundings around) {
        RigAnswer then = Analyze.of(kept);
        RigAnswer today = Analyze.of(now);
        List<String> lines = new ArrayList<>();
        for (RigPoint point : now.points()) {
            PointForce was = then.steady().at(point.name());
            PointForce is = today.steady().at(point.name());
            double larger = Math.max(was.force().newtons(), is.force().newtons());
            if (Math.abs(was.force().newtons() - is.force().newtons()) > ALIKE * larger) {
                lines.add(around.say(
                        "rig.again.point",
                        point.name(),
                        was.force().print(around.units()),
                        is.force().print(around.units())));
            }
        }
        return lines.isEmpty() ? List.of(around.say("rig.again.same")) : lines;
    }
}
