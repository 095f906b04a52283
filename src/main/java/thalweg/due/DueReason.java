package thalweg.due;

/** Why something is to be done with a part. */
public enum DueReason {
    GONE(DueTask.MEND),
    UNSAFE(DueTask.MEND),
    NEVER_SEEN(DueTask.EXAMINE),
    DOUBTFUL(DueTask.EXAMINE),
    DISAGREE(DueTask.EXAMINE),
    WORN(DueTask.EXAMINE),
    MARINE(DueTask.EXAMINE),
    WET(DueTask.EXAMINE),
    USUAL(DueTask.EXAMINE),
    TEXTILE(DueTask.REPLACE),
    AGE_UNKNOWN(DueTask.REPLACE);

    private final DueTask task;

    DueReason(DueTask task) {
        this.task = task;
    }

    /** What it asks for. */
    public DueTask task() {
        return task;
    }
}
