package thalweg.plan;

/**
 * When a group is planned to have passed a place.
 *
 * @param middle half of the runs are faster [min]
 * @param late one run in ten is slower [min]
 * @param clock whether the times are minutes after midnight; else they count from the beginning of the line
 */
public record PlannedAt(double middle, double late, boolean clock) {

    /** "9:14 (9:22)"; from the beginning of the line "+1:14 (+1:22)". */
    public String print() {
        return one(middle) + " (" + one(late) + ")";
    }

    private String one(double minutes) {
        return clock ? TimeWords.clock(minutes) : "+" + TimeWords.clock(minutes);
    }
}
