package thalweg.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import thalweg.logbook.Trip;

/**
 * The people of a group in the order in which they go down.
 *
 * @param slowness of each, by which they take longer than the paces say for what they do themselves; 1 or more people, each
 *     above 0
 */
public record Party(List<Double> slowness) {

    public Party {
        slowness = List.copyOf(slowness);
        if (slowness.isEmpty() || slowness.stream().anyMatch(one -> !(one > 0))) {
            throw new IllegalArgumentException("somebody goes, at some pace");
        }
    }

    /** So many who all go by the paces. */
    public static Party of(int people) {
        return new Party(Collections.nCopies(people, 1.0));
    }

    /**
     * A group as it is planned: beginners go between the others where there are two of those, behind one where there is one.
     *
     * @param beginner the factor of a beginner, above 0; whoever's role nobody stated goes by the paces
     */
    public static Party of(List<Trip.Person> people, double beginner) {
        long slow = people.stream()
                .filter(person -> person.role().equals(Optional.of(Trip.Role.BEGINNER)))
                .count();
        int others = people.size() - (int) slow;
        List<Double> order = new ArrayList<>(Collections.nCopies(others, 1.0));
        order.addAll(Math.min(1, others), Collections.nCopies((int) slow, beginner));
        return new Party(order);
    }

    /** How many there are. */
    public int size() {
        return slowness.size();
    }

    /** Whether somebody takes longer than the paces say. */
    public boolean hasSlower() {
        return slowness.stream().anyMatch(one -> one > 1);
    }
}
