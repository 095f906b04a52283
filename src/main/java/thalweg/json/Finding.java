package thalweg.json;

/**
 * One thing that is wrong with what was read.
 *
 * @param path where, such as "canyons[0].stations[2].side"; empty for the whole
 * @param line on which it begins, or the object around it, 0 where that is not known
 * @param sentence what is wrong and what would do, beginning in lower case
 */
public record Finding(String path, int line, String sentence) {

    /** As one line for a person. */
    public String print() {
        String where = line > 0 ? "line " + line : "";
        if (!path.isEmpty()) {
            where = where.isEmpty() ? path : where + ", " + path;
        }
        return where.isEmpty() ? sentence : where + ": " + sentence;
    }
}
