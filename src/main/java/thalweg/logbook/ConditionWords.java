package thalweg.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.text.Phrases;
import thalweg.text.Width;

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

    /**
     * The same as far as there is room for it; in less room what is gone and what nobody has seen are counts behind their
     * marks: "x 1, ? doubtful, . 2".
     *
     * @param room cells
     */
    public static String told(Standing standing, int room, Phrases phrases) {
        String whole = told(standing, phrases);
        if (Width.of(whole) <= room) {
            return whole;
        }
        List<String> brief = new ArrayList<>();
        if (standing.worst().isPresent() && standing.gone() > 0) {
            brief.add(mark(Optional.of(Condition.GONE), phrases) + " " + standing.gone());
        }
        brief.add(told(standing.condition(), phrases));
        if (standing.condition().isPresent() && standing.neverSeen() > 0) {
            brief.add(mark(Optional.empty(), phrases) + " " + standing.neverSeen());
        }
        return String.join(", ", brief);
    }

    private static String key(Optional<Condition> condition) {
        return condition.map(known -> known.name().toLowerCase(Locale.ROOT)).orElse("unknown");
    }
}
