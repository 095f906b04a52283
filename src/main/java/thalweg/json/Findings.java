package thalweg.json;

import java.util.ArrayList;
import java.util.List;
import thalweg.fault.Sentence;

/** Collects what is wrong, so that a person hears of all of it at once. */
public final class Findings {

    private final List<Finding> found = new ArrayList<>();

    /** Notes one more. */
    public void add(String path, int line, Sentence what) {
        found.add(new Finding(path, line, what));
    }

    /** How many so far. */
    public int count() {
        return found.size();
    }

    /** Whether there is none. */
    public boolean none() {
        return found.isEmpty();
    }

    /** All so far, in the order in which they were met. */
    public List<Finding> all() {
        return List.copyOf(found);
    }
}
