package thalweg.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Gives something another place in a line with as few new order keys as can be: one, wherever its new neighbours have
 * different keys. Where a merge left neighbours with the same key, some of them get new keys too.
 */
public final class Reorder {

    private Reorder() {}

    /**
     * One member of a line.
     *
     * @param uid its name, by which members of the same key are in order
     * @param key its order key
     */
    public record Member(Uid uid, String key) {}

    /**
     * The new keys that put a member at a place.
     *
     * @param others the line without that member, in the order in which it is shown
     * @param moved the member; it may come from another line
     * @param at how many of the others come before it then, 0 to all of them
     * @return the keys that change, by member, in the order of the line; that of the moved one is always among them
     * @throws IllegalArgumentException when there is no such place
     */
    public static Map<Uid, String> keys(List<Member> others, Uid moved, int at) {
        if (at < 0 || at > others.size()) {
            throw new IllegalArgumentException("there is no place " + at + " among " + others.size());
        }
        for (int also = 0; also <= others.size(); also++) {
            for (int before = Math.max(0, also - (others.size() - at)); before <= Math.min(also, at); before++) {
                List<Uid> members = new ArrayList<>();
                others.subList(at - before, at).forEach(member -> members.add(member.uid()));
                members.add(moved);
                others.subList(at, at + also - before).forEach(member -> members.add(member.uid()));
                String low = keyAt(others, at - before - 1);
                String high = keyAt(others, at + also - before);
                List<String> keys = between(low, high, members.size());
                if (keys.size() == members.size()) {
                    Map<Uid, String> changes = new LinkedHashMap<>();
                    members.forEach(member -> changes.put(member, keys.get(changes.size())));
                    return changes;
                }
            }
        }
        throw new IllegalArgumentException("a line of " + others.size() + " has no room for another");
    }

    /**
     * The key of something new that comes after a member; after all of that member's key, where several have it.
     *
     * @param line the keys in the order in which they are shown
     * @param at index of the member that it comes after; -1 for the beginning
     */
    public static String keyAfter(List<String> line, int at) {
        String low = at < 0 ? "" : line.get(at);
        String high = line.stream()
                .skip(at + 1L)
                .filter(key -> key.compareTo(low) > 0)
                .findFirst()
                .orElse("");
        return OrderKey.between(low, high);
    }

    private static String keyAt(List<Member> line, int at) {
        return at < 0 || at >= line.size() ? "" : line.get(at).key();
    }

    /** So many keys between two others, in order; fewer where there is no room. */
    private static List<String> between(String low, String high, int count) {
        if (count == 0) {
            return List.of();
        }
        if (!high.isEmpty() && low.compareTo(high) >= 0) {
            return List.of();
        }
        String middle = OrderKey.between(low, high);
        if (!OrderKey.isKey(middle)) {
            return List.of();
        }
        int before = (count - 1) / 2;
        List<String> keys = new ArrayList<>(between(low, middle, before));
        keys.add(middle);
        keys.addAll(between(middle, high, count - 1 - before));
        return keys;
    }
}
