package thalweg.logbook;

/**
 * What is looked for among canyons.
 *
 * @param words each begins a word of what is found; none finds everything
 * @param filter what else must hold
 */
public record Finding(String words, CanyonFilter filter) {

    /** Everything. */
    public static final Finding ALL = new Finding("", CanyonFilter.NONE);

    /** Canyons by words alone. */
    public static Finding of(String words) {
        return new Finding(words, CanyonFilter.NONE);
    }
}
