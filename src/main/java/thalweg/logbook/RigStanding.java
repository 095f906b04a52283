package thalweg.logbook;

import static thalweg.route.PartialDate.BY_LAST_DAY;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import thalweg.rig.BoltDraft;
import thalweg.rig.Fibre;
import thalweg.rig.Kept;
import thalweg.rig.PartCondition;
import thalweg.rig.PointDraft;
import thalweg.rig.PointKind;
import thalweg.rig.PointTraitsDraft;
import thalweg.rig.RigDraft;
import thalweg.rig.RigInput;
import thalweg.rig.StrandTraitsDraft;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;
import thalweg.units.Force;

/** What the records say of the parts that a rig counts on, as the rig states it. */
public final class RigStanding {

    private static final Set<PartKind> TEXTILE = Set.of(PartKind.WEBBING, PartKind.CORD, PartKind.SLING, PartKind.ROPE);

    /** Points round which webbing or cord is slung, so that it is not what runs between the points. */
    private static final Set<PartKind> SLUNG =
            Set.of(PartKind.TREE, PartKind.BOULDER, PartKind.CHOCKSTONE, PartKind.THREAD);

    private static final double DAYS_OF_A_YEAR = 365.25;

    private RigStanding() {}

    /** The condition of a part: the worst that may be the last, or that nobody has looked at it. */
    public static PartCondition condition(PartState state) {
        return state.condition()
                .map(condition -> switch (condition) {
                    case SOUND -> PartCondition.SOUND;
                    case WORN -> PartCondition.WORN;
                    case DOUBTFUL -> PartCondition.DOUBTFUL;
                    case UNSAFE -> PartCondition.UNSAFE;
                    case GONE -> PartCondition.GONE;
                })
                .orElse(PartCondition.UNKNOWN);
    }

    /** A point as its part is entered and was found; a bolt of which both strengths are entered has both. */
    public static PointDraft point(PointDraft point, PartRecord record) {
        Part part = record.part();
        boolean both = part.strength().isPresent() && part.axialStrength().isPresent();
        BoltDraft bolt = both
                ? new BoltDraft(
                        number(part.strength()),
                        number(part.axialStrength()),
                        point.traits().bolt().axis())
                : BoltDraft.NONE;
        PointTraitsDraft traits =
                point.traits().found(Optional.of(condition(record.state()))).withBolt(bolt);
        return point.withStrength(both ? OptionalDouble.empty() : number(part.strength()))
                .withTraits(traits)
                .withSling(kind(part.kind()), point.sling());
    }

    private static Optional<PointKind> kind(PartKind kind) {
        return switch (kind) {
            case BOLT -> Optional.of(PointKind.BOLT);
            case TREE -> Optional.of(PointKind.TREE);
            case BOULDER -> Optional.of(PointKind.BOULDER);
            case CHOCKSTONE -> Optional.of(PointKind.CHOCKSTONE);
            case THREAD -> Optional.of(PointKind.THREAD);
            case PITON, CHOCK, OTHER_POINT -> Optional.of(PointKind.OTHER);
            case WEBBING, CORD, SLING, ROPE, CHAIN, RING, QUICK_LINK, KARABINER, OTHER_MATERIAL -> Optional.empty();
        };
    }

    private static OptionalDouble number(Optional<Force> force) {
        return force.isPresent() ? OptionalDouble.of(force.get().inKilonewtons()) : OptionalDouble.empty();
    }

    /**
     * The one textile part of an anchor that runs between its points; empty where there is none or several, or where
     * textile may be slung round a point.
     *
     * @param parts of the anchor
     */
    public static Optional<PartRecord> strands(List<PartRecord> parts) {
        boolean slung =
                parts.stream().anyMatch(record -> SLUNG.contains(record.part().kind()));
        List<PartRecord> textile = parts.stream()
                .filter(record -> TEXTILE.contains(record.part().kind()))
                .filter(record -> condition(record.state()) != PartCondition.GONE)
                .toList();
        return slung || textile.size() != 1 ? Optional.empty() : Optional.of(textile.get(0));
    }

    /**
     * What the strands are, where they are that part: its condition, its fibre where the words for its material say, and
     * its age since it was placed, which is the least that it may be. It was outdoors since then.
     */
    public static StrandTraitsDraft traits(StrandTraitsDraft before, PartRecord record, LocalDate today) {
        return before.found(Optional.of(condition(record.state())))
                .aged(fibre(record.part().hardware().material()), years(record, today), Optional.of(Kept.OUTDOORS));
    }

    private static Optional<Fibre> fibre(String material) {
        String words = material.toLowerCase(Locale.ROOT);
        boolean nylon = words.contains("nylon") || words.contains("polyamide");
        boolean polyester = words.contains("polyester");
        boolean uhmwpe = words.contains("uhmwpe") || words.contains("hmpe") || words.contains("polyethylene");
        if (Stream.of(nylon, polyester, uhmwpe).filter(is -> is).count() != 1) {
            return Optional.empty();
        }
        return Optional.of(nylon ? Fibre.NYLON : polyester ? Fibre.POLYESTER : Fibre.UHMWPE);
    }

    /** Counted from the first day that a month or a year may mean; to a tenth of a year. */
    private static OptionalDouble years(PartRecord record, LocalDate today) {
        Optional<PartialDate> since = Stream.concat(record.part().placed().stream(), record.lastReplaced().stream())
                .max(BY_LAST_DAY);
        if (since.isEmpty() || since.get().earliest().isAfter(today)) {
            return OptionalDouble.empty();
        }
        double years = ChronoUnit.DAYS.between(since.get().earliest(), today) / DAYS_OF_A_YEAR;
        return OptionalDouble.of(Math.round(years * 10) / 10.0);
    }

    /**
     * A rig whose points are told how they were found, where the rig itself does not state it and a part of their name is
     * entered that is still there.
     */
    public static RigInput told(RigInput input, StationRecord station) {
        RigDraft draft = RigDraft.of(input);
        List<PointDraft> points =
                draft.points().stream().map(point -> told(point, station)).toList();
        return draft.withPoints(points).check().input().orElse(input);
    }

    private static PointDraft told(PointDraft point, StationRecord station) {
        if (point.traits().condition().isPresent()) {
            return point;
        }
        return station.parts().stream()
                .filter(record -> record.part().label().equals(point.name()))
                .map(record -> condition(record.state()))
                .filter(condition -> condition != PartCondition.GONE)
                .findFirst()
                .map(condition -> point.withTraits(point.traits().found(Optional.of(condition))))
                .orElse(point);
    }
}
