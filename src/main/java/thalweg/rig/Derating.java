package thalweg.rig;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The shares of a strength that somebody states in place of the program's.
 *
 * @param stated each above 0 and at most 1 [-]; may be empty
 */
public record Derating(Map<DeratingKey, Double> stated) {

    /** Nothing is stated. */
    public static final Derating NONE = new Derating(Map.of());

    public Derating {
        Map<DeratingKey, Double> copy = new EnumMap<>(DeratingKey.class);
        copy.putAll(stated);
        stated = Collections.unmodifiableMap(copy);
        if (stated.values().stream().anyMatch(share -> !(share > 0) || share > 1)) {
            throw new IllegalArgumentException("a share is above 0 and at most 1");
        }
    }

    /** What is stated for that; empty where the program's figure stands. */
    OptionalDouble of(DeratingKey key) {
        Double share = stated.get(key);
        return share == null ? OptionalDouble.empty() : OptionalDouble.of(share);
    }
}
