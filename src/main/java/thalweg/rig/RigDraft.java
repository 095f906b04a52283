package thalweg.rig;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A rig as it was typed or read, right or wrong.
 *
 * @param name may be empty
 * @param points in the order of the file
 * @param load what pulls
 * @param rig how the strands are laid
 * @param redirect over which the rope runs from the master to the load
 */
public record RigDraft(
        String name, List<PointDraft> points, LoadDraft load, SetupDraft rig, Optional<RedirectDraft> redirect) {

    public RigDraft {
        points = List.copyOf(points);
    }

    /** A rig whose load hangs from the master. */
    public RigDraft(String name, List<PointDraft> points, LoadDraft load, SetupDraft rig) {
        this(name, points, load, rig, Optional.empty());
    }

    /** The draft that states what the input states, and leaves out what stands there by default. */
    public static RigDraft of(RigInput input) {
        boolean spreads = !input.assumed().contains("spread");
        return new RigDraft(
                input.name(),
                input.points().stream()
                        .map(point -> PointDraft.of(point, spreads || point.spread() != RigDefaults.SPREAD))
                        .toList(),
                LoadDraft.of(input),
                SetupDraft.of(input),
                input.redirect().map(RedirectDraft::of));
    }

    /** The rig, or everything that keeps this from being one. */
    public CheckedRig check() {
        return new CheckDraft(this).result();
    }

    /** The same rig under another load. */
    public RigDraft withLoad(LoadDraft other) {
        return new RigDraft(name, points, other, rig, redirect);
    }

    /** The same points and load, rigged otherwise. */
    public RigDraft withRig(SetupDraft other) {
        return new RigDraft(name, points, load, other, redirect);
    }

    /**
     * The same rig, with these shares where it states none of its own.
     *
     * @param shares by the words of {@link DeratingKey}
     */
    public RigDraft deratedBy(Map<String, Double> shares) {
        Map<String, Double> all = new LinkedHashMap<>(shares);
        all.putAll(rig.traits().derating());
        return withRig(rig.withTraits(rig.traits().derated(all)));
    }

    /** Another anchor under the same load. */
    public RigDraft withPoints(List<PointDraft> others) {
        return new RigDraft(name, others, load, rig, redirect);
    }

    /** The same rig whose rope runs over a redirect, or over none. */
    public RigDraft withRedirect(Optional<RedirectDraft> over) {
        return new RigDraft(name, points, load, rig, over);
    }
}
