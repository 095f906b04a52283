package thalweg.amend;

import thalweg.text.Phrases;

/** Times of the ledger as people write them. */
public final class Moment {

    /** As much of RFC 3339 as people care for. */
    private static final int LENGTH = "2026-11-25T12:00".length();

    private Moment() {}

    /**
     * "2026-11-25 12:00 UTC".
     *
     * @param at RFC 3339 in UTC
     */
    public static String print(Phrases phrases, String at) {
        return at.length() > LENGTH
                ? phrases.say("change.when", at.substring(0, LENGTH).replace('T', ' '))
                : at;
    }
}
