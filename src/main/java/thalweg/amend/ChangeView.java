package thalweg.amend;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import thalweg.body.ThingType;
import thalweg.ledger.Uid;

/**
 * A change as a person reads it.
 *
 * @param key its number in this database
 * @param author who made it
 * @param at when, as RFC 3339 in UTC
 * @param canyon the only canyon it touched; empty where it touched several or none
 * @param canyonName the name of that canyon; empty text where there is none
 * @param size how many things and entries it touched
 * @param counts how many of each type; in the order of their types
 * @param deeds what it did; in a list only the first few
 * @param taken who took it back and when, where it is taken back now
 */
public record ChangeView(
        long key,
        String author,
        String at,
        Optional<Uid> canyon,
        String canyonName,
        int size,
        Map<String, Integer> counts,
        List<Deed> deeds,
        Optional<Signed> taken) {

    /**
     * Who did something when.
     *
     * @param author who
     * @param at when, as RFC 3339 in UTC
     */
    public record Signed(String author, String at) {}

    public ChangeView {
        counts = Collections.unmodifiableMap(new TreeMap<>(counts));
        deeds = List.copyOf(deeds);
    }

    /** Whether it came from outside in one piece: by hand nobody enters a canyon together with what is in it. */
    public boolean isImport() {
        return counts.size() > 1 && count(ThingType.CANYON.word()) > 0;
    }

    /** How many things of that type it touched, or entries. */
    public int count(String type) {
        return counts.getOrDefault(type, 0);
    }
}
