package thalweg.cli;

import java.util.Locale;
import thalweg.text.Phrases;

/** Domain values in the words of the program. */
final class Words {

    private Words() {}

    /** One value of a list. */
    static String word(Phrases phrases, String list, Enum<?> value) {
        return phrases.say(list + "." + value.name().toLowerCase(Locale.ROOT));
    }
}
