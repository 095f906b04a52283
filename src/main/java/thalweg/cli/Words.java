package thalweg.cli;

import java.util.Locale;
import java.util.Optional;
import thalweg.logbook.Condition;
import thalweg.text.Phrases;

/** Domain values in the words of the program. */
final class Words {

    private Words() {}

    /** A condition as mark and word. */
    static String condition(Phrases phrases, Optional<Condition> condition) {
        String key =
                condition.map(known -> known.name().toLowerCase(Locale.ROOT)).orElse("unknown");
        return phrases.say("condition.mark." + key) + " " + phrases.say("condition." + key);
    }

    /** One value of a list. */
    static String word(Phrases phrases, String list, Enum<?> value) {
        return phrases.say(list + "." + value.name().toLowerCase(Locale.ROOT));
    }
}
