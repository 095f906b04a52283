package thalweg.due;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;

/**
 * One thing that is to be done with a part.
 *
 * @param reason why, and with it what
 * @param day since when or by when; empty for a part that nobody has seen and for textile of unknown age
 * @param months after which it is due; 0 where no time has to pass
 */
public record Due(DueReason reason, Optional<LocalDate> day, int months) {

    /** The more urgent first: what is to be mended, what nobody has seen, then by day; last, textile of unknown age. */
    public static final Comparator<Due> BY_URGENCY = Comparator.comparing(Due::rank)
            .thenComparing(due -> due.day().orElse(LocalDate.MIN))
            .thenComparing(Due::reason);

    public Due {
        boolean undated = reason == DueReason.NEVER_SEEN || reason == DueReason.AGE_UNKNOWN;
        if (day.isEmpty() != undated || months < 0) {
            throw new IllegalArgumentException("all but what nobody knows is due on a day");
        }
    }

    private int rank() {
        if (task() == DueTask.MEND) {
            return 0;
        }
        return switch (reason) {
            case NEVER_SEEN -> 1;
            case AGE_UNKNOWN -> 3;
            default -> 2;
        };
    }

    /** What is to be done. */
    public DueTask task() {
        return reason.task();
    }

    /** Whether it is to be done now. Nobody can say that of textile whose age is unknown. */
    public boolean isDue(LocalDate today) {
        return reason == DueReason.NEVER_SEEN
                || task() == DueTask.MEND
                || day.filter(since -> !since.isAfter(today)).isPresent();
    }

    /** Whether it is to be done within so many days from today. */
    public boolean isDueWithin(LocalDate today, int days) {
        return isDue(today.plusDays(days));
    }

    /** For how long it has been due [days], negative where it is not yet; empty where there is no day. */
    public Optional<Long> daysOver(LocalDate today) {
        return day.map(since -> ChronoUnit.DAYS.between(since, today));
    }
}
