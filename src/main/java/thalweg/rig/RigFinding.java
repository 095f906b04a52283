package thalweg.rig;

/**
 * One thing that keeps a draft from being a rig.
 *
 * @param key where, as in a rig file: "points[1].at", "load.mass_kg"
 * @param sentence what is wrong and what would do, beginning in lower case
 */
public record RigFinding(String key, String sentence) {

    /** As one line for a person. */
    public String print() {
        return key + ": " + sentence;
    }
}
