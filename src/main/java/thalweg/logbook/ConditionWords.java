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

    /** "? doubtful +1 gone +2 unseen"; the most urgent comes first, so that what is cut off matters least. */
    public static String told(Standing standing, Phrases phrases) {
        StringBuilder out = new StringBuilder(told(standing.condition(), phrases));
        if (standing.worst().isPresent() && standing.gone() > 0) {
            out.append(' ').append(phrases.count("condition.and_gone", standing.gone()));
        }
        if (standing.condition().isPresent() && standing.neverSeen() > 0) {
            out.append(' ').append(phrases.count("condition.and_unseen", standing.neverSeen()));
        }
        return out.toString();
    }

    private static String key(Optional<Condition> condition) {
        return condition.map(known -> known.name().toLowerCase(Locale.ROOT)).orElse("unknown");
    }
}
