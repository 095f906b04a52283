package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import thalweg.logbook.Condition;
import thalweg.logbook.Work;
import thalweg.tui.core.Surroundings;

/** What can be chosen about one part: its condition as found and as left, and the work done on it. */
final class FoundChoices {

    /** No entry, as found, no work. */
    static final String SKIPPED = "";

    static final String NOT_SEEN = "not_seen";

    private FoundChoices() {}

    static List<String> found() {
        List<String> options = new ArrayList<>(List.of(SKIPPED));
        options.addAll(keys(Condition.values()));
        options.add(NOT_SEEN);
        return options;
    }

    /**
     * @param skipped what the first option says
     */
    static List<String> foundLabels(String skipped, Surroundings around) {
        List<String> labels = labels(skipped, around);
        labels.add(around.say("condition.not_seen"));
        return labels;
    }

    static List<String> left() {
        List<String> options = new ArrayList<>(List.of(SKIPPED));
        options.addAll(keys(Condition.values()));
        return options;
    }

    static List<String> leftLabels(Surroundings around) {
        return labels(around.say("form.visit.as_found"), around);
    }

    /**
     * The conditions that can be chosen.
     *
     * @param first what stands for none of them
     */
    static List<String> labels(String first, Surroundings around) {
        List<String> labels = new ArrayList<>(List.of(first));
        Arrays.stream(Condition.values()).forEach(one -> labels.add(Looks.word(around, "condition", one)));
        return labels;
    }

    static List<String> work() {
        List<String> options = new ArrayList<>(List.of(SKIPPED));
        options.addAll(keys(Work.values()));
        return options;
    }

    static List<String> workLabels(Surroundings around) {
        List<String> labels = new ArrayList<>(List.of(around.say("form.visit.no_work")));
        Arrays.stream(Work.values()).forEach(one -> labels.add(Looks.word(around, "work", one)));
        return labels;
    }

    private static List<String> keys(Enum<?>[] words) {
        return Arrays.stream(words).map(FoundChoices::key).toList();
    }

    static String key(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
