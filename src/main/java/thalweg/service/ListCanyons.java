package thalweg.service;

import java.util.List;
import thalweg.logbook.CanyonRow;

/** Lists canyons, all or those that words find. */
public final class ListCanyons {

    private final Session session;

    public ListCanyons(Session session) {
        this.session = session;
    }

    /**
     * Canyons in the order of their names.
     *
     * @param words each begins a word of the name, another name, the region or the country; none finds all
     */
    public List<CanyonRow> matching(String words) {
        return session.canyons().search(words);
    }

    /** How many there are in all. */
    public int count() {
        return session.canyons().count();
    }
}
