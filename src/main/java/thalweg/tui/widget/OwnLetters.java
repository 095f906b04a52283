package thalweg.tui.widget;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A letter of its own for each of a few words, so that one press is enough in every language. */
public final class OwnLetters {

    private OwnLetters() {}

    /**
     * For each label its first letter; where an earlier label has that one, the first letter in it with which no label
     * begins and that none has yet.
     *
     * @param labels not empty, none of them blank
     * @return as many letters, in lower case; a label all of whose letters are taken has its first one after all
     */
    public static List<String> of(List<String> labels) {
        Set<String> firsts = new HashSet<>();
        labels.forEach(label -> firsts.add(first(label)));
        Set<String> taken = new HashSet<>();
        List<String> letters = new ArrayList<>();
        for (String label : labels) {
            String letter = taken.contains(first(label)) ? other(label, firsts, taken) : first(label);
            taken.add(letter);
            letters.add(letter);
        }
        return letters;
    }

    private static String other(String label, Set<String> firsts, Set<String> taken) {
        return label.codePoints()
                .filter(Character::isLetter)
                .mapToObj(Character::toString)
                .map(letter -> letter.toLowerCase(Locale.ROOT))
                .filter(letter -> !firsts.contains(letter) && !taken.contains(letter))
                .findFirst()
                .orElse(first(label));
    }

    private static String first(String label) {
        return Character.toString(label.codePointAt(0)).toLowerCase(Locale.ROOT);
    }
}
