package thalweg.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A point as it was typed or read, right or wrong; empty is not stated.
 *
 * @param name as stated; empty text where not
 * @param at two or three numbers [m]; empty where not stated
 * @param strengthKilonewtons [kN]
 * @param spread [-]
 * @param holdsAlone the belief, where there is one
 * @param traits what else is stated
 * @param is what the point is
 * @param sling what is slung round it
 */
public record PointDraft(
        String name,
        List<Double> at,
        OptionalDouble strengthKilonewtons,
        OptionalDouble spread,
        Optional<Boolean> holdsAlone,
        PointTraitsDraft traits,
        Optional<PointKind> is,
        Optional<SlingDraft> sling) {

    public PointDraft {
        at = List.copyOf(at);
    }

    /** A point of which nobody said what it is, with nothing slung round it. */
    public PointDraft(
            String name,
            List<Double> at,
            OptionalDouble strengthKilonewtons,
            OptionalDouble spread,
            Optional<Boolean> holdsAlone) {
        this(
                name,
                at,
                strengthKilonewtons,
                spread,
                holdsAlone,
                PointTraitsDraft.NONE,
                Optional.empty(),
                Optional.empty());
    }

    /** The same point in that place [m]. */
    public PointDraft withPlace(List<Double> other) {
        return new PointDraft(name, other, strengthKilonewtons, spread, holdsAlone, traits, is, sling);
    }

    /** The same point, which holds that much [kN]. */
    public PointDraft withStrength(OptionalDouble kilonewtons) {
        return new PointDraft(name, at, kilonewtons, spread, holdsAlone, traits, is, sling);
    }

    /** The same point, of which that is believed. */
    public PointDraft withBelief(Optional<Boolean> alone) {
        return new PointDraft(name, at, strengthKilonewtons, spread, alone, traits, is, sling);
    }

    /** The same point, of which that is stated. */
    public PointDraft withTraits(PointTraitsDraft other) {
        return new PointDraft(name, at, strengthKilonewtons, spread, holdsAlone, other, is, sling);
    }

    /** A point of which only name and place are stated. */
    public static PointDraft of(String name, double x, double y, double z) {
        return new PointDraft(name, List.of(x, y, z), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
    }

    static PointDraft of(RigPoint point, boolean withSpread) {
        return new PointDraft(
                point.name(),
                List.of(point.at().x(), point.at().y(), point.at().z()),
                Stated.kilonewtons(point.strength()
                        .filter(strength -> point.traits().bolt().isEmpty())),
                withSpread ? OptionalDouble.of(point.spread()) : OptionalDouble.empty(),
                point.holdsAlone(),
                PointTraitsDraft.of(point.traits()),
                point.is(),
                point.sling().map(SlingDraft::of));
    }

    /** The same point, of which it is stated, or not, what it is and what is slung round it. */
    public PointDraft withSling(Optional<PointKind> what, Optional<SlingDraft> draft) {
        return new PointDraft(name, at, strengthKilonewtons, spread, holdsAlone, traits, what, draft);
    }

    /** The same point with something slung round it. */
    public PointDraft slungWith(PointKind what, SlingDraft draft) {
        return withSling(Optional.of(what), Optional.of(draft));
    }
}
