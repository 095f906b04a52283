package thalweg.fault;

/** A file that is there already and may not be replaced unasked. How to ask for it is different on screens and in commands. */
public final class ThereAlreadyException extends InputException {

    private static final long serialVersionUID = 1;

    private final String file;

    /**
     * @param file that is there
     */
    public ThereAlreadyException(String file) {
        super(Sentence.of("{0} is there already; name another file, or say that it may be replaced.", file));
        this.file = file;
    }

    /** The same sentence where that is said by an option. */
    public Sentence saying(String option) {
        return Sentence.of("{0} is there already; name another file, or add {1}.", file, option);
    }
}
