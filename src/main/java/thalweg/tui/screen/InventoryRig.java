package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RigStanding;
import thalweg.rig.LimitDraft;
import thalweg.rig.LoadDraft;
import thalweg.rig.PointDraft;
import thalweg.rig.RigDraft;
import thalweg.rig.RigKind;
import thalweg.rig.SetupDraft;
import thalweg.rig.StrandMaterial;
import thalweg.route.HoldsAlone;
import thalweg.route.Part;
import thalweg.tui.core.Surroundings;
import thalweg.units.Force;

/**
 * A rig made of the points that are entered for an anchor.
 *
 * @param draft the rig to start from; empty where no point can be used
 * @param remarks what must be known before its figures: points that are left out, and points whose condition is not sound
 * @param before what it was before the last step; empty where none was made
 * @param kept whether it is kept with its station as it is
 */
record InventoryRig(Optional<RigDraft> draft, List<String> remarks, Optional<Before> before, boolean kept) {

    /** A person with gear, to begin with; the screen says that nobody stated it [kg]. */
    static final double FIRST_MASS_KILOGRAMS = 100;

    private static final int MOST_POINTS = 6;

    InventoryRig {
        remarks = List.copyOf(remarks);
    }

    /** The points as they are entered, from which no step was made yet. */
    InventoryRig(Optional<RigDraft> draft, List<String> remarks) {
        this(draft, remarks, Optional.empty(), false);
    }

    /** The same once it is kept with its station. */
    InventoryRig asKept() {
        return new InventoryRig(draft, remarks, before, true);
    }

    /** The same with a line more that must be known first. */
    InventoryRig remarking(String line) {
        return new InventoryRig(
                draft, Stream.concat(Stream.of(line), remarks.stream()).toList(), before, kept);
    }

    /** What all the steps began with. */
    InventoryRig entered() {
        InventoryRig entered = this;
        while (entered.before.isPresent()) {
            entered = entered.before.get().rig();
        }
        return entered;
    }

    /**
     * What a step was made from.
     *
     * @param rig as it was
     * @param starts what nobody had stated
     */
    record Before(InventoryRig rig, Set<StartValue> starts) {}

    /** Another rig of the same points, which remembers this one. */
    InventoryRig changed(RigDraft to, Set<StartValue> starts) {
        return new InventoryRig(Optional.of(to), remarks, Optional.of(new Before(this, starts)), false);
    }

    /** The remarks, and which points are tried otherwise than they are entered. */
    List<String> cautions(Surroundings around) {
        List<String> tried = tried();
        return tried.isEmpty()
                ? remarks
                : Stream.concat(remarks.stream(), Stream.of(around.say("rig.tried", String.join(", ", tried))))
                        .toList();
    }

    /** The points whose place or strength is another than what is entered for their parts. */
    private List<String> tried() {
        List<PointDraft> known = entered().draft.map(RigDraft::points).orElse(List.of());
        return draft.map(RigDraft::points).orElse(List.of()).stream()
                .filter(point -> !known.contains(point))
                .map(PointDraft::name)
                .toList();
    }

    static InventoryRig of(AnchorRecord anchor, Surroundings around) {
        List<PointDraft> points = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        for (PartRecord record : anchor.parts()) {
            Part part = record.part();
            if (!part.kind().isPoint()) {
                continue;
            }
            boolean gone = record.state().condition().equals(Optional.of(Condition.GONE));
            if (gone) {
                remarks.add(around.say("rig.left_out.gone", part.label()));
            } else if (part.place().isEmpty()) {
                remarks.add(around.say("rig.left_out.place", part.label()));
            } else if (points.size() == MOST_POINTS) {
                remarks.add(around.say("rig.left_out.many", part.label()));
            } else {
                points.add(point(record, points));
                if (!isSound(record)) {
                    remarks.add(around.say("rig.not_sound", part.label(), Looks.state(around, record.state())));
                }
            }
        }
        if (points.isEmpty()) {
            return new InventoryRig(Optional.empty(), remarks);
        }
        RigDraft rig = derated(rig(points), around);
        Optional<PartRecord> strands = RigStanding.strands(anchor.parts());
        strands.ifPresent(record -> remarks.add(
                around.say("rig.strands_entered", record.part().label(), Looks.state(around, record.state()))));
        anchor.parts().stream()
                .filter(record ->
                        !record.part().kind().isPoint() && !strands.equals(Optional.of(record)) && !isSound(record))
                .forEach(record -> remarks.add(
                        around.say("rig.beside", record.part().label(), Looks.state(around, record.state()))));
        RigDraft entered = strands.map(record -> rig.withRig(strands(rig.rig(), record, around)))
                .orElse(rig);
        return new InventoryRig(Optional.of(entered), remarks);
    }

    private static boolean isSound(PartRecord record) {
        return record.state().condition().equals(Optional.of(Condition.SOUND))
                && !record.state().contradictory();
    }

    /** Its strands are the part that is entered. */
    private static SetupDraft strands(SetupDraft rig, PartRecord record, Surroundings around) {
        Optional<Force> strength = record.part().strength();
        return rig.withTraits(RigStanding.traits(rig.traits(), record, around.today()))
                .withStrandStrength(
                        strength.isPresent()
                                ? OptionalDouble.of(strength.get().inKilonewtons())
                                : OptionalDouble.empty());
    }

    private static RigDraft derated(RigDraft rig, Surroundings around) {
        return rig.deratedBy(around.settings().derating());
    }

    private static PointDraft point(PartRecord record, List<PointDraft> before) {
        Part part = record.part();
        long same =
                before.stream().filter(one -> one.name().equals(part.label())).count();
        PointDraft point = new PointDraft(
                same == 0 ? part.label() : part.label() + " " + (same + 1),
                part.place()
                        .map(place -> List.of(
                                place.right().metres(),
                                place.up().metres(),
                                place.out().metres()))
                        .orElseThrow(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                part.holdsAlone().map(belief -> belief == HoldsAlone.YES));
        return RigStanding.point(point, record);
    }

    /** The focus begins below the middle of the points, as far down as they are wide, so that the angle is moderate. */
    private static RigDraft rig(List<PointDraft> points) {
        double left = points.stream().mapToDouble(one -> one.at().get(0)).min().orElseThrow();
        double right = points.stream().mapToDouble(one -> one.at().get(0)).max().orElseThrow();
        double low = points.stream().mapToDouble(one -> one.at().get(1)).min().orElseThrow();
        double out =
                points.stream().mapToDouble(one -> one.at().get(2)).average().orElseThrow();
        double below = Math.max(0.4, right - left);
        SetupDraft setup = new SetupDraft(
                Optional.of(points.size() == 1 ? RigKind.SINGLE : RigKind.FOCUSED),
                List.of(rounded((left + right) / 2), rounded(low - below), rounded(out)),
                OptionalDouble.of(StrandMaterial.NYLON_WEBBING.nominal().inKilonewtons()),
                OptionalLong.empty(),
                Map.of(),
                Optional.empty(),
                OptionalDouble.empty(),
                LimitDraft.NONE,
                OptionalDouble.empty(),
                OptionalDouble.empty());
        return new RigDraft("", points, LoadDraft.ofMass(FIRST_MASS_KILOGRAMS, 0), setup);
    }

    private static double rounded(double metres) {
        return Math.round(metres * 100) / 100.0;
    }
}
