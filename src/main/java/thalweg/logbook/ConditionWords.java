package thalweg.logbook;

import java.util.Locale;
import java.util.Optional;
import thalweg.text.Phrases;

/** Conditions as mark and word; a mark can be read where there is no colour. */
public final class ConditionWords {

    private ConditionWords() {}

    /** "~ worn"; ". never inspected". */
    public static String told(Optional<Condition> condition, Phrases phrases) {
        return mark(condition, phrases) + " " + phrases.say("condition." + key(condition));
    }

    /** "~". */
    public static String mark(Optional<Condition> condition, Phrases phrases) {
        return phrases.say("condition.mark." + key(condition));
    }

    /**
     * "x 1 gone, ? doubtful +2 unseen"; what is gone comes first, so that finding a bad part gone does not make a place look
     * better, and what is cut off at the end matters least.
     */
    public static String told(Standing standing, Phrases phrases) {
        StringBuilder out = new StringBuilder();
        if (standing.worst().isPresent() && standing.gone() > 0) {
            out.append(mark(Optional.of(Condition.GONE), phrases))
                    .append(' ')
                    .append(phrases.count("condition.gone_and", standing.gone()))
                    .append(' ');
        }
        out.append(told(standing.condition(), phrases));
        if (standing.condition().isPresent() && standing.neverSeen() > 0) {
            out.append(' ').append(phrases.count("condition.and_unseen", standing.neverSeen()));
        }
        return out.toString();
    }

    private static String key(Optional<Condition> condition) {
        return condition.map(known -> known.name().toLowerCase(Locale.ROOT)).orElse("unknown");
    }
}
