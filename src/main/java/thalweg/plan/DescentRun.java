package thalweg.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One descent of a group, event by event: people go in one order, pass each place one at a time, and a rope set is rigged,
 * used, pulled and carried on. With two sets and more the first rig the next drop while the last still come down.
 *
 * <p>At a drop the set that is there first is rigged once the first person is there. When the last is down it is pulled and
 * goes on with the last. A set that is not used goes on with the first person who leaves after it has come.
 *
 * <p>Whoever is slower takes longer for walking, passing and coming down; nobody overtakes. Once the group has been under way
 * for long enough, all rest together at the next place, when the last has passed it.
 */
final class DescentRun {

    private final Paces paces;
    private final List<LineStep> steps;
    private final double[] people;
    private final double[] reached;
    private final double[] left;
    private final double[] sets;
    private final int[] carriers;
    private final Party party;
    private final Rests rests;
    private double rested;
    private final List<Event> events = new ArrayList<>();

    /**
     * A person or a set from when to when at a place; for laws that a run is held against.
     *
     * @param place on the line
     * @param person index, or -1 for a rope set that is rigged from then until it is pulled
     * @param set index of the rope set, or -1
     */
    record Event(int place, int person, int set, double from, double to) {}

    /**
     * @param sets of ropes, 1 or more
     */
    DescentRun(List<LineStep> steps, Party party, int sets, Paces paces, Rests rests) {
        this.paces = paces;
        this.steps = steps;
        this.party = party;
        this.rests = rests;
        this.reached = new double[steps.size()];
        this.left = new double[steps.size()];
        this.people = new double[party.size()];
        this.sets = new double[sets];
        this.carriers = new int[sets];
    }

    /** When the last has passed each step [min from the start of the line]. */
    double[] run() {
        double[] done = new double[steps.size()];
        for (int i = 0; i < steps.size(); i++) {
            LineStep step = steps.get(i);
            walk(step);
            reached[i] = people[0];
            if (step.roped()) {
                drop(step);
            } else if (step.passes()) {
                pass(step);
            }
            done[i] = people[people.length - 1];
            if (i < steps.size() - 1) {
                rest(done[i]);
            }
            left[i] = people[people.length - 1];
        }
        return done;
    }

    /** When the first has come to each step, once it was run [min from the start of the line]. */
    double[] reached() {
        return reached.clone();
    }

    /** When the last is on the way again from each step, after a rest there, once it was run [min]. */
    double[] left() {
        return left.clone();
    }

    /** Everything that happened, in the order in which it was worked out. */
    List<Event> events() {
        return List.copyOf(events);
    }

    private void rest(double last) {
        if (rests.everyMinutes() == 0 || last - rested < rests.everyMinutes()) {
            return;
        }
        rested = last + rests.minutes();
        Arrays.fill(people, rested);
        Arrays.fill(sets, rested);
    }

    private void walk(LineStep step) {
        double minutes = step.walk() / paces.walkMetresPerMinute();
        for (int i = 0; i < people.length; i++) {
            people[i] += minutes * slowness(i);
        }
        keepOrder();
        for (int i = 0; i < sets.length; i++) {
            sets[i] = Math.max(sets[i] + minutes, people[carriers[i]]);
        }
    }

    private double slowness(int person) {
        return party.slowness().get(person);
    }

    /** Nobody overtakes. */
    private void keepOrder() {
        for (int i = 1; i < people.length; i++) {
            people[i] = Math.max(people[i], people[i - 1]);
        }
    }

    private void pass(LineStep step) {
        double[] leaves = new double[people.length];
        double free = 0;
        for (int i = 0; i < people.length; i++) {
            leaves[i] = Math.max(people[i], free);
            free = leaves[i] + paces.passMinutes() * slowness(i);
            events.add(new Event(step.place(), i, -1, leaves[i], free));
            people[i] = free;
        }
        carry(leaves, -1);
    }

    private void drop(LineStep step) {
        int used = 0;
        for (int i = 1; i < sets.length; i++) {
            used = sets[i] < sets[used] ? i : used;
        }
        double begun = Math.max(people[0], sets[used]);
        double free = begun + paces.rigMinutes();
        double[] leaves = new double[people.length];
        double minutes = paces.personMinutes() + step.metres() / paces.metresPerMinute();
        for (int i = 0; i < people.length; i++) {
            leaves[i] = Math.max(people[i], free);
            free = leaves[i] + minutes * slowness(i);
            events.add(new Event(step.place(), i, used, leaves[i], free));
            people[i] = free;
        }
        people[people.length - 1] = free + paces.pullMinutes();
        events.add(new Event(step.place(), -1, used, begun, people[people.length - 1]));
        carry(leaves, used);
        sets[used] = people[people.length - 1];
        carriers[used] = people.length - 1;
    }

    /** Sets that are not used go on with whoever leaves first after they have come, or with the last. */
    private void carry(double[] leaves, int used) {
        for (int set = 0; set < sets.length; set++) {
            if (set == used) {
                continue;
            }
            double come = sets[set];
            int carrier = people.length - 1;
            for (int i = people.length - 1; i >= 0; i--) {
                carrier = leaves[i] >= come ? i : carrier;
            }
            sets[set] = Math.max(come, people[carrier]);
            carriers[set] = carrier;
        }
    }
}
