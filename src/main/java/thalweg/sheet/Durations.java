package thalweg.sheet;

import thalweg.text.Phrases;

/** How long something takes, in hours and minutes. */
public final class Durations {

    private Durations() {}

    /** "45 min", "2 h", "1 h 30 min". */
    public static String print(int minutes, Phrases phrases) {
        String hours = Integer.toString(minutes / 60);
        String rest = Integer.toString(minutes % 60);
        if (minutes < 60) {
            return phrases.say("sheet.minutes", rest);
        }
        return minutes % 60 == 0
                ? phrases.say("sheet.hours", hours)
                : phrases.say("sheet.hours_and_minutes", hours, rest);
    }
}
