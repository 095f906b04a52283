package thalweg.amend;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import thalweg.ledger.Uid;

/**
 * Which things of a line stand at another place of it. Those that kept their order among each other are the most that can;
 * the others were moved. Which these are does not depend on the direction in which the two lines are compared.
 */
final class Rearranged {

    /** One more thing that stayed outweighs whatever decides between equally many. */
    private static final long ONE = 1L << 40;

    private Rearranged() {}

    /**
     * The things that were moved along a line.
     *
     * @param before what is in each thing, in order
     * @param after the same later; what came, went or went elsewhere is passed over
     */
    static Set<Uid> between(Map<Uid, List<Uid>> before, Map<Uid, List<Uid>> after) {
        Set<Uid> moved = new HashSet<>();
        after.forEach((parent, line) -> {
            List<Uid> was = new ArrayList<>(before.getOrDefault(parent, List.of()));
            List<Uid> is = new ArrayList<>(line);
            was.retainAll(Set.copyOf(line));
            is.retainAll(Set.copyOf(was));
            if (!was.equals(is)) {
                moved.addAll(is);
                kept(was, is).forEach(moved::remove);
            }
        });
        return moved;
    }

    /** The heaviest run of the later line that is in the order of the earlier one. */
    private static List<Uid> kept(List<Uid> was, List<Uid> is) {
        Map<Uid, Integer> rank = new HashMap<>();
        was.forEach(uid -> rank.put(uid, rank.size()));
        long[] heaviest = new long[is.size()];
        int[] through = new int[is.size()];
        int last = -1;
        for (int i = 0; i < is.size(); i++) {
            through[i] = -1;
            for (int j = 0; j < i; j++) {
                boolean inOrder = rank.getOrDefault(is.get(j), 0) < rank.getOrDefault(is.get(i), 0);
                if (inOrder && heaviest[j] > (through[i] < 0 ? 0 : heaviest[through[i]])) {
                    through[i] = j;
                }
            }
            heaviest[i] = weight(is.get(i)) + (through[i] < 0 ? 0 : heaviest[through[i]]);
            if (last < 0 || heaviest[i] > heaviest[last]) {
                last = i;
            }
        }
        List<Uid> kept = new ArrayList<>();
        for (int i = last; i >= 0; i = through[i]) {
            kept.add(is.get(i));
        }
        return kept;
    }

    private static long weight(Uid uid) {
        return ONE + Integer.toUnsignedLong(uid.text().hashCode()) % 1_000_003;
    }
}
