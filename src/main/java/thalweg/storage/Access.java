package thalweg.storage;

/** How a database is opened. */
public enum Access {
    /** Made anew where the file is missing. */
    CREATE,
    /** Read and written, but it must be there. */
    WRITE,
    /** Only read; it must be there. */
    READ
}
