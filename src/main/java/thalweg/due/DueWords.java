package thalweg.due;

import java.time.LocalDate;
import java.time.Period;
import java.util.Locale;
import thalweg.text.Phrases;

/** What is due, in words. */
public final class DueWords {

    private static final int DAYS_FOR_DAYS = 60;
    private static final int MONTHS_FOR_MONTHS = 24;
    private static final int MONTHS_A_YEAR = 12;

    private DueWords() {}

    /** What is to be done and since when or until when, such as "examine: due for 3 months". */
    public static String what(Due due, LocalDate today, Phrases phrases) {
        String task = phrases.say("due.task." + word(due.task()));
        return phrases.say("due.what", task, when(due, today, phrases));
    }

    /** Since when or until when. */
    public static String when(Due due, LocalDate today, Phrases phrases) {
        return switch (due.reason()) {
            case NEVER_SEEN -> phrases.say("due.never_seen");
            case AGE_UNKNOWN -> phrases.say("due.age_unknown");
            case GONE -> phrases.say("due.gone");
            case UNSAFE -> phrases.say("due.unsafe");
            default -> {
                LocalDate day = due.day().orElseThrow();
                if (day.equals(today)) {
                    yield phrases.say("due.today");
                }
                yield day.isBefore(today)
                        ? phrases.say("due.since", span(day, today, phrases))
                        : phrases.say("due.in", span(today, day, phrases));
            }
        };
    }

    /** Why, such as "last found worn: every 6 months". */
    public static String why(Due due, Phrases phrases) {
        return phrases.say("due.why." + word(due.reason()), phrases.count("due.months", due.months()));
    }

    /** How far the last look can still be relied on. */
    public static String confidence(Confidence confidence, Phrases phrases) {
        return phrases.say("due.confidence." + word(confidence));
    }

    /** A span of time, coarser the longer it is, and rather too short than too long. */
    private static String span(LocalDate from, LocalDate to, Phrases phrases) {
        long days = to.toEpochDay() - from.toEpochDay();
        if (days < DAYS_FOR_DAYS) {
            return phrases.count("due.days", days);
        }
        long months = Period.between(from, to).toTotalMonths();
        return months < MONTHS_FOR_MONTHS
                ? phrases.count("due.months", months)
                : phrases.count("due.years", months / MONTHS_A_YEAR);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
