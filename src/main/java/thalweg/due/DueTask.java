package thalweg.due;

/** What is to be done with a part, the gravest first. */
public enum DueTask {
    MEND,
    EXAMINE,
    REPLACE
}
