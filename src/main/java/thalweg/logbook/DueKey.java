package thalweg.logbook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import thalweg.ledger.Uid;

/**
 * A part in the order in which parts are due, before it is read.
 *
 * @param part its key in the database that is open and nowhere else
 * @param group that decides after how long somebody is to look at it
 * @param seen the first day on which it may have been seen last; empty where nobody has seen it
 * @param since the first day since which it may be there, if it is textile; empty where it is none, or nobody knows
 * @param canyonSort the canyon's name as it sorts
 * @param canyon in which it is
 * @param position along the line of the canyon
 */
public record DueKey(
        long part,
        LookGroup group,
        Optional<LocalDate> seen,
        Optional<LocalDate> since,
        String canyonSort,
        Uid canyon,
        int position) {

    /** By canyon and along the line. */
    public static final Comparator<DueKey> ALONG = Comparator.comparing(DueKey::canyonSort)
            .thenComparing(DueKey::canyon)
            .thenComparing(DueKey::position);
}
