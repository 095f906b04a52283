package thalweg.logbook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.route.Exposure;
import thalweg.route.PartialDate;

/**
 * What decides, besides the day on which a part was last seen, when somebody is to look at it again. Of one group whoever was
 * seen earlier is due earlier, so that a database can hand out a group in the order of that day whatever the figures are.
 *
 * @param condition in which it was last seen; {@link Condition#SOUND} for a part that nobody has seen
 * @param contradictory whether entries disagree
 * @param exposure that counts; empty where it does not, or is unknown
 */
public record LookGroup(Condition condition, boolean contradictory, Optional<Exposure> exposure) {

    private static final List<Optional<Exposure>> EXPOSURES =
            List.of(Optional.empty(), Optional.of(Exposure.MARINE), Optional.of(Exposure.WET));

    private static final int PER_CONDITION = 2 * EXPOSURES.size();

    public LookGroup {
        if (!EXPOSURES.contains(exposure)) {
            throw new IllegalArgumentException("what stays dry counts as if nothing were known");
        }
    }

    /** Every group there is, each at its code. */
    private static final List<LookGroup> ALL = made();

    private static List<LookGroup> made() {
        List<LookGroup> all = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            EXPOSURES.forEach(exposure -> all.add(new LookGroup(condition, false, exposure)));
            EXPOSURES.forEach(exposure -> all.add(new LookGroup(condition, true, exposure)));
        }
        return List.copyOf(all);
    }

    /** Every group there is. */
    public static List<LookGroup> all() {
        return ALL;
    }

    /** The group of that code. */
    public static LookGroup of(int code) {
        return ALL.get(code);
    }

    /** A number that never changes for a group; databases keep it. */
    public int code() {
        return condition.severity() * PER_CONDITION
                + (contradictory ? EXPOSURES.size() : 0)
                + EXPOSURES.indexOf(exposure);
    }

    /** The state of a part of this group that was seen on that day, or that nobody has seen. */
    public PartState seen(Optional<LocalDate> day) {
        return new PartState(day.map(known -> condition), day.map(PartialDate::of), contradictory, Optional.empty(), 0);
    }
}
