package thalweg.plan;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import thalweg.text.Phrases;

/** Times of day and spans of time in a plan. */
final class TimeWords {

    static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);

    private static final int HOUR = 60;
    private static final long DAY = 24L * HOUR;

    private TimeWords() {}

    /** A time of day, never earlier than it is; with the days after the first. */
    static String clock(double minutes) {
        return clock((long) Math.ceil(minutes));
    }

    /** A time of day by which something must be done, never later than it is. */
    static String latest(double minutes) {
        return clock((long) Math.floor(minutes));
    }

    private static String clock(long whole) {
        String time = LocalTime.MIDNIGHT.plusMinutes(Math.floorMod(whole, DAY)).format(CLOCK);
        long days = Math.floorDiv(whole, DAY);
        return days == 0 ? time : time + (days > 0 ? " +" : " -") + Math.abs(days) + " d";
    }

    /** "35 min", "2 h 5 min"; never shorter than it is. */
    static String span(double minutes, Phrases phrases) {
        long whole = (long) Math.ceil(minutes);
        return whole < HOUR
                ? phrases.say("plan.minutes", whole)
                : phrases.say("plan.hours", whole / HOUR, whole % HOUR);
    }
}
