package thalweg.logbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import thalweg.ledger.Hash;
import thalweg.ledger.Uid;
import thalweg.route.Part;
import thalweg.route.PartPlace;
import thalweg.route.PartialDate;
import thalweg.units.Force;
import thalweg.units.Length;

/**
 * What the parts of a station were like at one time, one short hash a part, so that a later look can say which of them
 * have changed.
 *
 * @param hashes by part, 16 hexadecimal digits each
 */
public record InventoryFingerprint(Map<Uid, String> hashes) {

    /**
     * What became of a part since the fingerprint was taken.
     *
     * @param part which
     * @param kind whether it was added, removed or changed
     */
    public record Change(Uid part, Kind kind) {}

    /** The ways in which an inventory differs from an earlier one. */
    public enum Kind {
        ADDED,
        REMOVED,
        CHANGED
    }

    public InventoryFingerprint {
        hashes = Collections.unmodifiableMap(new TreeMap<>(hashes));
    }

    /** The fingerprint of those parts as they are now: make, place, strength, and the condition as last seen. */
    public static InventoryFingerprint of(Collection<PartRecord> parts) {
        Map<Uid, String> hashes = new TreeMap<>();
        parts.forEach(part ->
                hashes.put(part.part().uid(), Hash.of(describe(part)).hex().substring(0, 16)));
        return new InventoryFingerprint(hashes);
    }

    /** Units and separators are part of the format: changing them makes every stored analysis look stale. */
    private static String describe(PartRecord record) {
        Part part = record.part();
        Part.Hardware made = part.hardware();
        return String.join(
                "\n",
                part.kind().name(),
                made.material(),
                made.size(),
                made.standard(),
                made.maker(),
                made.batch(),
                part.placed().map(PartialDate::print).orElse(""),
                part.place().map(InventoryFingerprint::describe).orElse(""),
                newtons(part.strength()),
                newtons(part.axialStrength()),
                part.holdsAlone().map(Enum::name).orElse(""),
                record.state().condition().map(Enum::name).orElse(""),
                record.lastReplaced().map(PartialDate::print).orElse(""));
    }

    private static String describe(PartPlace place) {
        return centimetres(place.right()) + " " + centimetres(place.up()) + " " + centimetres(place.out());
    }

    private static String centimetres(Length length) {
        return Long.toString(length.inCentimetres());
    }

    private static String newtons(Optional<Force> force) {
        return force.map(known -> Long.toString(Math.round(known.newtons()))).orElse("");
    }

    /** What has changed from this to that, in the order of the parts' names. */
    public List<Change> changesTo(InventoryFingerprint now) {
        List<Change> changes = new ArrayList<>();
        hashes.forEach((part, hash) -> {
            String later = now.hashes.get(part);
            if (later == null) {
                changes.add(new Change(part, Kind.REMOVED));
            } else if (!later.equals(hash)) {
                changes.add(new Change(part, Kind.CHANGED));
            }
        });
        now.hashes.keySet().stream()
                .filter(part -> !hashes.containsKey(part))
                .forEach(part -> changes.add(new Change(part, Kind.ADDED)));
        return changes;
    }
}
