package thalweg.tui.screen;

import java.util.Locale;
import java.util.Optional;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.PartState;
import thalweg.logbook.Standing;
import thalweg.route.PartialDate;
import thalweg.sheet.Ages;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/** Domain values as words and styles, the same on every screen. */
final class Looks {

    private Looks() {}

    /** One value of a list. */
    static String word(Surroundings around, String list, Enum<?> value) {
        return around.say(list + "." + value.name().toLowerCase(Locale.ROOT));
    }

    /** A number in groups of three digits: "300,000". */
    static String counted(Surroundings around, int number) {
        StringBuilder digits = new StringBuilder(Integer.toString(number));
        for (int at = digits.length() - 3; at > 0; at -= 3) {
            digits.insert(at, around.say("number.group"));
        }
        return digits.toString();
    }

    /** How a condition looks where there is colour. */
    static Style style(Optional<Condition> condition) {
        if (condition.isEmpty()) {
            return Style.FAINT;
        }
        return switch (condition.get()) {
            case SOUND -> Style.GOOD;
            case WORN, DOUBTFUL -> Style.MIND;
            case UNSAFE, GONE -> Style.BAD;
        };
    }

    /** How parts look together: what is gone is as bad as what is unsafe, however good the rest is. */
    static Style style(Standing standing) {
        return standing.gone() > 0 ? Style.BAD : style(standing.condition());
    }

    /** A date with how long ago it was. */
    static String ago(Surroundings around, PartialDate date) {
        return new Ages(around.phrases(), around.today()).ago(date);
    }

    /** Everything that a part's state says, in one line. */
    static String state(Surroundings around, PartState state) {
        StringBuilder out = new StringBuilder(ConditionWords.told(state.condition(), around.phrases()));
        state.seenOn().ifPresent(date -> out.append(", ").append(ago(around, date)));
        if (state.contradictory()) {
            out.append("; ").append(around.say("condition.contradictory"));
        }
        state.notSeenSince()
                .ifPresent(date -> out.append("; ")
                        .append(around.say("condition.not_seen"))
                        .append(' ')
                        .append(date.print()));
        return out.toString();
    }

    /** The text, or the word for what is unknown. */
    static String orUnknown(Surroundings around, Optional<String> text) {
        return text.filter(known -> !known.isBlank()).orElse(around.say("unknown"));
    }
}
