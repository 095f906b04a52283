package thalweg.rig;

import thalweg.fault.Sentence;

/**
 * One thing that keeps a draft from being a rig.
 *
 * @param key where, as in a rig file: "points[1].at", "load.mass_kg"
 * @param what is wrong and what would do, beginning in lower case
 */
public record RigFinding(String key, Sentence what) {

    /** What is wrong, in English. */
    public String sentence() {
        return what.toString();
    }

    /** Where and what, as one line for a person. */
    public Sentence saying() {
        return Sentence.of("{0}: {1}", key, what);
    }

    /** As one line, in English. */
    public String print() {
        return saying().toString();
    }
}
